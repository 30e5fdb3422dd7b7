package benchlore.schedules.sanding;

import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Objects;

/**
 * How a cured film is rubbed to a sheen.
 *
 * @param lastPaper P grades that will do as the last paper
 * @param rubbing the rubbing after the last paper, in order
 */
public record SheenRub(SourcedRange lastPaper, List<RubKind> rubbing) {
  private static final Provenance FROM =
      Provenance.fromMemory("rub-out chains of general finishing practice");

  /** Copies the list; refuses nulls. */
  public SheenRub {
    Objects.requireNonNull(lastPaper, "lastPaper");
    rubbing = List.copyOf(rubbing);
  }

  /** The row of a sheen. */
  public static SheenRub of(Sheen sheen) {
    return switch (sheen) {
      case MATT -> row(400, 600, RubKind.GENERAL_PAD);
      case SATIN -> row(400, 600, RubKind.FINE_PAD);
      case SEMI_GLOSS -> row(1000, 1500, RubKind.PUMICE);
      case GLOSS -> row(2000, 2500, RubKind.COMPOUND, RubKind.POLISH);
    };
  }

  private static SheenRub row(int coarsestP, int finestP, RubKind... rubbing) {
    SourcedRange paper = SourcedRange.range(coarsestP, finestP, Unit.COUNT, FROM);
    return new SheenRub(paper, List.of(rubbing));
  }
}
