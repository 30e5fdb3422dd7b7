package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/** A sheen to rub a cured film to, with the range of its last paper and the rubbing after it. */
public enum RubbedSheen {
  /** No reflections: a scouring pad's scratch. */
  MATT(400, 600, RubKind.GENERAL_PAD, RubKind.NONE),
  /** Soft reflections. */
  SATIN(400, 600, RubKind.FINE_PAD, RubKind.NONE),
  /** Reflections with soft edges. */
  SEMI_GLOSS(1000, 1500, RubKind.PUMICE, RubKind.NONE),
  /** Clear reflections. */
  GLOSS(2000, 2500, RubKind.COMPOUND, RubKind.POLISH);

  private final int coarsestP;
  private final int finestP;
  private final RubKind first;
  private final RubKind second;

  RubbedSheen(int coarsestP, int finestP, RubKind first, RubKind second) {
    this.coarsestP = coarsestP;
    this.finestP = finestP;
    this.first = first;
    this.second = second;
  }

  /** P grades that will do as the last paper. From memory: general finishing practice. */
  public SourcedRange lastPaper() {
    Provenance from = Provenance.fromMemory("rub-out chains of general finishing practice");
    return SourcedRange.range(coarsestP, finestP, Unit.COUNT, from);
  }

  /** The rubbing after the last paper, in order. */
  public List<RubKind> rubbing() {
    return second == RubKind.NONE ? List.of(first) : List.of(first, second);
  }
}
