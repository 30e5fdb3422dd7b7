package benchlore.schedules.air;

/**
 * What a room's air comes to under a constant release and a constant flow of outdoor air.
 *
 * <pre>
 * c = K G / Q        (steady);  c(t) = c (1 - exp(-Q t / (K V))) on the way there
 * </pre>
 *
 * <p>The room is taken as one well-mixed space, spoilt by the mixing factor K. Source: the dilution
 * ventilation equation of the industrial ventilation handbooks.
 */
public final class SteadyState {
  private SteadyState() {}

  /**
   * Concentration that a constant release settles at.
   *
   * @param kilogramPerSecond release, 0 or more
   * @param cubicMetrePerSecond outdoor air, above 0
   * @param mixingFactor 1 for a perfectly mixed room, to 10
   * @return kg/m3; NaN outside those ranges
   */
  public static double kilogramPerCubicMetre(
      double kilogramPerSecond, double cubicMetrePerSecond, double mixingFactor) {
    boolean holds =
        kilogramPerSecond >= 0
            && cubicMetrePerSecond > 0
            && mixingFactor >= 1
            && mixingFactor <= 10;
    return holds ? mixingFactor * kilogramPerSecond / cubicMetrePerSecond : Double.NaN;
  }

  /**
   * Outdoor air that keeps a constant release at a concentration: the same rule, asked the other
   * way.
   *
   * @param kilogramPerSecond release, 0 or more
   * @param kilogramPerCubicMetre concentration to keep to, above 0
   * @param mixingFactor 1 for a perfectly mixed room, to 10
   * @return m3/s; NaN outside those ranges
   */
  public static double cubicMetrePerSecond(
      double kilogramPerSecond, double kilogramPerCubicMetre, double mixingFactor) {
    boolean holds =
        kilogramPerSecond >= 0
            && kilogramPerCubicMetre > 0
            && mixingFactor >= 1
            && mixingFactor <= 10;
    return holds ? mixingFactor * kilogramPerSecond / kilogramPerCubicMetre : Double.NaN;
  }
}
