package benchlore.schedules.project;

import benchlore.schedules.air.AirSchedule;
import benchlore.schedules.coating.CoatingSchedule;
import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;

/**
 * A worked-out project.
 *
 * @param steps in order of their start
 * @param shopping what to have ready
 * @param coats the coats, for a drawing of their windows
 * @param air the air after one coat, for a drawing; empty if nothing but water evaporates
 */
public record ProjectPlan(
    List<Step> steps, List<Purchase> shopping, CoatingSchedule coats, Optional<AirSchedule> air) {
  /** Copies the lists; refuses an empty plan. */
  public ProjectPlan {
    steps = List.copyOf(steps);
    shopping = List.copyOf(shopping);
    if (steps.isEmpty()) {
      throw new ComponentException("steps", "must not be empty");
    }
  }

  /** The first moment of work. */
  public Moment start() {
    return steps.get(0).start();
  }

  /** When the last step is done. */
  public Moment end() {
    Moment end = steps.get(0).end();
    for (Step step : steps) {
      end = end.orLater(step.end());
    }
    return end;
  }

  /** Hands-on seconds of all steps. */
  public double workSeconds() {
    double seconds = 0;
    for (Step step : steps) {
      seconds = step.workSeconds() + seconds;
    }
    return seconds;
  }

  /** The step of this name, such as "coat-2". */
  public Optional<Step> find(String name) {
    for (Step step : steps) {
      if (step.id().name().equals(name)) {
        return Optional.of(step);
      }
    }
    return Optional.empty();
  }
}
