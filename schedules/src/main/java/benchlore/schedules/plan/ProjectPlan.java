package benchlore.schedules.plan;

import benchlore.schedules.air.AirSchedule;
import benchlore.schedules.coating.CoatSchedule;
import java.time.LocalDateTime;
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
    List<Step> steps, List<Purchase> shopping, CoatSchedule coats, Optional<AirSchedule> air) {
  /** Copies the lists; refuses an empty plan. */
  public ProjectPlan {
    steps = List.copyOf(steps);
    shopping = List.copyOf(shopping);
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("steps must not be empty");
    }
  }

  /** The first moment of work. */
  public LocalDateTime start() {
    return steps.get(0).start();
  }

  /** When the last step is done. */
  public LocalDateTime end() {
    LocalDateTime end = steps.get(0).end();
    for (Step step : steps) {
      end = step.end().isAfter(end) ? step.end() : end;
    }
    return end;
  }

  /** Hands-on seconds of all steps. */
  public long workSeconds() {
    long seconds = 0;
    for (Step step : steps) {
      seconds = seconds + step.workSeconds();
    }
    return seconds;
  }

  /** The step with this id. */
  public Optional<Step> find(String id) {
    for (Step step : steps) {
      if (step.id().equals(id)) {
        return Optional.of(step);
      }
    }
    return Optional.empty();
  }
}
