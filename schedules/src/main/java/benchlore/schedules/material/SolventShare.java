package benchlore.schedules.material;

import benchlore.schedules.material.Field.Limits;
import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Objects;

/**
 * One solvent of a finish.
 *
 * @param solvent the solvent record's id
 * @param share its share of the volatile part by mass, percent, 0.01 to 100
 */
public record SolventShare(String solvent, SourcedRange share) {
  private static final Field<SolventShare, String> SOLVENT =
      Field.text("solvent", SolventShare::solvent);
  private static final Field<SolventShare, SourcedRange> SHARE =
      Field.figure("share", new Limits(Unit.PERCENT, 0.01, 100), SolventShare::share);

  static final FieldTable<SolventShare> TABLE =
      new FieldTable<>(
          List.of(SOLVENT, SHARE), from -> new SolventShare(SOLVENT.read(from), SHARE.read(from)));

  /** Refuses nulls and an empty id. */
  public SolventShare {
    Objects.requireNonNull(solvent, "solvent");
    Objects.requireNonNull(share, "share");
    if (solvent.isEmpty()) {
      throw new ComponentException("solvent", "must not be empty");
    }
  }

  /** The share as a part of one, the middle of its range. */
  public double massShare() {
    return share.mid() / 100;
  }
}
