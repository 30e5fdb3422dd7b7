package benchlore.schedules.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.function.Supplier;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moments against the JDK's local times, over four centuries and the leap days among them. */
final class MomentTest {
  /** Seconds from 1900 to the end of 2200. */
  private static final long MOST_SECONDS = 9_498_643_199L;

  private static final LocalDateTime FIRST = LocalDateTime.of(1900, 1, 1, 0, 0);

  private static Moment moment(LocalDateTime jdk) {
    return Date.of(jdk.getYear(), jdk.getMonthValue(), jdk.getDayOfMonth())
        .at(jdk.getHour(), jdk.getMinute(), jdk.getSecond());
  }

  private static String text(LocalDateTime jdk) {
    return DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(jdk);
  }

  @Property(tries = 5_000)
  void readsAndWritesAsTheJdkDoes(@ForAll @LongRange(max = MOST_SECONDS) long second) {
    LocalDateTime jdk = FIRST.plusSeconds(second);
    Moment own = moment(jdk);
    assertEquals(text(jdk), own.toString());
    assertEquals(own, Moment.parse(text(jdk)));
    assertEquals(own.startOfMinute(), Moment.parse(text(jdk).substring(0, 16)));
    assertEquals(text(jdk).substring(11, 16), own.clock());
  }

  @Property(tries = 5_000)
  void tellsItsPartsAsTheJdkDoes(@ForAll @LongRange(max = MOST_SECONDS) long second) {
    LocalDateTime jdk = FIRST.plusSeconds(second);
    Moment own = moment(jdk);
    assertEquals(jdk.toLocalDate().toString(), own.date().toString());
    assertEquals(jdk.getHour(), own.hour());
    assertEquals(jdk.getMinute(), own.minute());
    assertEquals(jdk.getSecond(), own.second());
    assertEquals(jdk.toLocalTime().toSecondOfDay(), own.secondOfDay());
    assertEquals(moment(jdk.truncatedTo(ChronoUnit.DAYS)), own.startOfDay());
    assertEquals(moment(jdk.truncatedTo(ChronoUnit.HOURS)), own.startOfHour());
    assertEquals(moment(jdk.truncatedTo(ChronoUnit.MINUTES)), own.startOfMinute());
  }

  @Property(tries = 5_000)
  void addsAsTheJdkDoes(
      @ForAll @LongRange(max = MOST_SECONDS) long second,
      @ForAll @LongRange(min = -28_000_000_000L, max = 28_000_000_000L) long later) {
    LocalDateTime jdk = FIRST.plusSeconds(second);
    Moment own = moment(jdk);
    assertEquals(text(jdk.plusSeconds(later)), own.plusSeconds((double) later).toString());
    long few = later / 100_000;
    assertEquals(text(jdk.plusMinutes(few)), own.plusMinutes((double) few).toString());
    assertEquals(text(jdk.plusHours(few)), own.plusHours((double) few).toString());
    assertEquals(text(jdk.plusDays(few)), own.plusDays((double) few).toString());
  }

  @Property
  void partsOfASecondAreRounded(@ForAll @DoubleRange(min = -1e6, max = 1e6) double seconds) {
    Moment start = Moment.of(2028, 2, 29, 12, 0);
    double moved = start.secondsUntil(start.plusSeconds(seconds));
    assertEquals(seconds, moved, 0.5);
    assertEquals(Math.rint(moved), moved);
  }

  @Property(tries = 5_000)
  void ordersAndCountsAsTheJdkDoes(
      @ForAll @LongRange(max = MOST_SECONDS) long one,
      @ForAll @LongRange(max = MOST_SECONDS) long two) {
    LocalDateTime a = FIRST.plusSeconds(one);
    LocalDateTime b = FIRST.plusSeconds(two);
    assertEquals((double) (two - one), moment(a).secondsUntil(moment(b)));
    assertEquals(a.isBefore(b), moment(a).isBefore(moment(b)));
    assertEquals(a.isAfter(b), moment(a).isAfter(moment(b)));
    assertEquals(a.equals(b), moment(a).equals(moment(b)));
    assertEquals(Integer.signum(a.compareTo(b)), moment(a).compareTo(moment(b)));
    assertEquals(moment(a.isBefore(b) ? b : a), moment(a).orLater(moment(b)));
    assertEquals(
        Integer.signum(a.toLocalDate().compareTo(b.toLocalDate())),
        moment(a).date().compareTo(moment(b).date()));
  }

