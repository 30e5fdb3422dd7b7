package benchlore.schedules.room;

import benchlore.schedules.quantity.Numeric;
import java.util.Optional;

/**
 * The cheapest heating of a room, in degrees x hours, with which a job passes: found by trying some
 * hours a day at some degrees above what the job needs.
 *
 * @param fromHour when the heater goes on, every day
 * @param toHour when it goes off, 1 to 24
 * @param hours how long it is on
 * @param celsius what it holds
 * @param outcome what the job comes to with it
 * @param <T> what the job comes to
 */
public record LeastHeat<T>(int fromHour, int toHour, int hours, double celsius, T outcome) {
  private static final int[] HOURS = {2, 4, 6, 8, 10, 12, 16, 20, 23};
  private static final int[] ABOVE = {1, 2, 3, 4, 6, 8, 10};

  /**
   * A job in a heated room.
   *
   * @param <T> what it comes to
   */
  public interface Job<T> {
    /** What it comes to in this room, held at so many degrees; empty if it does not pass. */
    Optional<T> in(Climate heated, double celsius);
  }

  /**
   * Tries a job.
   *
   * @param climate the room as it is
   * @param fromHour when the heater would go on, 0 to 23
   * @param minimumCelsius what the job needs
   * @return empty if nothing tried would do
   */
  public static <T> Optional<LeastHeat<T>> of(
      Climate climate, int fromHour, double minimumCelsius, Job<T> job) {
    Optional<LeastHeat<T>> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    double minimum = Numeric.ceil(minimumCelsius);
    for (int hours : HOURS) {
      for (int above : ABOVE) {
        double celsius = minimum + above;
        double cost = hours * Math.max(1, celsius - climate.lowestCelsius());
        if (cost < least) {
          int to = (fromHour + hours) % 24 == 0 ? 24 : (fromHour + hours) % 24;
          Optional<T> outcome = job.in(climate.withHeating(fromHour, to, celsius), celsius);
          if (outcome.isPresent()) {
            least = cost;
            best = Optional.of(new LeastHeat<>(fromHour, to, hours, celsius, outcome.get()));
          }
        }
      }
    }
    return best;
  }
}
