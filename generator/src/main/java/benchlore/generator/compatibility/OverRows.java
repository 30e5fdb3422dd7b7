package benchlore.generator.compatibility;

import benchlore.generator.content.Facts;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.compatibility.OverReason;
import benchlore.schedules.compatibility.OverRow;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Provenance;
import java.util.List;
import java.util.Optional;

/** The rows of {@code finish-over-finish.yaml} as the engine has them. */
public final class OverRows {
  private OverRows() {}

  /**
   * Reads the rows.
   *
   * @param rows the file's rows, checked by its schema
   */
  public static List<OverRow> of(List<Facts> rows) {
    return rows.stream().map(OverRows::row).toList();
  }

  private static OverRow row(Facts row) {
    OverReason reason =
        new OverReason(
            row.word("verdict", OverReason.Holds.class),
            row.word("wait-until", Stage.class),
            row.words("barrier").isEmpty()
                ? Optional.empty()
                : Optional.of(row.word("barrier", FinishFamily.class)),
            row.words("why"),
            row.words("from").equals("common-practice")
                ? Provenance.commonPractice("")
                : Provenance.fromMemory(""));
    return new OverRow(
        row.wordList("upper", FinishFamily.class),
        row.wordList("under", FinishFamily.class),
        reason);
  }
}
