package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Provenance;

/**
 * The ridges a round cutter leaves between neighbouring cuts.
 *
 * <pre>
 * exact      h = r - sqrt(r^2 - (s/2)^2)
 * inverse    s = 2 sqrt(h (2 r - h)),   r = (s^2 + 4 h^2) / (8 h)
 * small s    h = s^2 / (8 r)
 * </pre>
 *
 * <p>r is the cutter's radius and s the distance between cuts: the stepover of a ball-nose bit, or
 * the feed a knife or flute for a planer head or straight bit, whose path is nearly a circle. Valid
 * for 0 &lt; s &lt;= 2 r. Source: three machining calculator pages agree on the exact form and the
 * inverse; 10 mm ball, 0.5 mm stepover: 0.0063 mm. Known error: a knife's path is a stretched
 * circle (a trochoid), which is below one percent at shop feeds; knives that are not set alike
 * leave the marks of one knife only, so give that pitch.
 */
public final class ArcMarks {
  static final Provenance FORMULA =
      Provenance.source(
          "Machining calculator pages, scallop height", "h = r - sqrt(r^2 - (s/2)^2)");

  private ArcMarks() {}

  /**
   * Height of the ridges.
   *
   * @param radiusMetre cutter radius, above 0
   * @param pitchMetre distance between cuts, 0 to 2 r
   * @return metres; NaN outside those ranges
   */
  public static double heightMetre(double radiusMetre, double pitchMetre) {
    double half = pitchMetre / 2;
    double square = half * half;
    if (!(radiusMetre > 0) || !(half >= 0 && half <= radiusMetre)) {
      return Double.NaN;
    }
    // The same as r - sqrt(r^2 - half^2) without losing digits when the ridges are small.
    return square / (radiusMetre + Math.sqrt(radiusMetre * radiusMetre - square));
  }

  /**
   * The distance between cuts that leaves ridges of a height: the inverse of {@link #heightMetre}.
   *
   * @param radiusMetre cutter radius, above 0
   * @param heightMetre 0 to r
   * @return metres; NaN outside those ranges
   */
  public static double pitchMetre(double radiusMetre, double heightMetre) {
    // A half circle is as high as its radius; rounding may put it a hair above.
    double highest = radiusMetre * (1 + 1e-9);
    if (!(radiusMetre > 0) || !(heightMetre >= 0 && heightMetre <= highest)) {
      return Double.NaN;
    }
    return 2 * Math.sqrt((2 * radiusMetre - heightMetre) * heightMetre);
  }

  /**
   * The cutter radius that leaves ridges of a height at a pitch.
   *
   * @param pitchMetre above 0
   * @param heightMetre above 0, at most half the pitch
   * @return metres; NaN outside those ranges
   */
  public static double radiusMetre(double pitchMetre, double heightMetre) {
    // A half circle is as high as half its width; rounding may put it a hair above.
    double highest = pitchMetre / 2 * (1 + 1e-9);
    if (!(pitchMetre > 0) || !(heightMetre > 0 && heightMetre <= highest)) {
      return Double.NaN;
    }
    return (pitchMetre * pitchMetre + 4 * heightMetre * heightMetre) / (8 * heightMetre);
  }

  /**
   * Distance between knife marks: feed over knives that cut each second.
   *
   * @param feedMetrePerSecond feed speed, above 0
   * @param rpm revolutions a minute of the head, above 0
   * @param knives knives or flutes that really cut, 1 or more
   * @return metres; NaN outside those ranges. Source: "Knife marks per inch", wood-industry
   *     magazine: marks an inch = rpm x knives / (feed in ft/min x 12)
   */
  public static double knifePitchMetre(double feedMetrePerSecond, double rpm, int knives) {
    if (!(feedMetrePerSecond > 0) || !(rpm > 0) || knives < 1) {
      return Double.NaN;
    }
    return feedMetrePerSecond * 60 / (rpm * knives);
  }
}
