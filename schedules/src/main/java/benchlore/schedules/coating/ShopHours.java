package benchlore.schedules.coating;

import java.time.LocalDateTime;

/**
 * The hours someone is there to put a coat on, the same every day. A calendar that knows days off
 * places coats itself and asks for one coat at a time.
 *
 * @param fromHourInclusive 0 to 23
 * @param toHourExclusive 1 to 24, above {@code fromHourInclusive}
 */
public record ShopHours(int fromHourInclusive, int toHourExclusive) {
  /** Any hour. */
  public static final ShopHours ALWAYS = new ShopHours(0, 24);

  /** Whether a coat may go on then. */
  boolean open(LocalDateTime moment) {
    int hour = moment.getHour();
    return hour >= fromHourInclusive && hour < toHourExclusive;
  }
}
