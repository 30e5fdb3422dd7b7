package benchlore.schedules.project;

import benchlore.schedules.air.AirSchedule;
import benchlore.schedules.coating.CoatingSchedule;
import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A worked-out project.
 *
 * @param steps in order of their start
 * @param shopping what to have ready
 * @param layers the coats of each finish, the first on the wood first
 */
public record ProjectPlan(List<Step> steps, List<Purchase> shopping, List<Laid> layers) {
  /**
   * The coats of one finish, for a drawing of their windows.
   *
   * @param title what the finish is called
   * @param before how many coats of others lie under it
   * @param coats its own
   * @param air the air after one of them; empty if nothing but water evaporates
   */
  public record Laid(String title, int before, CoatingSchedule coats, Optional<AirSchedule> air) {
    /** Refuses nulls. */
    public Laid {
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(coats, "coats");
      Objects.requireNonNull(air, "air");
    }
  }

  /** Copies the lists; refuses an empty plan. */
  public ProjectPlan {
    steps = List.copyOf(steps);
    shopping = List.copyOf(shopping);
    layers = List.copyOf(layers);
    if (steps.isEmpty() || layers.isEmpty()) {
      throw new ComponentException(steps.isEmpty() ? "steps" : "layers", "must not be empty");
    }
  }

  /** The finish that went on last. */
  public Laid top() {
    return layers.get(layers.size() - 1);
  }

  /** The coats of the finish that went on last. */
  public CoatingSchedule coats() {
    return top().coats();
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
