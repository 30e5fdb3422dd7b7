package benchlore.generator.drawing.days;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.List;
import org.junit.jupiter.api.Test;

final class DayLadderTest {
  private static final Moment MONDAY = Moment.of(2027, 3, 1, 18, 0);

  @Test
  void aNightThatWasOtherwiseIsTintedAndToldOnTheMorningAfter() {
    String usual = draw(List.of());
    assertEquals(1, count(usual, "lad-day"));
    assertEquals(0, count(usual, "lad-otherwise"));
    String cold =
        draw(List.of(new DayLadder.Night(MONDAY.plusHours(11), -2.5, "\u22122.5\u00a0°C")));
    assertEquals(2, count(cold, "lad-day"));
    assertEquals(2, count(cold, "lad-otherwise"));
    assertEquals(1, count(cold, "lad-coldest"));
    assertTrue(cold.contains("data-q=\"-2.5\" data-u=\"celsius\""), cold);
    assertTrue(cold.contains(">\u22122.5\u00a0°C</text>"), cold);
  }

  private static String draw(List<DayLadder.Night> nights) {
    Interval evening = new Interval(MONDAY, MONDAY.plusHours(2));
    List<DayLadder.Block> work = List.of(new DayLadder.Block(1, evening, true));
    return DayLadder.draw(
        new DayLadder.Request(work, List.of(), List.of(), List.of(evening), nights), "t", "p");
  }

  private static int count(String svg, String style) {
    return svg.split("class=\"" + style + "\"", -1).length - 1;
  }
}