  @Property
  void theNextFiveMinutesAreAtMostFiveMinutesAway(
      @ForAll @LongRange(max = MOST_SECONDS) long second) {
    Moment own = moment(FIRST.plusSeconds(second));
    Moment up = own.upToFiveMinutes();
    assertEquals(0, up.second());
    assertEquals(0, up.minute() % 5);
    assertEquals(true, own.secondsUntil(up) >= 0 && own.secondsUntil(up) < 300);
    assertEquals(up, up.upToFiveMinutes());
  }

  @Property
  void everyDayIsTheJdksDay(@ForAll @IntRange(max = 109_937) int days) {
    LocalDate jdk = FIRST.toLocalDate().plusDays(days);
    Date own = Date.parse(jdk.toString());
    assertEquals(jdk.getYear(), own.year());
    assertEquals(jdk.getMonthValue(), own.month());
    assertEquals(jdk.getDayOfMonth(), own.dayOfMonth());
    assertEquals(jdk.getDayOfWeek().name(), own.weekday().name());
    assertEquals(jdk.plusDays(40_000 - days).toString(), own.plusDays(40_000 - days).toString());
    assertEquals(days, Date.of(1900, 1, 1).daysUntil(own));
  }

  @Test
  void leapDaysStandWhereTheCalendarHasThem() {
    for (int year = Date.FIRST_YEAR; year <= Date.LAST_YEAR; year++) {
      boolean leap = LocalDate.of(year, 1, 1).isLeapYear();
      assertEquals(leap ? 29 : 1, Date.of(year, 2, 28).plusDays(1).dayOfMonth(), "" + year);
    }
  }

  /** Days that are none are refused by both, and no others. */
  @Property
  void refusesTheSameDays(
      @ForAll @IntRange(min = 1900, max = 2200) int year,
      @ForAll @IntRange(min = -1, max = 14) int month,
      @ForAll @IntRange(min = -1, max = 33) int day) {
    assertEquals(
        fails(() -> LocalDate.of(year, month, day)), fails(() -> Date.of(year, month, day)));
  }

  @Property
  void refusesTheSameTimes(
      @ForAll @IntRange(min = -1, max = 25) int hour,
      @ForAll @IntRange(min = -1, max = 61) int minute,
      @ForAll @IntRange(min = -1, max = 61) int second) {
    assertEquals(
        fails(() -> LocalDate.of(2027, 4, 3).atTime(hour, minute, second)),
        fails(() -> Date.of(2027, 4, 3).at(hour, minute, second)));
  }

  private static boolean fails(Supplier<?> made) {
    try {
      return made.get() == null;
    } catch (DateTimeException | IllegalArgumentException e) {
      return true;
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "2027-01-12",
        "2027-01-12 18:30",
        "2027-01-12T18.30",
        "2027-01-12T18:30:1",
        "2027-01-12T18:30-15",
        "2027-01-12T18:30:15Z",
        "2027-01-12T18:30:15.5",
        "2027-02-29T18:30",
        "2027-01-12T24:00",
        "2027-01-12T-1:00",
        "1899-12-31T23:59",
        "2201-01-01T00:00",
        "20270-1-12T18:30"
      })
  void textThatIsNoMomentIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> Moment.parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "2027", "2027-1-12", "2027-01-012", "2027/01/12", "2027-01-1x"})
  void textThatIsNoDateIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> Date.parse(text));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 0.5, -1e300})
  void aMomentThatIsNoWholeSecondIsRefused(double second) {
    assertThrows(IllegalArgumentException.class, () -> new Moment(second));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY})
  void aDurationThatIsNoNumberIsRefused(double seconds) {
    assertThrows(IllegalArgumentException.class, () -> new Duration(seconds));
  }

  @Test
  void durationsAreComparedBySeconds() {
    Moment noon = Moment.of(2028, 2, 29, 12, 0);
    Duration day = Duration.between(noon, noon.plusDays(1));
    assertEquals(Duration.ofHours(24), day);
    assertEquals(1, day.compareTo(Duration.ZERO));
    assertEquals(true, Duration.between(noon.plusSeconds(1), noon).isNegative());
    assertEquals(false, Duration.ZERO.isNegative());
    assertEquals(Duration.ofSeconds(600), Duration.ofSeconds(301).upToFiveMinutes());
    assertEquals(Duration.ofSeconds(300), Duration.ofSeconds(300).upToFiveMinutes());
  }

  @Test
  void anIntervalThatEndsBeforeItStartsIsRefused() {
    Moment noon = Moment.of(2028, 2, 29, 12, 0);
    assertThrows(IllegalArgumentException.class, () -> new Interval(noon, noon.plusSeconds(-1)));
    assertEquals(90, Interval.lasting(noon, 90).seconds());
    assertEquals(0, new Interval(noon, noon).seconds());
  }
}
