package benchlore.schedules.coating;

/**
 * What a piece of work uses up.
 *
 * @param liquidCubicMetre finish, losses included
 * @param sheets quarter sheets of abrasive, or pads
 * @param compoundKilogram pumice, rottenstone or compound
 */
public record Supplies(double liquidCubicMetre, int sheets, double compoundKilogram) {
  /** Nothing. */
  public static final Supplies NONE = new Supplies(0, 0, 0);

  /** Refuses negative and unreal figures. */
  public Supplies {
    if (!(liquidCubicMetre >= 0) || !(compoundKilogram >= 0) || sheets < 0) {
      throw new IllegalArgumentException(
          "liquidCubicMetre, sheets and compoundKilogram must be 0 or more");
    }
  }

  /** Both together. */
  public Supplies with(Supplies other) {
    return new Supplies(
        liquidCubicMetre + other.liquidCubicMetre,
        sheets + other.sheets,
        compoundKilogram + other.compoundKilogram);
  }
}
