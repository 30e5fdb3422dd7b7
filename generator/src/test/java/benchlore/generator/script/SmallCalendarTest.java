package benchlore.generator.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.function.Supplier;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.teavm.classlib.java.time.TDuration;
import org.teavm.classlib.java.time.TLocalDate;
import org.teavm.classlib.java.time.TLocalDateTime;

/** The script's small calendar against the JDK's own. */
class SmallCalendarTest {
  private static final int DAYS = 60_000;

  @Test
  void everyDayOfACenturyAndAHalfIsTheSame() {
    LocalDate day = LocalDate.of(1899, 1, 1);
    for (int i = 0; i < DAYS; i++, day = day.plusDays(1)) {
      TLocalDate small = TLocalDate.of(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
      assertEquals(day.getYear(), small.getYear());
      assertEquals(day.getMonthValue(), small.getMonthValue());
      assertEquals(day.getDayOfMonth(), small.getDayOfMonth());
    }
  }

  /** Days that are none are refused by both, and no others. */
  @Property
  void refusesTheSameDays(
      @ForAll @IntRange(min = 1, max = 9999) int year,
      @ForAll @IntRange(min = -1, max = 14) int month,
      @ForAll @IntRange(min = -1, max = 33) int day) {
    assertEquals(
        fails(() -> LocalDate.of(year, month, day)), fails(() -> TLocalDate.of(year, month, day)));
  }

  @Property
  void refusesTheSameTimes(
      @ForAll @IntRange(min = -1, max = 25) int hour,
      @ForAll @IntRange(min = -1, max = 61) int minute,
      @ForAll @IntRange(min = -1, max = 61) int second) {
    assertEquals(
        fails(() -> LocalDate.of(2027, 4, 3).atTime(hour, minute, second)),
        fails(() -> TLocalDate.of(2027, 4, 3).atTime(hour, minute, second)));
  }

  private static boolean fails(Supplier<?> made) {
    try {
      return made.get() == null;
    } catch (DateTimeException e) {
      return true;
    }
  }

  @Property
  void ordersMomentsTheSameWay(
      @ForAll @IntRange(max = 4_000_000) int one, @ForAll @IntRange(max = 4_000_000) int other) {
    LocalDateTime start = LocalDateTime.of(2027, 11, 20, 0, 0);
    LocalDateTime a = start.plusMinutes(one);
    LocalDateTime b = start.plusMinutes(other);
    TLocalDateTime smallA = small(a);
    TLocalDateTime smallB = small(b);
    assertEquals(a.isBefore(b), smallA.isBefore(smallB));
    assertEquals(a.isAfter(b), smallA.isAfter(smallB));
    assertEquals(a.equals(b), smallA.equals(smallB));
    assertEquals(smallA.hashCode(), small(a).hashCode());
    assertEquals(
        a.toLocalDate().equals(b.toLocalDate()), smallA.toLocalDate().equals(smallB.toLocalDate()));
  }

  @Test
  void theNanosecondIsTheLastToOrder() {
    TLocalDateTime early = TLocalDate.of(2027, 4, 3).atTime(8, 30, 15, 1);
    TLocalDateTime late = TLocalDate.of(2027, 4, 3).atTime(8, 30, 15, 2);
    assertTrue(early.isBefore(late));
    assertEquals(2, late.getNano());
  }

  @Property
  void tellsTheTimeOfDay(@ForAll @IntRange(max = 86_399) int second) {
    LocalDateTime moment = LocalDate.of(2028, 2, 29).atStartOfDay().plusSeconds(second);
    TLocalDateTime small = small(moment);
    assertEquals(moment.getHour(), small.getHour());
    assertEquals(moment.getMinute(), small.getMinute());
    assertEquals(moment.getSecond(), small.getSecond());
  }

  private static TLocalDateTime small(LocalDateTime moment) {
    return TLocalDate.of(moment.getYear(), moment.getMonthValue(), moment.getDayOfMonth())
        .atTime(moment.getHour(), moment.getMinute(), moment.getSecond());
  }

  @Property
  void lengthsOfTimeAreTheSame(@ForAll int one, @ForAll int other) {
    Duration a = Duration.ofSeconds(one);
    TDuration small = TDuration.ofSeconds(one);
    assertEquals(a.isNegative(), small.isNegative());
    assertEquals(a.getSeconds(), small.getSeconds());
    assertEquals(
        Integer.signum(a.compareTo(Duration.ofSeconds(other))),
        Integer.signum(small.compareTo(TDuration.ofSeconds(other))));
  }

  @Test
  void noTimeIsNotNegative() {
    assertEquals(Duration.ZERO.isNegative(), TDuration.ZERO.isNegative());
    assertThrows(DateTimeException.class, () -> TLocalDate.of(1900, 2, 29));
  }
}
