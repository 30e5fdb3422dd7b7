package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.schedules.coating.OverRule;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Provenance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows of {@code finish-over-finish.yaml}, one rule for each pair of families they name. */
final class OverRows {
  private OverRows() {}

  static List<OverRule> of(List<Facts> rows) {
    List<OverRule> rules = new ArrayList<>();
    for (Facts row : rows) {
      for (FinishFamily upper : row.wordList("upper", FinishFamily.class)) {
        for (FinishFamily under : row.wordList("under", FinishFamily.class)) {
          // A finish over itself follows its own recoat rule.
          if (upper != under) {
            rules.add(rule(row, upper, under));
          }
        }
      }
    }
    return List.copyOf(rules);
  }

  private static OverRule rule(Facts row, FinishFamily upper, FinishFamily under) {
    return new OverRule(
        upper,
        under,
        row.word("verdict", OverRule.Verdict.class),
        row.word("wait-until", Stage.class),
        row.words("barrier").isEmpty()
            ? Optional.empty()
            : Optional.of(row.word("barrier", FinishFamily.class)),
        row.words("why"),
        row.words("from").equals("common-practice")
            ? Provenance.commonPractice("")
            : Provenance.fromMemory(""));
  }
}
