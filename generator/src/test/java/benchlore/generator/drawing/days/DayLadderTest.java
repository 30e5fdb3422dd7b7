package benchlore.generator.drawing.days;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.present.DayMark;
import benchlore.schedules.present.DayRow;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class DayLadderTest {
  private static final Moment MONDAY = Moment.of(2027, 3, 1, 18, 0);

  @Test
  void aNightThatWasOtherwiseIsTintedAndToldOnTheMorningAfter() {
    String usual = draw(List.of());
    assertEquals(1, count(usual, "lad-day"));
    assertEquals(0, count(usual, "lad-otherwise"));
    String cold = draw(night());
    assertEquals(2, count(cold, "lad-day"));
    assertEquals(2, count(cold, "lad-otherwise"));
    assertEquals(1, count(cold, "lad-coldest"));
    assertTrue(cold.contains("data-imperial=\"27.5\u00a0°F\""), cold);
    assertTrue(cold.contains(">\u22122.5\u00a0°C</text>"), cold);
  }

  private static List<DayMark> night() {
    Moment coldest = MONDAY.plusHours(11);
    Interval dark = new Interval(MONDAY.plusHours(3), MONDAY.plusHours(13));
    Quantity figure = Quantity.of(-2.5, Unit.CELSIUS);
    return List.of(
        DayMark.of(DayMark.Kind.OTHERWISE, dark, ""),
        new DayMark(DayMark.Kind.COLDEST, new Interval(coldest, coldest), "", Optional.of(figure)));
  }

  private static String draw(List<DayMark> nights) {
    Interval evening = new Interval(MONDAY, MONDAY.plusHours(2));
    List<DayMark> marks = new ArrayList<>(nights);
    marks.add(DayMark.of(DayMark.Kind.COAT, evening, "1"));
    marks.add(DayMark.of(DayMark.Kind.SHOP, evening, ""));
    return DayLadder.draw(DayRow.of(marks), "t", "p");
  }

  private static int count(String svg, String style) {
    return svg.split("class=\"" + style + "\"", -1).length - 1;
  }
}
