package benchlore.schedules.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ShopWeekTest {
  // 2027-04-03 is a Saturday; checked below.
  private static final Date SATURDAY = Date.of(2027, 4, 3);
  private static final ShopWeek WEEK =
      ShopWeek.of(
          Map.of(
              Weekday.SATURDAY,
              List.of(new ShopWeek.Span(9 * 60, 12 * 60), new ShopWeek.Span(13 * 60, 18 * 60)),
              Weekday.TUESDAY,
              List.of(new ShopWeek.Span(18 * 60, 21 * 60))),
          List.of(Date.of(2027, 4, 6)));

  @Test
  void worksOnTheDaysNamed() {
    assertEquals(Weekday.SATURDAY, SATURDAY.weekday());
    assertTrue(WEEK.open(SATURDAY.at(9, 0)));
    assertFalse(WEEK.open(SATURDAY.at(12, 0)));
    assertFalse(WEEK.open(SATURDAY.plusDays(1).at(10, 0)));
  }

  @Test
  void breakIsNotWorkedThrough() {
    Interval slot = WEEK.unbroken(SATURDAY.at(10, 0), 3 * 3600).orElseThrow();
    assertEquals(SATURDAY.at(13, 0), slot.start());
    assertEquals(SATURDAY.at(16, 0), slot.end());
  }

  @Test
  void dayOffIsSkipped() {
    Interval slot = WEEK.unbroken(SATURDAY.at(18, 0), 3600).orElseThrow();
    assertEquals(Moment.of(2027, 4, 10, 9, 0), slot.start());
  }

  @Test
  void workLongerThanAnyStretchNeverFits() {
    assertTrue(WEEK.unbroken(SATURDAY.at(9, 0), 5 * 3600 + 1).isEmpty());
  }

  @Test
  void hoursThatAreNoneAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new ShopWeek.Span(600, 600));
    assertThrows(IllegalArgumentException.class, () -> new ShopWeek.Span(-1, 60));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            ShopWeek.of(
                Map.of(
                    Weekday.MONDAY,
                    List.of(new ShopWeek.Span(600, 700), new ShopWeek.Span(650, 800))),
                List.of()));
    assertTrue(ShopWeek.of(Map.of(), List.of()).empty());
  }
}
