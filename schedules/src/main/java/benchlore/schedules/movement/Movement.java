package benchlore.schedules.movement;

import benchlore.schedules.material.Species;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Optional;

/**
 * How far wood swells and shrinks across the grain.
 *
 * <pre>
 * change = width x C x (moisture after - moisture before)                     from 6 to 14 %
 * change = width x (after - before) / (30 x 100 / S - 30 + before)            beyond, to 30 %
 * C at ring angle a: C = CT cos^2 a + CR sin^2 a      (a = 0 flat sawn, 90 quartered)
 * no coefficient known: C = S / (3000 - 20 S)         (S = shrinkage green to dry, percent)
 * </pre>
 *
 * <p>The first form holds between 6 and 14 % moisture, the second wherever one moisture lies
 * outside; it is the straight line from green size at 30 % to dry. The two agree at 10 %, so a
 * change that leaves 6 to 14 % is reckoned in pieces, each by its own form from the size at the
 * border. Nearer to 30 % than about 25 % real wood no longer keeps to a line. The handbook says of
 * its own rule that width is over- and thickness underestimated in ordinary boards. The link to
 * shrinkage meets the printed coefficients to 0.00001 (exceptions: redwood, western redcedar,
 * mahogany, teak). Along the grain movement is taken as none. Source: USDA FPL-GTR-190 Wood
 * Handbook (2010), chapter 13; ring angle: the turning of plane strain.
 */
public final class Movement {
  private Movement() {}

  /**
   * Change of a size across the grain.
   *
   * @param widthMetre size before
   * @param coefficient fraction for one point of moisture
   * @param fromPercent moisture before
   * @param toPercent moisture after
   * @return metres, positive for swelling; exactly opposite if the two moistures change places
   */
  public static double changeMetre(
      double widthMetre, double coefficient, double fromPercent, double toPercent) {
    return widthMetre * coefficient * (toPercent - fromPercent);
  }

  /**
   * Change of a size across the grain by the handbook's second form, from green dimensions.
   *
   * @param widthMetre size before
   * @param shrinkagePercent green to oven-dry along that direction, above 0, to 20
   * @param fromPercent moisture before, 0 to 30
   * @param toPercent moisture after, 0 to 30
   * @return metres, positive for swelling; NaN outside the ranges
   */
  public static double changeByShrinkageMetre(
      double widthMetre, double shrinkagePercent, double fromPercent, double toPercent) {
    boolean holds =
        shrinkagePercent > 0
            && shrinkagePercent <= 20
            && Math.min(fromPercent, toPercent) >= 0
            && Math.max(fromPercent, toPercent) <= FitFigures.GREEN_PERCENT;
    return holds
        ? widthMetre
            * (toPercent - fromPercent)
            / (100 * FitFigures.GREEN_PERCENT / shrinkagePercent
                - FitFigures.GREEN_PERCENT
                + fromPercent)
        : Double.NaN;
  }

  /**
   * Change of a size across the grain over any moisture: the first form from 6 to 14 %, the second
   * beyond, each from the size at the border; nothing above 30 %.
   *
   * @param widthMetre size before
   * @param coefficient fraction for one point of moisture, above 0
   * @param fromPercent moisture before, 0 or more
   * @param toPercent moisture after, 0 or more
   * @return metres, positive for swelling
   */
  public static double acrossMetre(
      double widthMetre, double coefficient, double fromPercent, double toPercent) {
    double enter = straight(fromPercent);
    double leave = straight(toPercent);
    double before = beyondMetre(widthMetre, coefficient, fromPercent, enter);
    double there = widthMetre + before;
    double within = changeMetre(there, coefficient, enter, leave);
    double after = beyondMetre(there + within, coefficient, leave, toPercent);
    return before + within + after;
  }

  /** Whether both moistures lie where the first form holds. */
  static boolean isStraight(double fromPercent, double toPercent) {
    return straight(fromPercent) == fromPercent && straight(toPercent) == toPercent;
  }

  private static double straight(double percent) {
    return Math.min(
        FitFigures.STRAIGHT_HIGH_PERCENT, Math.max(FitFigures.STRAIGHT_LOW_PERCENT, percent));
  }

  /** The second form, its shrinkage told by the coefficient: 3000 / S = 1 / C + 20. */
  private static double beyondMetre(double metre, double coefficient, double from, double to) {
    double before = Math.min(from, FitFigures.GREEN_PERCENT);
    double after = Math.min(to, FitFigures.GREEN_PERCENT);
    return metre * (after - before) / (1 / coefficient - 10 + before);
  }

  /**
   * Coefficient from shrinkage.
   *
   * @param shrinkagePercent green to oven-dry, above 0, to 20
   * @return fraction for one point of moisture; NaN outside the range
   */
  public static double coefficientFromShrinkage(double shrinkagePercent) {
    if (!(shrinkagePercent > 0 && shrinkagePercent <= 20)) {
      return Double.NaN;
    }
    return shrinkagePercent / (3000 - 20 * shrinkagePercent);
  }

  /**
   * Coefficient between flat and quartered.
   *
   * @param tangential along the rings
   * @param radial across the rings
   * @param degrees ring angle, 0 flat to 90 quartered
   * @return fraction for one point of moisture
   */
  public static double coefficientAt(double tangential, double radial, double degrees) {
    double cos = Numeric.cosDegrees(degrees);
    double flat = cos * cos;
    double standing = (1 - flat) * radial;
    return flat * tangential + standing;
  }

  /** The radial coefficient of a species: its own, else from its shrinkage. */
  public static SourcedRange radial(Species wood) {
    return coefficient(wood.movement().movementRadial(), wood.movement().radialShrinkage());
  }

  /** The tangential coefficient of a species: its own, else from its shrinkage. */
  public static SourcedRange tangential(Species wood) {
    return coefficient(wood.movement().movementTangential(), wood.movement().tangentialShrinkage());
  }

  /**
   * The range of coefficients over the ring angles of a board: least and most over both the angles
   * and the species' own spread. The rule is straight in cos^2, so the ends hold the extremes.
   */
  static SourcedRange over(Species wood, RingAngle rings) {
    SourcedRange t = tangential(wood);
    SourcedRange r = radial(wood);
    double low =
        Math.min(
            coefficientAt(t.low(), r.low(), rings.lowDegrees()),
            coefficientAt(t.low(), r.low(), rings.highDegrees()));
    double high =
        Math.max(
            coefficientAt(t.high(), r.high(), rings.lowDegrees()),
            coefficientAt(t.high(), r.high(), rings.highDegrees()));
    return SourcedRange.range(low, high, Unit.PER_PERCENT_MOISTURE, Provenance.computed());
  }

  private static SourcedRange coefficient(Optional<SourcedRange> own, SourcedRange shrinkage) {
    if (own.isPresent()) {
      return own.get();
    }
    return SourcedRange.range(
        coefficientFromShrinkage(shrinkage.low()),
        coefficientFromShrinkage(shrinkage.high()),
        Unit.PER_PERCENT_MOISTURE,
        FitSources.FROM_SHRINKAGE);
  }
}
