package benchlore.schedules.coating;

import benchlore.schedules.calendar.ShopWeek;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/** Shop hours for tests: coats that take no time. */
final class Sessions {
  /** Nobody is ever there. */
  static final CoatSessions NEVER =
      new CoatSessions(new ShopWeek(Map.of(), List.of()), Duration.ZERO, Duration.ZERO);

  private Sessions() {}

  static CoatSessions daily(int fromHourInclusive, int toHourExclusive) {
    return new CoatSessions(
        ShopWeek.daily(fromHourInclusive, toHourExclusive), Duration.ZERO, Duration.ZERO);
  }
}
