package benchlore.schedules.cutting;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Unit;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A router bit. Any number may be given; a plan refuses figures out of range.
 *
 * @param diameterMetre largest cutting diameter, 0.0005 to 0.0889 (3 1/2 in)
 * @param flutes cutting edges, 1 to 8
 * @param cuttingLengthMetre length of the edges, 0.001 to 0.15
 * @param shankDiameterMetre 0.002 to 0.0255
 * @param shankLengthMetre plain shank above the edges and any bearing, 0.005 to 0.15
 * @param markedRpm highest speed marked on the bit or its packet
 * @param bearing the guide bearing, if it has one
 */
public record Bit(
    double diameterMetre,
    int flutes,
    double cuttingLengthMetre,
    double shankDiameterMetre,
    double shankLengthMetre,
    OptionalDouble markedRpm,
    Optional<Bearing> bearing) {
  /**
   * A guide bearing.
   *
   * @param seat where it sits
   * @param diameterMetre 0.003 to 0.0889
   * @param heightMetre 0.001 to 0.03
   */
  public record Bearing(Seat seat, double diameterMetre, double heightMetre) {
    /** Where a bearing sits. */
    public enum Seat {
      /** Above the edges: runs on a template on top of the work (a pattern bit). */
      SHANK,
      /** At the tip: runs on a template below the work (a flush-trim bit). */
      TIP
    }

    /** Refuses a null seat. */
    public Bearing {
      Objects.requireNonNull(seat, "seat");
    }

    void check(Checks checks) {
      checks
          .within("bit.bearing.diameterMetre", diameterMetre, 0.003, 0.0889, Unit.METRE)
          .within("bit.bearing.heightMetre", heightMetre, 0.001, 0.03, Unit.METRE);
    }
  }

  /** Shank of a common quarter-inch bit, metres; from memory. */
  public static final double USUAL_SHANK_METRE = 0.032;

  /** Refuses nulls. */
  public Bit {
    Objects.requireNonNull(markedRpm, "markedRpm");
    Objects.requireNonNull(bearing, "bearing");
  }

  /** A plain bit without bearing or marking, its shank {@value #USUAL_SHANK_METRE} m long. */
  public static Bit plain(
      double diameterMetre, int flutes, double cuttingLengthMetre, double shankDiameterMetre) {
    return new Bit(
        diameterMetre,
        flutes,
        cuttingLengthMetre,
        shankDiameterMetre,
        USUAL_SHANK_METRE,
        OptionalDouble.empty(),
        Optional.empty());
  }

  /** The same bit with a highest speed marked on it. */
  public Bit withMarkedRpm(double rpm) {
    return new Bit(
        diameterMetre,
        flutes,
        cuttingLengthMetre,
        shankDiameterMetre,
        shankLengthMetre,
        OptionalDouble.of(rpm),
        bearing);
  }

  /** The same bit with a bearing. */
  public Bit withBearing(Bearing given) {
    return new Bit(
        diameterMetre,
        flutes,
        cuttingLengthMetre,
        shankDiameterMetre,
        shankLengthMetre,
        markedRpm,
        Optional.of(given));
  }

  void check(Checks checks) {
    checks
        .within(
            "bit.diameterMetre", diameterMetre, 0.0005, BitSpeeds.MOST_DIAMETER_METRE, Unit.METRE)
        .within("bit.flutes", flutes, 1, 8, Unit.COUNT)
        .within("bit.cuttingLengthMetre", cuttingLengthMetre, 0.001, 0.15, Unit.METRE)
        .within("bit.shankDiameterMetre", shankDiameterMetre, 0.002, 0.0255, Unit.METRE)
        .within("bit.shankLengthMetre", shankLengthMetre, 0.005, 0.15, Unit.METRE);
    if (markedRpm.isPresent()) {
      checks.within("bit.markedRpm", markedRpm.getAsDouble(), 1000, 60_000, Unit.RPM);
    }
    bearing.ifPresent(b -> b.check(checks));
  }

  /** The lower of chart and marking, for a bit already checked. */
  double highestRpm() {
    double chart = BitSpeeds.highestRpm(diameterMetre);
    return markedRpm.isPresent() ? Math.min(chart, markedRpm.getAsDouble()) : chart;
  }
}
