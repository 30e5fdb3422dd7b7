package benchlore.generator.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.planning.Content;
import benchlore.generator.planning.Planned;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.present.PlanCalendar;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.Step;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The calendar is read back with another library than the one that wrote it. */
class PlanCalendarTest {
  private static List<Planned> plans;

  @BeforeAll
  static void load() throws IOException {
    plans = Content.load(Path.of("../content")).value().orElseThrow().plans();
  }

  @Test
  void everyPieceOfWorkStandsAtItsWallClockTime() throws Exception {
    for (Planned planned : plans) {
      List<String> starts = new ArrayList<>();
      for (VEvent event : events(planned)) {
        starts.add(event.getSummary().getValue() + " " + event.getDateTimeStart().getDate());
      }
      for (Step step : plan(planned).steps()) {
        LocalDateTime start = LocalDateTime.parse(step.start().toString());
        assertTrue(starts.contains(step.title() + " " + start), planned.id() + ": " + step.title());
      }
    }
  }

  @Test
  void theMomentsThatMustNotBeMissedHaveAlarms() throws Exception {
    for (Planned planned : plans) {
      List<String> alarms = new ArrayList<>();
      for (VEvent event : events(planned)) {
        for (VAlarm alarm : event.getAlarms()) {
          alarms.add(alarm.getDescription().getValue());
        }
      }
      ProjectPlan plan = plan(planned);
      for (ProjectPlan.Laid laid : plan.layers()) {
        List<CoatStep> coats = laid.coats().coats();
        for (CoatStep coat : coats.subList(0, coats.size() - 1)) {
          String over = "Recoat over coat " + (laid.before() + coat.number());
          boolean closes = coat.drying().moment(Stage.RECOAT_CLOSES).isPresent();
          assertTrue(alarms.contains(over + ": the window opens"));
          assertEquals(closes, alarms.contains(over + ": the window closes in 2 hours"));
        }
      }
      assertTrue(alarms.contains("Clamps off"), planned.id());
      boolean told =
          plan.top().air().map(a -> a.reEntries().get(0).second().isPresent()).orElse(false);
      assertEquals(told, alarms.contains("The room is fit to sit in again"));
    }
  }

  @Test
  void eventsHaveNamesOfTheirOwnAndLinesFitTheStandard() throws Exception {
    for (Planned planned : plans) {
      Set<String> ids = new HashSet<>();
      for (VEvent event : events(planned)) {
        assertTrue(ids.add(event.getUid().orElseThrow().getValue()));
        event.validate(true);
      }
      String text = text(planned);
      assertTrue(text.endsWith("END:VCALENDAR\r\n"));
      for (String line : text.split("\r\n", -1)) {
        assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
      }
    }
  }

  @Test
  void cautionsComeFirstInTheWords() throws Exception {
    for (Planned planned : plans) {
      for (VEvent event : events(planned)) {
        if (event.getSummary().getValue().startsWith("Flatten")) {
          assertTrue(event.getDescription().getValue().startsWith("! A spinning bit"));
        }
      }
    }
  }

  private static ProjectPlan plan(Planned planned) {
    return ((Answer.Given<ProjectPlan>) planned.answer()).value();
  }

  private static String text(Planned planned) {
    ProjectPlan plan = plan(planned);
    return PlanCalendar.render(
        new PlanCalendar.Head(planned.id(), planned.title(), plan.start(), UnitSystem.METRIC),
        plan);
  }

  private static List<VEvent> events(Planned planned) throws IOException, ParserException {
    String text = text(planned);
    Calendar calendar = new CalendarBuilder().build(new StringReader(text));
    return calendar.getComponents("VEVENT");
  }
}
