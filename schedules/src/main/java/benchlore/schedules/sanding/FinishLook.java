package benchlore.schedules.sanding;

import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import java.util.List;

/**
 * How the finished surface will look, as far as the last grade hangs on it. Of the everyday grades
 * within the finish's own range a gloss takes the finest, satin the middle, matt and oil the
 * coarsest; but no film on furniture goes over wood coarser than P150 and no oil over coarser than
 * P180, if the range reaches so far.
 */
public enum FinishLook {
  /** A film with a sharp reflection. */
  GLOSS(150),
  /** A film between gloss and satin. */
  SEMI_GLOSS(150),
  /** A film with a soft reflection. */
  SATIN(150),
  /** A film with hardly any. */
  MATT(150),
  /** Soaks in and is wiped off. */
  OILED(180),
  /** Stain, sealer, wax, filler: the finish's own range as it stands. */
  AS_STATED(0);

  /** Why the last grade is where it is. */
  static final Provenance FROM =
      Provenance.commonPractice(
          "gloss shows scratches that satin hides; oil on furniture stops at P180 or finer");

  private final double coarsestOnFurniture;

  FinishLook(double coarsestOnFurniture) {
    this.coarsestOnFurniture = coarsestOnFurniture;
  }

  /** What a finish of this role and sheen looks like. */
  public static FinishLook of(FinishRole role, Sheen sheen) {
    return switch (role) {
      case FILM -> film(sheen);
      case PENETRATING -> OILED;
      case SEALER, STAIN, FILLER, WAX, COMPOUND -> AS_STATED;
    };
  }

  private static FinishLook film(Sheen sheen) {
    return switch (sheen) {
      case GLOSS -> GLOSS;
      case SEMI_GLOSS -> SEMI_GLOSS;
      case SATIN -> SATIN;
      case MATT -> MATT;
    };
  }

  /** The largest grain this look takes, of a finish's range of P numbers. */
  double coarsestMicron(SourcedRange grades) {
    List<Grit> usual = UsualSeries.within(grades);
    if (this == AS_STATED || usual.isEmpty()) {
      return Grits.micronOfP(grades.low());
    }
    int at = place(usual.size());
    while (grades.high() >= coarsestOnFurniture
        && at < usual.size() - 1
        && usual.get(at).number() < coarsestOnFurniture) {
      at = at + 1;
    }
    return usual.get(at).micron();
  }

  private int place(int size) {
    return switch (this) {
      case GLOSS -> size - 1;
      case SEMI_GLOSS -> size / 2;
      case SATIN -> (size - 1) / 2;
      case MATT, OILED, AS_STATED -> 0;
    };
  }
}
