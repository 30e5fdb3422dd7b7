package benchlore.generator.compatibility;

import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.compatibility.FinishOver;
import benchlore.schedules.compatibility.OverReason;
import benchlore.schedules.compatibility.OverRequest;
import benchlore.schedules.compatibility.OverVerdict;
import benchlore.schedules.compatibility.Rules;
import benchlore.schedules.material.Finish;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What may go over each finish, as the engine decides it from the rows of the content. */
public final class FinishOverTable {
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

  private final Map<LibraryRecord, Finish> finishes;
  private final Rules<OverReason> rules;

  /**
   * Prepares to decide by these rules.
   *
   * @param finishes the finishes that have drying figures, in the order to list them
   * @param rules the table's rules
   */
  public FinishOverTable(Map<LibraryRecord, Finish> finishes, Rules<OverReason> rules) {
    this.finishes = Collections.unmodifiableMap(new LinkedHashMap<>(finishes));
    this.rules = rules;
  }

  /**
   * Every other finish over this one, in the air its own figures hold for; pairs that no row covers
   * are left out.
   *
   * @param under a finish
   * @return pairs in the order of the finishes; empty for a material without drying figures
   */
  public List<Pair> over(LibraryRecord under) {
    List<Pair> pairs = new ArrayList<>();
    Optional<Finish> below = Optional.ofNullable(finishes.get(under));
    if (below.isEmpty()) {
      return pairs;
    }
    finishes.forEach(
        (upper, above) -> {
          if (!upper.equals(under)) {
            decide(above, below.get())
                .ifPresent(verdict -> pairs.add(new Pair(upper, under, START, verdict)));
          }
        });
    return pairs;
  }

  private Optional<OverVerdict> decide(Finish above, Finish below) {
    Climate air =
        Climate.steady(
            below.air().referenceTemperature().mid(), below.air().referenceHumidity().mid());
    DryingRequest coat = new DryingRequest(below, below.film().wetFilm().mid(), air, START);
    Answer<OverVerdict> answer = FinishOver.plan(new OverRequest(above, coat, rules));
    return answer.fold(given -> Optional.of(given.value()), refused -> Optional.empty());
  }
}
