package benchlore.schedules.sanding;

/** Rubbing after the last paper. Times and depths are from memory, for hand work. */
public enum RubKind {
  /** A general-purpose (maroon) nonwoven pad with soapy water or wax. */
  GENERAL_PAD("a general-purpose nonwoven pad, along the grain", 300, 2),
  /** A very fine (grey) nonwoven pad, or 0000 steel wool where the film isn't waterborne. */
  FINE_PAD("a very fine nonwoven pad, along the grain", 360, 1),
  /** Pumice (FFF) in oil or water on felt, or a fine compound. */
  PUMICE("pumice on felt, or a fine compound", 600, 1),
  /** Cutting compound on a pad. */
  COMPOUND("cutting compound on a soft pad", 600, 1),
  /** Rottenstone or polish on a clean pad. */
  POLISH("polish or rottenstone on a clean soft pad", 480, 0.3);

  private final String words;
  private final double secondsPerSquareMetre;
  private final double removedMicron;

  RubKind(String words, double secondsPerSquareMetre, double removedMicron) {
    this.words = words;
    this.secondsPerSquareMetre = secondsPerSquareMetre;
    this.removedMicron = removedMicron;
  }

  /** What is used, in a sentence. */
  public String words() {
    return words;
  }

  /** Hands-on seconds for a square metre. */
  public double secondsPerSquareMetre() {
    return secondsPerSquareMetre;
  }

  /** Film taken off, micrometres. */
  public double removedMicron() {
    return removedMicron;
  }
}
