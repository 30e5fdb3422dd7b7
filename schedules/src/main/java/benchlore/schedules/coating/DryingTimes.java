package benchlore.schedules.coating;

import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How one coat dries.
 *
 * @param start when it goes on
 * @param stages the stages the finish states, in the order of {@link Stage}
 * @param thicknessFactor how much the film's thickness stretches every wait, 1 or more
 * @param dryFilmMicron what stays of this coat, micrometres
 * @param potLife how long a batch mixed at {@code start} stays usable, if the finish states it
 */
public record DryingTimes(
    Moment start,
    List<StageTime> stages,
    double thicknessFactor,
    double dryFilmMicron,
    Optional<Duration> potLife) {
  /** Copies the list; refuses nulls. */
  public DryingTimes {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(potLife, "potLife");
    stages = List.copyOf(stages);
  }

  /** The wait for a stage; empty if the finish does not state it. */
  public Optional<StageTime> time(Stage stage) {
    for (StageTime time : stages) {
      if (time.stage() == stage) {
        return Optional.of(time);
      }
    }
    return Optional.empty();
  }

  /** The moment to plan a stage for; empty if the finish does not state it. */
  public Optional<Moment> moment(Stage stage) {
    return time(stage).map(time -> start.plusSeconds(time.planned().seconds()));
  }

  /**
   * Whether the recoat window is known to be open for a while: it closes, and closes after it
   * opens.
   */
  public boolean windowKnown() {
    Optional<StageTime> opens = time(Stage.RECOAT_OPENS);
    Optional<StageTime> closes = time(Stage.RECOAT_CLOSES);
    return opens.isPresent()
        && closes.isPresent()
        && closes.get().planned().compareTo(opens.get().planned()) > 0;
  }
}
