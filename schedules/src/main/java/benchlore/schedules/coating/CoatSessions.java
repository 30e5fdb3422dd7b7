package benchlore.schedules.coating;

import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import java.util.Objects;
import java.util.Optional;

/**
 * When a coat may go on: in one stretch of shop hours that also holds the scuffing before it, if it
 * is scuffed.
 *
 * @param week the shop's hours
 * @param scuff time to scuff the coat before, 0 or more
 * @param coat time to put one coat on, 0 or more
 */
public record CoatSessions(ShopWeek week, Duration scuff, Duration coat) {
  /** Any hour of any day, in no time. */
  public static final CoatSessions ALWAYS =
      new CoatSessions(ShopWeek.ALWAYS, Duration.ZERO, Duration.ZERO);

  /** Refuses nulls and negative times. */
  public CoatSessions {
    Objects.requireNonNull(week, "week");
    Objects.requireNonNull(scuff, "scuff");
    Objects.requireNonNull(coat, "coat");
    if (scuff.isNegative() || coat.isNegative()) {
      throw new IllegalArgumentException("scuff and coat must be 0 or more");
    }
  }

  /**
   * The first moment a coat may go on; windows open at a quarter of an hour.
   *
   * @param ready when the coat before may be worked on
   * @param scuffed whether it is scuffed first
   * @return empty if the hours never hold it
   */
  Optional<Moment> first(Moment ready, boolean scuffed) {
    Duration before = scuffed ? scuff : Duration.ZERO;
    Optional<Interval> slot =
        week.unbroken(ready.upToQuarterHour(), before.seconds() + coat.seconds());
    return slot.map(found -> found.start().plusSeconds(before.seconds()));
  }
}
