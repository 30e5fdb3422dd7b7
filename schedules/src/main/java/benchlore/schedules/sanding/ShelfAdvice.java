package benchlore.schedules.sanding;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What to buy to save sanding time.
 *
 * @param nowSeconds face passes with the shelf as it is; empty if it can't be done with it
 * @param offers single P grades that would save time, the best first
 */
public record ShelfAdvice(OptionalDouble nowSeconds, List<Offer> offers) {
  /** Copies the list. */
  public ShelfAdvice {
    offers = List.copyOf(offers);
  }

  /**
   * One grade more.
   *
   * @param grit the grade to buy
   * @param thenSeconds face passes with it, less than now
   */
  public record Offer(Grit grit, double thenSeconds) {}
}
