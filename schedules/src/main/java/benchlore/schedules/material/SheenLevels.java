package benchlore.schedules.material;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * Gloss units at 60 degrees of each sheen.
 *
 * <p>By a paint standard's levels: matt to 10 (its two lowest), satin 20 to 35, semi-gloss 35 to
 * 70, gloss 70 to 85 and above. Another trade calls 11 to 40 satin: names are no measure, the gloss
 * units are.
 */
public final class SheenLevels {
  private static final Provenance LEVELS =
      Provenance.source(
          "Master Painters Institute gloss and sheen standard", "levels 1 to 7, 60 degrees");

  private SheenLevels() {}

  public static SourcedRange of(Sheen sheen) {
    return switch (sheen) {
      case MATT -> row(0, 10);
      case SATIN -> row(20, 35);
      case SEMI_GLOSS -> row(35, 70);
      case GLOSS -> row(70, 100);
    };
  }

  private static SourcedRange row(double low, double high) {
    return SourcedRange.range(low, high, Unit.GLOSS_UNIT, LEVELS);
  }
}
