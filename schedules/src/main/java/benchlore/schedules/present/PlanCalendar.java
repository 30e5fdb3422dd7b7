package benchlore.schedules.present;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.Step;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A plan as a calendar (RFC 5545): an event for every piece of work, recoat window and time to stay
 * out of the room, each with an alarm where a moment must not be missed.
 *
 * <p>Times are floating: wall-clock time wherever the calendar is, as the whole plan is.
 */
public final class PlanCalendar {
  private static final String MAKER = "-//benchlore//plan//EN";
  private static final int WORK_ALARM_MINUTES = 30;
  private static final int WINDOW_ALARM_MINUTES = 120;

  /**
   * An event.
   *
   * @param id unique in the plan
   * @param title what is done
   * @param when from when to when; a moment has no end
   * @param isFree whether the time stays free for other things
   * @param words what to do and look for; may be empty
   */
  private record Event(String id, String title, Interval when, boolean isFree, String words) {}

  private final String planId;
  private final Moment stamp;
  private final UnitSystem system;
  private final CalendarLines out = new CalendarLines();

  private PlanCalendar(String planId, Moment stamp, UnitSystem system) {
    this.planId = planId;
    this.stamp = stamp;
    this.system = system;
  }

  /**
   * What is told of a calendar as a whole.
   *
   * @param id tells its events from another plan's
   * @param title the calendar's name
   * @param stamp when it was made, in universal time; a plan's first moment gives the same text
   *     each time
   * @param system the reader's units
   */
  public record Head(String id, String title, Moment stamp, UnitSystem system) {}

  /**
   * The calendar of a plan.
   *
   * @param head its name and the like
   * @param plan the plan
   * @return the text of an {@code .ics} file, lines ending in CR LF
   */
  public static String render(Head head, ProjectPlan plan) {
    PlanCalendar made = new PlanCalendar(head.id(), head.stamp(), head.system());
    made.out.line("BEGIN:VCALENDAR");
    made.out.line("VERSION:2.0");
    made.out.line("PRODID:" + MAKER);
    made.out.text("NAME", head.title());
    for (Step step : plan.steps()) {
      made.step(step);
    }
    for (ProjectPlan.Laid laid : plan.layers()) {
      made.windows(laid);
    }
    for (ProjectPlan.Laid laid : plan.layers()) {
      made.reEntries(laid);
    }
    made.out.line("END:VCALENDAR");
    return made.out.whole();
  }

  private void step(Step step) {
    int piece = 0;
    for (Interval slot : step.stretches()) {
      piece++;
      String id = step.id().name() + (piece == 1 ? "" : "-" + piece);
      begin(new Event(id, step.title(), slot, step.kind() == Step.Kind.WAIT, words(step)));
      if (step.kind() == Step.Kind.WORK) {
        boolean clamps = step.id().is(StepId.Task.CLAMPS_OFF);
        alarm(clamps ? "Clamps off" : step.title(), clamps ? 0 : WORK_ALARM_MINUTES, "START");
      }
      end();
    }
  }

  private String words(Step step) {
    StringBuilder words = new StringBuilder();
    for (Caution caution : step.cautions()) {
      String what = "! " + FigureText.sentence(caution.what(), system);
      addLine(words, what + " " + FigureText.sentence(caution.measure(), system));
    }
    for (Message note : step.notes()) {
      addLine(words, FigureText.sentence(note, system));
    }
    return plain(words.toString());
  }

  private static void addLine(StringBuilder words, String line) {
    words.append(words.length() == 0 ? "" : "\n").append(line);
  }

  /** Without the typography that some calendars spoil. */
  private static String plain(String text) {
    return text.replace('\u00a0', ' ')
        .replace("\u202f", "")
        .replace('–', '-')
        .replace('\u2212', '-');
  }

  /** The recoat windows between coats: when they open, and two hours before they close. */
  private void windows(ProjectPlan.Laid laid) {
    List<CoatStep> coats = laid.coats().coats();
    for (CoatStep coat : coats.subList(0, coats.size() - 1)) {
      coat.drying()
          .moment(Stage.RECOAT_OPENS)
          .ifPresent(opens -> window(laid.before(), coat, opens));
    }
  }

  private void window(int before, CoatStep coat, Moment opens) {
    int number = before + coat.number();
    Optional<Moment> closes = coat.drying().moment(Stage.RECOAT_CLOSES);
    String over = "Recoat over coat " + number;
    String words =
        closes.isPresent() ? "After it closes, scuff the whole coat before the next." : "";
    Interval when = new Interval(opens, closes.orElse(opens).orLater(opens));
    begin(new Event("recoat-" + number, over + " opens", when, true, words));
    alarm(over + ": the window opens", 0, "START");
    if (closes.isPresent()) {
      alarm(over + ": the window closes in 2 hours", WINDOW_ALARM_MINUTES, "END");
    }
    end();
  }

  private void reEntries(ProjectPlan.Laid laid) {
    OptionalDouble safe =
        laid.air().isEmpty()
            ? OptionalDouble.empty()
            : laid.air().get().reEntries().get(0).second();
    if (safe.isEmpty()) {
      return;
    }
    double seconds = Math.ceil(safe.getAsDouble());
    for (CoatStep coat : laid.coats().coats()) {
      int number = laid.before() + coat.number();
      Moment from = coat.start();
      Moment to = from.plusSeconds(seconds).startOfMinute().plusMinutes(1);
      String words = "Vapour of coat " + number + ". No flame, no sparks.";
      begin(
          new Event(
              "re-enter-" + number,
              "Stay out of the room, fan on",
              new Interval(from, to),
              true,
              words + " The safety data sheet wins."));
      alarm("The room is fit to sit in again", 0, "END");
      end();
    }
  }

  private void begin(Event event) {
    out.line("BEGIN:VEVENT");
    out.text("UID", event.id() + "@" + planId + ".benchlore");
    out.line("DTSTAMP:" + CalendarLines.compact(stamp) + "Z");
    out.text("SUMMARY", event.title());
    out.moment("DTSTART", event.when().start());
    if (event.when().end().isAfter(event.when().start())) {
      out.moment("DTEND", event.when().end());
    }
    if (!event.words().isEmpty()) {
      out.text("DESCRIPTION", event.words());
    }
    out.line(event.isFree() ? "TRANSP:TRANSPARENT" : "TRANSP:OPAQUE");
  }

  private void end() {
    out.line("END:VEVENT");
  }

  private void alarm(String words, int minutesBefore, String related) {
    out.line("BEGIN:VALARM");
    out.line("ACTION:DISPLAY");
    String before = (minutesBefore > 0 ? "-" : "") + "PT" + minutesBefore + "M";
    out.line("TRIGGER;RELATED=" + related + ":" + before);
    out.text("DESCRIPTION", words);
    out.line("END:VALARM");
  }
}
