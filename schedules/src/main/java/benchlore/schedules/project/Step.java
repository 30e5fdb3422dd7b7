package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One step of a plan.
 *
 * @param id which step; unique in the plan
 * @param title what is done, a few words
 * @param kind hands on, or waiting
 * @param slots when, in order; at least one; a wait is one slot
 * @param notes what to do and what to look for
 * @param cautions what can hurt or spoil, here and now
 * @param working how the figures came about
 * @param window when this step may start at the earliest and must have started at the latest
 */
public record Step(
    StepId id,
    String title,
    Kind kind,
    List<Interval> slots,
    List<Message> notes,
    List<Caution> cautions,
    List<WorkingLine> working,
    Optional<Window> window) {
  private static final double BY_THE_DAY_SECONDS = 2 * 86_400;

  /** Hands on, or waiting. */
  public enum Kind {
    /** Someone works. */
    WORK,
    /** Nobody works; the clock does. */
    WAIT
  }

  /**
   * When a step may begin.
   *
   * @param opens earliest
   * @param closes latest without extra work; empty if there is none
   */
  public record Window(Moment opens, Optional<Moment> closes) {}

  /** Copies the lists; refuses nulls and a step without time. */
  public Step {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(window, "window");
    slots = List.copyOf(slots);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
    working = List.copyOf(working);
    if (slots.isEmpty()) {
      throw new ComponentException("slots", "must not be empty");
    }
  }

  /** The same step with one caution more, before its others. */
  Step with(Caution caution) {
    List<Caution> all = new ArrayList<>();
    all.add(caution);
    all.addAll(cautions);
    return new Step(id, title, kind, slots, notes, all, working, window);
  }

  /** The same step with these cautions. */
  Step with(List<Caution> all) {
    return new Step(id, title, kind, slots, notes, all, working, window);
  }

  /** A wait of one stretch, nothing to do in it but what the notes say to look for. */
  static Step waiting(
      StepId id, String title, Interval slot, List<Message> notes, List<WorkingLine> working) {
    return new Step(
        id, title, Kind.WAIT, List.of(slot), notes, List.of(), working, Optional.empty());
  }

  /** When it begins. */
  public Moment start() {
    return slots.get(0).start();
  }

  /** When it is done. */
  public Moment end() {
    return slots.get(slots.size() - 1).end();
  }

  /** Its stretches: slots that follow each other without a pause are one. */
  public List<Interval> stretches() {
    List<Interval> stretches = new ArrayList<>();
    for (Interval slot : slots) {
      int last = stretches.size() - 1;
      if (last >= 0 && stretches.get(last).end().compareTo(slot.start()) == 0) {
        stretches.set(last, new Interval(stretches.get(last).start(), slot.end()));
      } else {
        stretches.add(slot);
      }
    }
    return stretches;
  }

  /** Whether its times are told by the day: nobody can know the hour of a long wait's end. */
  public boolean isByTheDay() {
    return kind == Kind.WAIT && start().secondsUntil(end()) >= BY_THE_DAY_SECONDS;
  }

  /** Hands-on seconds; 0 for a wait. */
  public double workSeconds() {
    double seconds = 0;
    for (Interval slot : slots) {
      seconds = slot.seconds() + seconds;
    }
    return kind == Kind.WORK ? seconds : 0;
  }
}
