package benchlore.schedules.material;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Objects;

/**
 * Transfer efficiency: the share of the liquid, and of its solids, that ends on the work, one row a
 * method or gun. The low end is the one to buy by and to reckon overspray by.
 *
 * <p>Airless: a regulation for metal furniture counts 25 %, a finishing-trade primer 40 to 50 %; an
 * air district counts HVLP as 65 %, the primer 50 to 60 %. The rows keep both.
 */
public final class Transfer {
  private static final Provenance PRIMER =
      Provenance.source(
          "Finishing-trade primer; Wisconsin NR 440.48 Table 1; an air district's HVLP rule",
          "transfer efficiency");

  private static final SourcedRange BRUSH =
      row(0.90, 0.98, Provenance.fromMemory("brush or roller"));
  private static final SourcedRange PAD =
      row(0.85, 0.95, Provenance.fromMemory("pad holds some back"));
  private static final SourcedRange WIPE =
      row(0.70, 0.90, Provenance.fromMemory("cloth soaks some up"));
  private static final SourcedRange FLOOD =
      row(0.60, 0.85, Provenance.fromMemory("excess wiped off"));
  private static final SourcedRange HVLP = row(0.50, 0.65, PRIMER);
  private static final SourcedRange CUP = row(0.25, 0.30, PRIMER);
  private static final SourcedRange AIRLESS = row(0.25, 0.50, PRIMER);
  private static final SourcedRange ASSISTED = row(0.60, 0.80, PRIMER);

  private Transfer() {}

  /**
   * The share that lands.
   *
   * @param method how the liquid goes on
   * @param gun looked at for spraying alone
   * @return 0 to 1, {@link Unit#RATIO}
   */
  public static SourcedRange of(ApplicationMethod method, SprayGun gun) {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(gun, "gun");
    return switch (method) {
      case BRUSH, ROLLER -> BRUSH;
      case PAD -> PAD;
      case WIPE -> WIPE;
      case FLOOD -> FLOOD;
      case SPRAY ->
          switch (gun) {
            case HVLP -> HVLP;
            case CUP_GUN -> CUP;
            case AIRLESS -> AIRLESS;
            case AIR_ASSISTED_AIRLESS -> ASSISTED;
          };
    };
  }

  private static SourcedRange row(double low, double high, Provenance from) {
    return SourcedRange.range(low, high, Unit.RATIO, from);
  }
}
