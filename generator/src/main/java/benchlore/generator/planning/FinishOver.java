package benchlore.generator.planning;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.coating.Compatibility;
import benchlore.schedules.coating.CompatibilityRequest;
import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.coating.OverRule;
import benchlore.schedules.coating.OverVerdict;
import benchlore.schedules.material.Finish;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What may go over each finish, as the engine decides it from the rows of the content. */
public final class FinishOver {
  // Any moment will do: the air is the same all day.
  private static final Moment START = Moment.of(2027, 1, 1, 9, 0);

  /**
   * One pair.
   *
   * @param upper the finish to put on
   * @param under the finish already there
   * @param start when the finish already there went on
   * @param verdict what the engine says
   */
  public record Pair(LibraryRecord upper, LibraryRecord under, Moment start, OverVerdict verdict) {}

  private final Library library;
  private final List<OverRule> rules;

  /** Prepares to decide by these rows. */
  public FinishOver(Library library, List<OverRule> rules) {
    this.library = library;
    this.rules = List.copyOf(rules);
  }

  /**
   * Every other finish over this one, in the air its own figures hold for; pairs that no row covers
   * are left out.
   *
   * @param under a finish
   * @return pairs by the upper finish's title; empty for a material without drying figures
   */
  public List<Pair> over(LibraryRecord under) {
    List<Pair> pairs = new ArrayList<>();
    Optional<Finish> below = EngineData.finish(under);
    if (below.isEmpty()) {
      return pairs;
    }
    for (LibraryRecord upper : library.of(Kind.FINISHES)) {
      Optional<Finish> above = EngineData.finish(upper);
      if (above.isPresent() && !upper.equals(under)) {
        decide(above.get(), below.get())
            .ifPresent(verdict -> pairs.add(new Pair(upper, under, START, verdict)));
      }
    }
    return pairs;
  }

  private Optional<OverVerdict> decide(Finish above, Finish below) {
    Climate air =
        Climate.steady(below.referenceCelsius().mid(), below.referenceHumidityPercent().mid());
    DryingRequest coat = new DryingRequest(below, below.wetFilmMicron().mid(), air, START);
    Answer<OverVerdict> answer = Compatibility.plan(new CompatibilityRequest(above, coat, rules));
    return answer.fold(given -> Optional.of(given.value()), refused -> Optional.empty());
  }
}
