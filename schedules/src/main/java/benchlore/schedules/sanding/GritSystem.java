package benchlore.schedules.sanding;

/** A scale that grades coated abrasive by its grain. The same number means different grain. */
public enum GritSystem {
  /** The European and ISO 6344 scale: a P stands before the number. */
  FEPA_P("P"),
  /** The older North American scale: the number stands alone. */
  CAMI("CAMI ");

  private final String prefix;

  GritSystem(String prefix) {
    this.prefix = prefix;
  }

  /** What stands before the number so that nobody mixes the scales: "P" or "CAMI ". */
  public String prefix() {
    return prefix;
  }
}
