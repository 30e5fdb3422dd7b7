package benchlore.schedules.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.LocalDateTime;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** The arithmetic of wall-clock times against the JDK's. */
final class WallTimeTest {
  private static final long MOST_SECONDS = 40_000_000_000L;
  private static final LocalDateTime START = LocalDateTime.of(1600, 1, 1, 0, 0);

  @Property(tries = 5_000)
  void addsAsTheJdkDoes(
      @ForAll @LongRange(min = 0, max = MOST_SECONDS) long second,
      @ForAll @LongRange(min = -4_000_000_000L, max = 4_000_000_000L) long later,
      @ForAll @IntRange(min = 0, max = 999_999_999) int nano) {
    LocalDateTime moment = START.plusSeconds(second).withNano(nano);
    assertEquals(moment.plusSeconds(later), WallTime.plus(moment, later));
    assertEquals(
        moment.toLocalDate().plusDays(later / 90_000),
        WallTime.plusDays(moment.toLocalDate(), (int) (later / 90_000)));
  }

  @Property(tries = 5_000)
  void countsAsTheJdkDoes(
      @ForAll @LongRange(min = 0, max = MOST_SECONDS) long one,
      @ForAll @LongRange(min = 0, max = MOST_SECONDS) long two,
      @ForAll @IntRange(min = 0, max = 2) int nano) {
    LocalDateTime from = START.plusSeconds(one).withNano(nano);
    LocalDateTime to = START.plusSeconds(two).withNano(1);
    assertEquals((double) Duration.between(from, to).getSeconds(), WallTime.seconds(from, to));
    assertEquals(Integer.signum(from.compareTo(to)), WallTime.compare(from, to));
    assertEquals(from.getDayOfWeek().getValue() - 1, WallTime.weekday(from.toLocalDate()));
    assertEquals(from.toLocalDate().atStartOfDay(), WallTime.midnight(from));
    assertEquals(from.withMinute(0).withSecond(0).withNano(0), WallTime.hour(from));
    assertEquals(from.withSecond(0).withNano(0), WallTime.minute(from));
  }
}
