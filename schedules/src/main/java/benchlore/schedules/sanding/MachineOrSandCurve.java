package benchlore.schedules.sanding;

import java.util.List;

/**
 * Machine time against sanding time.
 *
 * @param best the stepover with the least weighted sum
 * @param points the curve, finest stepover first, the best among them
 */
public record MachineOrSandCurve(Point best, List<Point> points) {
  /** Copies the list. */
  public MachineOrSandCurve {
    points = List.copyOf(points);
  }

  /**
   * One stepover.
   *
   * @param stepoverMetre distance between passes
   * @param scallopMicron ridge height it leaves
   * @param machineSeconds area / (feed x stepover)
   * @param sandingSeconds hands-on time of the face passes
   * @param weightedSeconds weight x machine + sanding
   */
  public record Point(
      double stepoverMetre,
      double scallopMicron,
      double machineSeconds,
      double sandingSeconds,
      double weightedSeconds) {}
}
