package benchlore.schedules.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ShopWeekTest {
  // 2027-04-03 is a Saturday; checked against the perpetual calendar in java.time below.
  private static final LocalDate SATURDAY = LocalDate.of(2027, 4, 3);
  private static final ShopWeek WEEK =
      ShopWeek.of(
          Map.of(
              DayOfWeek.SATURDAY,
              List.of(new ShopWeek.Span(9 * 60, 12 * 60), new ShopWeek.Span(13 * 60, 18 * 60)),
              DayOfWeek.TUESDAY,
              List.of(new ShopWeek.Span(18 * 60, 21 * 60))),
          List.of(LocalDate.of(2027, 4, 6)));

  @Test
  void worksOnTheDaysNamed() {
    assertEquals(DayOfWeek.SATURDAY, SATURDAY.getDayOfWeek());
    assertTrue(WEEK.open(SATURDAY.atTime(9, 0)));
    assertFalse(WEEK.open(SATURDAY.atTime(12, 0)));
    assertFalse(WEEK.open(SATURDAY.plusDays(1).atTime(10, 0)));
  }

  @Test
  void breakIsNotWorkedThrough() {
    Slot slot = WEEK.unbroken(SATURDAY.atTime(10, 0), 3 * 3600).orElseThrow();
    assertEquals(SATURDAY.atTime(13, 0), slot.start());
    assertEquals(SATURDAY.atTime(16, 0), slot.end());
  }

  @Test
  void dayOffIsSkipped() {
    Slot slot = WEEK.unbroken(SATURDAY.atTime(18, 0), 3600).orElseThrow();
    assertEquals(LocalDateTime.of(2027, 4, 10, 9, 0), slot.start());
  }

  @Test
  void workLongerThanAnyStretchNeverFits() {
    assertTrue(WEEK.unbroken(SATURDAY.atTime(9, 0), 5 * 3600 + 1).isEmpty());
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
                    DayOfWeek.MONDAY,
                    List.of(new ShopWeek.Span(600, 700), new ShopWeek.Span(650, 800))),
                List.of()));
    assertTrue(ShopWeek.of(Map.of(), List.of()).empty());
  }
}
