package benchlore.schedules.cutting;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What is asked about one cut. Any number may be given; {@link Cutting#plan(CuttingRequest)}
 * refuses figures out of range.
 *
 * @param stock what is cut
 * @param bit with what
 * @param machine on what
 * @param side which side of the work the bit is on
 * @param depthMetre whole depth, 0.0001 to 0.15
 * @param wantedPassMetre depth of one pass, if not the usual: to 3.2 mm by hand, to 3 diameters on
 *     a CNC
 * @param trim how much stands beyond the line
 * @param wantedRpm speed to run at, if not the usual starting speed; within the machine's range and
 *     not above what the bit stands
 */
public record CuttingRequest(
    CutMaterial stock,
    Bit bit,
    Machine machine,
    Side side,
    double depthMetre,
    OptionalDouble wantedPassMetre,
    Trim trim,
    OptionalDouble wantedRpm) {
  /** Which side of the work the bit is on. */
  public enum Side {
    /** Round the outside of a part or along its edge. */
    OUTSIDE_EDGE,
    /** Round the inside of a frame or cut-out. */
    INSIDE_EDGE,
    /** A groove with both walls, against a fence or guide. */
    SLOT
  }

  /**
   * Wood left beyond the finished line, taken off sideways.
   *
   * @param leftMetre how much was left, 0 (none) to 0.05
   * @param biteMetre most to take in one pass, 0.0001 to 0.01; 1/16 in is usual
   */
  public record Trim(double leftMetre, double biteMetre) {
    /** 1/16 in, the usual bite. */
    public static final double USUAL_BITE_METRE = 0.0015875;

    /** Nothing to trim. */
    public static Trim none() {
      return new Trim(0, USUAL_BITE_METRE);
    }
  }

  /** Refuses nulls. */
  public CuttingRequest {
    Objects.requireNonNull(stock, "stock");
    Objects.requireNonNull(bit, "bit");
    Objects.requireNonNull(machine, "machine");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(wantedPassMetre, "wantedPassMetre");
    Objects.requireNonNull(trim, "trim");
    Objects.requireNonNull(wantedRpm, "wantedRpm");
  }

  /** An ordinary cut: usual depth and speed, nothing to trim. */
  public static CuttingRequest of(
      CutMaterial stock, Bit bit, Machine machine, Side side, double depthMetre) {
    return new CuttingRequest(
        stock,
        bit,
        machine,
        side,
        depthMetre,
        OptionalDouble.empty(),
        Trim.none(),
        OptionalDouble.empty());
  }

  /** The same cut with wood to trim. */
  public CuttingRequest withTrim(Trim given) {
    return new CuttingRequest(
        stock, bit, machine, side, depthMetre, wantedPassMetre, given, wantedRpm);
  }

  /** The same cut at a wanted speed. */
  public CuttingRequest withRpm(double rpm) {
    return new CuttingRequest(
        stock, bit, machine, side, depthMetre, wantedPassMetre, trim, OptionalDouble.of(rpm));
  }

  /** The same cut at a wanted depth of pass. */
  public CuttingRequest withPass(double metre) {
    return new CuttingRequest(
        stock, bit, machine, side, depthMetre, OptionalDouble.of(metre), trim, wantedRpm);
  }
}
