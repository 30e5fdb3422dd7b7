package benchlore.schedules.air;

/** Whether a solvent's vapour can be lit at shop temperatures. */
enum Flammability {
  /** Flash point at or below 60 deg C, or a published explosive limit without a flash point. */
  FLAMMABLE,
  /** Flash point above 60 deg C: its mist and its rags still burn. */
  HARD_TO_LIGHT,
  /** Nothing published. */
  UNKNOWN;

  // Upper end of the "flammable liquid" classes of the globally harmonised system; from memory.
  private static final double FLAMMABLE_TO_CELSIUS = 60;

  static Flammability of(SolventData solvent) {
    if (solvent.flashPoint().isPresent()) {
      double lowest = solvent.flashPoint().get().low();
      return lowest <= FLAMMABLE_TO_CELSIUS ? FLAMMABLE : HARD_TO_LIGHT;
    }
    return solvent.lowerExplosiveLimit().isPresent() ? FLAMMABLE : UNKNOWN;
  }

  /** True if any solvent of the request is flammable. */
  static boolean any(AirRequest request) {
    for (SolventData solvent : request.solvents()) {
      if (of(solvent) == FLAMMABLE) {
        return true;
      }
    }
    return false;
  }
}
