package benchlore.schedules.sanding;

import benchlore.schedules.material.Pores;
import java.util.Objects;

/**
 * The wood, as far as sanding asks.
 *
 * @param hardnessNewton side (Janka) hardness at 12 % moisture, 200 to 25000; 1 lbf = 4.448 N
 * @param densityKilogramPerCubicMetre 80 to 1400
 * @param pores how its pores lie
 * @param openGrained true if its pores show as pits through a film unless they are filled
 * @param figured curly, quilted or burl: scratches show from every side
 * @param resinous clogs the paper: pine, teak and the like
 */
public record SandingWood(
    double hardnessNewton,
    double densityKilogramPerCubicMetre,
    Pores pores,
    boolean openGrained,
    boolean figured,
    boolean resinous) {
  /** Refuses null; figures are checked by the plan. */
  public SandingWood {
    Objects.requireNonNull(pores, "pores");
  }

  /** True for dense close-pored wood, which fine paper polishes until finish stays out. */
  boolean burnishes() {
    return pores == Pores.DIFFUSE
        && !openGrained
        && hardnessNewton >= SandingFigures.DENSE_ABOVE.low();
  }

  /** True for wood soft enough to show every scratch. */
  boolean soft() {
    return pores == Pores.NONE || hardnessNewton < SandingFigures.SOFT_BELOW.low();
  }
}
