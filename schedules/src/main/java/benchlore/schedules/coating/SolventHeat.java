package benchlore.schedules.coating;

import benchlore.schedules.material.SolventShare;
import benchlore.schedules.quantity.Provenance;
import java.util.List;

/**
 * Heat of evaporation of common solvents near 25 deg C, which says how steeply their vapour
 * pressure rises with temperature.
 *
 * <p>Keyed by the solvent record's id; unknown solvents count as {@link #OTHER}. All figures from
 * memory of handbook tables.
 */
enum SolventHeat {
  ETHANOL("ethanol", 42_300),
  METHANOL("methanol", 37_400),
  ISOPROPANOL("isopropanol", 45_400),
  ACETONE("acetone", 31_000),
  TOLUENE("toluene", 38_000),
  XYLENE("xylene", 42_600),
  N_BUTYL_ACETATE("n-butyl-acetate", 43_600),
  ETHYL_ACETATE("ethyl-acetate", 35_600),
  MEK("mek", 34_800),
  MIBK("mibk", 40_600),
  BUTOXYETHANOL("butoxyethanol", 56_000),
  METHYLENE_CHLORIDE("methylene-chloride", 29_000),
  LACQUER_THINNER("lacquer-thinner", 38_000),
  NAPHTHA("naphtha", 38_000),
  D_LIMONENE("d-limonene", 48_000),
  WHITE_SPIRIT("white-spirit", 46_000),
  TURPENTINE("turpentine", 44_000),
  WATER("water", 44_000),
  OTHER("", 40_000);

  private final String solvent;
  private final double joulePerMole;

  SolventHeat(String solvent, double joulePerMole) {
    this.solvent = solvent;
    this.joulePerMole = joulePerMole;
  }

  static Provenance from() {
    return Provenance.fromMemory("heats of evaporation near 25 C");
  }

  double joulePerMole() {
    return joulePerMole;
  }

  static SolventHeat of(String solvent) {
    for (SolventHeat row : values()) {
      if (row.solvent.equals(solvent)) {
        return row;
      }
    }
    return OTHER;
  }

  /** Mean by mass share, joules a mole; that of {@link #OTHER} for an empty list. */
  static double mean(List<SolventShare> solvents) {
    double shares = 0;
    double sum = 0;
    for (SolventShare share : solvents) {
      sum = share.massShare() * of(share.solvent()).joulePerMole + sum;
      shares = shares + share.massShare();
    }
    return shares > 0 ? sum / shares : OTHER.joulePerMole;
  }
}
