package benchlore.schedules.project;

import benchlore.schedules.answer.StepId;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How far a project has got: a plan made from it keeps what is done at the time it was done, and
 * lays out the rest from a moment on. So a step done late, or a coat that went on in the cold,
 * moves all that follows.
 *
 * @param resume nothing that is not done yet starts before this moment; empty before the work
 *     begins
 * @param done what is done
 */
public record Progress(Optional<Moment> resume, List<Done> done) {
  /** Nothing is done. */
  public static final Progress NONE = new Progress(Optional.empty(), List.of());

  /**
   * A step that is done.
   *
   * @param step which
   * @param slots when it was done, in order; a slot for each blank of a glue-up; not empty
   */
  public record Done(StepId step, List<Interval> slots) {
    /** Copies the list; refuses a step without a name or time. */
    public Done {
      slots = List.copyOf(slots);
      if (step == null || slots.isEmpty()) {
        throw new IllegalArgumentException("a step that is done needs its id and time");
      }
    }
  }

  /** Copies the list; refuses nulls. */
  public Progress {
    Objects.requireNonNull(resume, "resume");
    done = List.copyOf(done);
  }

  /** When a step was done; empty if it is not. */
  List<Interval> slots(StepId step) {
    for (Done one : done) {
      if (one.step().equals(step)) {
        return one.slots();
      }
    }
    return List.of();
  }

  /** The times of numbered steps that are done, from number 1 on without a gap, one list. */
  List<Interval> run(StepId.Task task) {
    List<Interval> run = new ArrayList<>();
    int number = 1;
    List<Interval> slots = slots(task.number(number));
    while (!slots.isEmpty()) {
      run.addAll(slots);
      number++;
      slots = slots(task.number(number));
    }
    return run;
  }

  /** The moment, or the one work is taken up at if that is later. */
  Moment notBefore(Moment moment) {
    return resume.isPresent() && resume.get().isAfter(moment) ? resume.get() : moment;
  }
}
