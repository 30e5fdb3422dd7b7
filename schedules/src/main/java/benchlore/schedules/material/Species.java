package benchlore.schedules.material;

import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Optional;

/**
 * What the engine needs to know of one species. Ranges stay ranges.
 *
 * <p>Every figure is checked here for its unit and for a range no wood leaves; a record file that
 * breaks one is an author's mistake and should be caught by its loader first (see the limits at
 * each component).
 *
 * @param specificGravity oven-dry mass over volume at 12 % moisture content, {@link Unit#RATIO},
 *     0.05 to 1.5 ({@code specific-gravity} in a species record)
 * @param hardness side hardness, {@link Unit#NEWTON}, 100 to 30000 ({@code hardness})
 * @param radialShrinkage green to oven-dry, {@link Unit#PERCENT}, 0.1 to 20 ({@code
 *     radial-shrinkage})
 * @param tangentialShrinkage green to oven-dry, {@link Unit#PERCENT}, 0.1 to 20 ({@code
 *     tangential-shrinkage})
 * @param movementRadial dimensional change coefficient, {@link Unit#PER_PERCENT_MOISTURE}, 0.0001
 *     to 0.01; absent: worked out from the shrinkage ({@code movement-radial})
 * @param movementTangential as {@code movementRadial}, along the rings ({@code
 *     movement-tangential})
 * @param pores how the vessels lie ({@code pores})
 * @param openGrained true if the pores show as pits through a film unless they are filled ({@code
 *     open-grained})
 * @param oily true if the wood carries oil or wax that troubles glue and film ({@code oily})
 * @param figuredOrBlotchy true if figure tears out or stain goes on uneven ({@code blotch-prone})
 * @param hardwood true for a broadleaf tree, false for a conifer ({@code group})
 * @param tannin true if the wood is rich in tannin: dark marks with iron and with water ({@code
 *     tannin-rich})
 */
public record Species(
    SourcedRange specificGravity,
    Optional<SourcedRange> hardness,
    SourcedRange radialShrinkage,
    SourcedRange tangentialShrinkage,
    Optional<SourcedRange> movementRadial,
    Optional<SourcedRange> movementTangential,
    Pores pores,
    boolean openGrained,
    boolean oily,
    boolean figuredOrBlotchy,
    boolean hardwood,
    boolean tannin) {
  /** Refuses nulls, a wrong unit and a figure no wood has. */
  public Species {
    check("specificGravity", specificGravity, 0.05, 1.5, Unit.RATIO);
    checkOptional("hardness", hardness, 100, 30_000, Unit.NEWTON);
    check("radialShrinkage", radialShrinkage, 0.1, 20, Unit.PERCENT);
    check("tangentialShrinkage", tangentialShrinkage, 0.1, 20, Unit.PERCENT);
    checkOptional("movementRadial", movementRadial, 0.0001, 0.01, Unit.PER_PERCENT_MOISTURE);
    checkOptional(
        "movementTangential", movementTangential, 0.0001, 0.01, Unit.PER_PERCENT_MOISTURE);
    if (pores == null) {
      throw new NullPointerException("pores");
    }
  }

  private static void checkOptional(
      String name, Optional<SourcedRange> datum, double low, double high, Unit unit) {
    if (datum == null) {
      throw new NullPointerException(name);
    }
    if (datum.isPresent()) {
      check(name, datum.get(), low, high, unit);
    }
  }

  private static void check(String name, SourcedRange datum, double low, double high, Unit unit) {
    if (datum == null) {
      throw new NullPointerException(name);
    }
    if (datum.unit() != unit) {
      throw new IllegalArgumentException(name + " must be in " + unit + ": " + datum.unit());
    }
    if (datum.low() < low || datum.high() > high) {
      throw new IllegalArgumentException(
          name
              + " must be "
              + Numeric.text(low)
              + " to "
              + Numeric.text(high)
              + ": "
              + Numeric.text(datum.low())
              + ", "
              + Numeric.text(datum.high()));
    }
  }
}
