package benchlore.schedules.coating;

import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Sheen;

/**
 * How well a cured film rubs out.
 *
 * <p>Hard, brittle films polish evenly to gloss; tough, flexible ones take an even satin but hardly
 * gloss; what soaks in has no film to rub. Source: Rubbing Out Finishes (a finisher's article,
 * 2000), Which Finishes to Rub, for shellac, lacquers, two-part polyurethane and long-oil
 * varnishes; epoxy, waterborne polyurethane, sealers and paints are placed from memory.
 */
enum RubFamily {
  /** Rubs to any sheen. */
  HARD(Sheen.GLOSS),
  /** Rubs to satin evenly, higher only in patches. */
  TOUGH(Sheen.SATIN),
  /** No film to rub. */
  NONE(Sheen.MATT);

  private final Sheen highest;

  RubFamily(Sheen highest) {
    this.highest = highest;
  }

  /** Whether rubbing gets there; matt is a coat's own dullness, rubbing ends at satin. */
  boolean reaches(Sheen sheen) {
    return sheen != Sheen.MATT && sheen.compareTo(highest) <= 0;
  }

  static RubFamily of(Finish finish) {
    if (finish.role() != FinishRole.FILM) {
      return NONE;
    }
    return switch (finish.family()) {
      case SHELLAC,
          WAXED_SHELLAC,
          NITROCELLULOSE_LACQUER,
          CATALYSED_LACQUER,
          WATERBORNE_ACRYLIC,
          TWO_PART_POLYURETHANE,
          EPOXY ->
          HARD;
      case ALKYD_VARNISH,
          OIL_POLYURETHANE,
          SPAR_VARNISH,
          WATERBORNE_POLYURETHANE,
          SANDING_SEALER,
          PAINT_OIL,
          PAINT_WATERBORNE ->
          TOUGH;
      case DRYING_OIL,
          OIL_VARNISH_BLEND,
          HARDWAX_OIL,
          WAX,
          OIL_STAIN,
          GEL_STAIN,
          WATER_DYE,
          SPIRIT_DYE,
          GRAIN_FILLER ->
          NONE;
    };
  }
}
