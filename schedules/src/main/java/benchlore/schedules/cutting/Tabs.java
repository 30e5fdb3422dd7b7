package benchlore.schedules.cutting;

import benchlore.schedules.answer.Message;
import java.util.List;

/**
 * How to hold a part in its sheet until the end.
 *
 * @param count how many, 4 or more
 * @param widthMetre width of the bridge that stays
 * @param programmedWidthMetre width to enter where the tab is measured along the bit's path: the
 *     bridge and one bit diameter
 * @param heightMetre height of the bridge above the bottom of the sheet
 * @param pathMetre path of the bit's centre round a plain box of that size
 * @param spacingMetre from tab to tab along that path
 * @param order cuts in order; the last one frees the part
 */
public record Tabs(
    int count,
    double widthMetre,
    double programmedWidthMetre,
    double heightMetre,
    double pathMetre,
    double spacingMetre,
    List<Message> order) {
  /** Copies the list. */
  public Tabs {
    order = List.copyOf(order);
  }

  /** The cut to leave for last. */
  public Message last() {
    return order.get(order.size() - 1);
  }
}
