package benchlore.schedules.present;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PlanDaysTest {
  private static final Moment MONDAY = Moment.of(2027, 3, 1, 18, 0);

  @Test
  void onlyDaysWithWorkHaveARowAndTellHowManyPassedBefore() {
    List<DayRow> rows =
        DayRow.of(
            List.of(
                work(MONDAY.plusDays(4), 1), work(MONDAY, 2), band(MONDAY, MONDAY.plusDays(3))));
    assertEquals(2, rows.size());
    assertEquals("2027-03-01", rows.get(0).date().toString());
    assertEquals(0, rows.get(0).daysPassed());
    assertEquals(3, rows.get(1).daysPassed());
    assertEquals(2, DayRow.work(rows));
  }

  @Test
  void aBandIsCutAtMidnightAndWorkStandsWhereItBegins() {
    List<DayRow> rows =
        DayRow.of(
            List.of(
                work(MONDAY, 8),
                work(MONDAY.plusDays(1), 1),
                band(MONDAY.plusHours(3), MONDAY.plusHours(9))));
    assertEquals(
        List.of("DARK 0-420", "DARK 1260-1440", "WET 1260-1440", "WORK 1080-1440"),
        bars(rows.get(0)));
    assertEquals(
        List.of("DARK 0-420", "DARK 1260-1440", "WET 0-180", "WORK 1080-1140"), bars(rows.get(1)));
  }

  private static List<String> bars(DayRow row) {
    List<String> bars = new ArrayList<>();
    for (DayRow.Bar bar : row.bars()) {
      bars.add(bar.kind() + " " + (int) bar.fromMinute() + "-" + (int) bar.toMinute());
    }
    return bars;
  }

  private static DayMark work(Moment from, int hours) {
    return DayMark.of(DayMark.Kind.WORK, new Interval(from, from.plusHours(hours)), "1");
  }

  private static DayMark band(Moment from, Moment to) {
    return DayMark.of(DayMark.Kind.WET, new Interval(from, to), "");
  }

  @Test
  void calendarLinesAreFoldedAtSeventyFiveOctetsAndReadBackWhole() {
    String words = "Wait – 20 °C; then, \\ sand \uD83E\uDEB5".repeat(12) + "\nnext";
    CalendarLines lines = new CalendarLines();
    lines.text("DESCRIPTION", words);
    String text = lines.whole();
    for (String line : text.split("\r\n", -1)) {
      byte[] octets = line.getBytes(StandardCharsets.UTF_8);
      assertTrue(octets.length <= 75, line);
      assertEquals(line, new String(octets, StandardCharsets.UTF_8));
    }
    String unfolded = text.replace("\r\n ", "").strip();
    String read = unfolded.substring("DESCRIPTION:".length());
    assertEquals(
        words,
        read.replace("\\n", "\n").replace("\\;", ";").replace("\\,", ",").replace("\\\\", "\\"));
  }
}
