package benchlore.generator.content;

/** What a unit written in a content file is in the engine's unit. */
public final class WrittenUnits {
  private WrittenUnits() {}

  /**
   * Engine units in one of a written unit.
   *
   * @param unit such as {@code mm}
   * @return such as 0.001
   */
  public static double factor(String unit) {
    return Units.of(unit).factor();
  }
}
