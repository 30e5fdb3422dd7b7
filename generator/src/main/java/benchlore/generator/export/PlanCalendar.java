package benchlore.generator.export;

import benchlore.generator.planning.Planned;
import benchlore.generator.units.Display;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.Step;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.WriteContext;
import biweekly.io.scribe.property.DateEndScribe;
import biweekly.io.scribe.property.DateStartScribe;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;

/**
 * A plan as a calendar (RFC 5545): an event for every piece of work, recoat window and time to stay
 * out of the room, each with an alarm where a moment must not be missed.
 *
 * <p>Times are floating: wall-clock time wherever the calendar is, as the whole plan is. The stamp
 * of every event is the plan's first moment, so the same plan gives the same bytes. The page's
 * script {@code planner-calendar.js} writes the same.
 */
public final class PlanCalendar {
  /** Lines are folded by characters; a few of two octets still leave them within 75 octets. */
  private static final int FOLD = 70;

  private static final String MAKER = "-//benchlore//plan//EN";

  private final String planId;
  private final Moment stamp;
  private final ICalendar calendar = new ICalendar();

  private PlanCalendar(String planId, Moment stamp) {
    this.planId = planId;
    this.stamp = stamp;
  }

  /**
   * The calendar of a plan.
   *
   * @param planned the project's title and file name
   * @param plan its answer
   * @return the text of an {@code .ics} file, lines ending in CR LF
   */
  public static String render(Planned planned, ProjectPlan plan) {
    return render(planned.id(), planned.title(), plan);
  }

  /**
   * The calendar of a plan that has no file.
   *
   * @param id tells its events from another plan's
   * @param title the calendar's name
   * @param plan the plan
   * @return the text of an {@code .ics} file, lines ending in CR LF
   */
  public static String render(String id, String title, ProjectPlan plan) {
    PlanCalendar made = new PlanCalendar(id, plan.start());
    made.calendar.setProductId(MAKER);
    made.calendar.setName(title);
    for (Step step : plan.steps()) {
      made.step(step);
    }
    made.windows(plan);
    made.reEntries(plan);
    return made.text();
  }

  private String text() {
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.registerScribe(new FloatingStart());
      writer.registerScribe(new FloatingEnd());
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(FOLD);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void step(Step step) {
    int piece = 0;
    for (Interval slot : step.stretches()) {
      piece++;
      String id = step.id().name() + (piece == 1 ? "" : "-" + piece);
      VEvent event = event(id, step.title(), slot.start(), slot.end());
      event.setDescription(words(step));
      event.setTransparency(step.kind() == Step.Kind.WAIT);
      if (step.kind() == Step.Kind.WORK) {
        boolean clamps = step.id().is(StepId.Task.CLAMPS_OFF);
        alarm(event, clamps ? "Clamps off" : step.title(), clamps ? 0 : 30, Related.START);
      }
      calendar.addEvent(event);
    }
  }

  private static String words(Step step) {
    List<String> lines = new ArrayList<>();
    for (Caution caution : step.cautions()) {
      lines.add("! " + Display.text(caution.what()) + " " + Display.text(caution.measure()));
    }
    for (Message note : step.notes()) {
      lines.add(Display.text(note));
    }
    return plain(String.join("\n", lines));
  }

  /** Without the typography that some calendars spoil. */
  private static String plain(String text) {
    return text.replace('\u00a0', ' ')
        .replace("\u202f", "")
        .replace('–', '-')
        .replace('\u2212', '-');
  }

  /** The recoat windows between coats: when they open, and a day or less before they close. */
  private void windows(ProjectPlan plan) {
    List<CoatStep> coats = plan.coats().coats();
    for (CoatStep coat : coats.subList(0, coats.size() - 1)) {
      Optional<Moment> opens = coat.drying().moment(Stage.RECOAT_OPENS);
      Optional<Moment> closes = coat.drying().moment(Stage.RECOAT_CLOSES);
      if (opens.isEmpty()) {
        continue;
      }
      String id = "recoat-" + coat.number();
      String over = "Recoat over coat " + coat.number();
      VEvent event = event(id, over + " opens", opens.get(), closes.orElse(opens.get()));
      if (closes.isPresent()) {
        event.setDescription("After it closes, scuff the whole coat before the next.");
      }
      event.setTransparency(true);
      alarm(event, over + ": the window opens", 0, Related.START);
      if (closes.isPresent()) {
        alarm(event, over + ": the window closes in 2 hours", 120, Related.END);
      }
      calendar.addEvent(event);
    }
  }

  private void reEntries(ProjectPlan plan) {
    if (plan.air().isEmpty() || plan.air().get().reEntries().get(0).second().isEmpty()) {
      return;
    }
    double seconds = Math.ceil(plan.air().get().reEntries().get(0).second().getAsDouble());
    for (CoatStep coat : plan.coats().coats()) {
      Moment safe = coat.start().plusSeconds(seconds).startOfMinute().plusMinutes(1);
      VEvent event =
          event("re-enter-" + coat.number(), "Stay out of the room, fan on", coat.start(), safe);
      event.setDescription(
          "Vapour of coat " + coat.number() + ". No flame, no sparks. The safety data sheet wins.");
      event.setTransparency(true);
      alarm(event, "The room is fit to sit in again", 0, Related.END);
      calendar.addEvent(event);
    }
  }

  private VEvent event(String id, String title, Moment from, Moment to) {
    VEvent event = new VEvent();
    event.setUid(id + "@" + planId + ".benchlore");
    event.setDateTimeStamp(
        Date.from(LocalDateTime.parse(stamp.toString()).toInstant(ZoneOffset.UTC)));
    event.setSummary(title);
    event.setDateStart(new DateStart(floating(from)));
    if (to.isAfter(from)) {
      event.setDateEnd(new DateEnd(floating(to)));
    }
    return event;
  }

  private static ICalDate floating(Moment moment) {
    return new ICalDate(
        new DateTimeComponents(
            moment.date().year(),
            moment.date().month(),
            moment.date().dayOfMonth(),
            moment.hour(),
            moment.minute(),
            moment.second(),
            false),
        true);
  }

  private static void alarm(VEvent event, String words, int minutesBefore, Related to) {
    Duration before = Duration.builder().prior(minutesBefore > 0).minutes(minutesBefore).build();
    event.addAlarm(VAlarm.display(new Trigger(before, to), words));
  }

  /** The library would write the wall clock of this machine's zone; ours belongs to none. */
  private static final class FloatingStart extends DateStartScribe {
    @Override
    protected String _writeText(DateStart start, WriteContext context) {
      return start.getValue().getRawComponents().toString(true, false);
    }
  }

  private static final class FloatingEnd extends DateEndScribe {
    @Override
    protected String _writeText(DateEnd end, WriteContext context) {
      return end.getValue().getRawComponents().toString(true, false);
    }
  }
}
