package benchlore.schedules.air;

import benchlore.schedules.material.Solvent;

/**
 * Whether a coat's vapour can be lit at shop temperatures.
 *
 * <p>Liquids with a flash point up to 60 deg C, and those of which nothing is known, count as
 * flammable. The exception is the one fire codes make for waterborne finishes: flash point above 35
 * deg C, and solvents at most a fifth of the volatile part. Sources: the flash point classes of the
 * globally harmonised system (from memory); Ohio fire code 1301:7-7-24, section 2401.2, liquids
 * that do not sustain combustion.
 */
enum Flammability {
  /** Can be lit. */
  FLAMMABLE,
  /** High flash point, or mostly water: its mist and its rags may still burn. */
  HARD_TO_LIGHT,
  /** Nothing published; treated as flammable. */
  UNKNOWN;

  private static final double FLAMMABLE_TO_CELSIUS = 60;
  private static final double WATERBORNE_ABOVE_CELSIUS = 35;
  private static final double WATERBORNE_MOST_SOLVENT = 0.2;

  static Flammability of(Release release, Solvent solvent) {
    if (release.flashPointCelsius().orElse(0) > FLAMMABLE_TO_CELSIUS) {
      return HARD_TO_LIGHT;
    }
    if (solvent.fire().flashPoint().isEmpty()) {
      return solvent.fire().lowerExplosiveLimit().isPresent() ? FLAMMABLE : UNKNOWN;
    }
    double lowest = solvent.fire().flashPoint().get().low();
    boolean waterborne =
        release.solventShare() <= WATERBORNE_MOST_SOLVENT && lowest > WATERBORNE_ABOVE_CELSIUS;
    return lowest > FLAMMABLE_TO_CELSIUS || waterborne ? HARD_TO_LIGHT : FLAMMABLE;
  }

  /** True if any solvent of any coat is of this kind. */
  boolean in(AirRequest request) {
    for (Release release : request.releases()) {
      for (Release.Share share : release.shares()) {
        if (of(release, share.solvent()) == this) {
          return true;
        }
      }
    }
    return false;
  }

  /** True if any coat's vapour must be taken as one that can be lit. */
  static boolean any(AirRequest request) {
    return FLAMMABLE.in(request) || UNKNOWN.in(request);
  }
}
