package benchlore.schedules.cutting;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.cutting.CuttingSchedule.Feed;
import benchlore.schedules.cutting.CuttingSchedule.Passes;
import benchlore.schedules.cutting.CuttingSchedule.Speed;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/**
 * Speed, feed and passes of one cut.
 *
 * <pre>
 * feed = rpm x flutes x chip load                  rim speed = pi x diameter x rpm / 60
 * chip load x (1 - 0.25 (depth/diameter - 1)) for passes deeper than one diameter
 * passes = depth / deepest pass, rounded up; each then takes the same depth
 * if the machine can't push that fast, it turns slower so that the chip keeps its size
 * </pre>
 *
 * <p>Valid for carbide bits in wood and sheet. Published chip loads differ by a factor of two or
 * more between guides; the lower is taken. Sources at {@link ChipLoads} and {@link BitSpeeds}.
 */
final class CuttingPlan {
  private final CuttingRequest request;
  private final Bit bit;

  CuttingPlan(CuttingRequest request) {
    this.request = request;
    this.bit = request.bit();
  }

  Passes passes() {
    double most = request.wantedPassMetre().orElse(usualPassMetre());
    int depths = Math.max(1, Numeric.ceil(request.depthMetre() / most));
    CuttingRequest.Trim trim = request.trim();
    int trims = Numeric.ceil(trim.leftMetre() / trim.biteMetre());
    double bite = trims == 0 ? 0 : trim.leftMetre() / trims;
    return new Passes(
        depths, request.depthMetre() / depths, trims, Math.min(bite, trim.biteMetre()));
  }

  /** Deepest pass taken without being asked for more. */
  double usualPassMetre() {
    double diameter = bit.diameterMetre();
    return switch (request.machine().kind()) {
      case HAND_ROUTER, ROUTER_TABLE -> CuttingFigures.HAND_PASS_METRE;
      case LIGHT_CNC -> CuttingFigures.LIGHT_PASS_DIAMETERS * diameter;
      case RIGID_CNC -> CuttingFigures.RIGID_PASS_DIAMETERS * diameter;
    };
  }

  Provenance passSource() {
    return switch (request.machine().kind()) {
      case HAND_ROUTER, ROUTER_TABLE -> CuttingSources.HAND_DEPTH;
      case LIGHT_CNC -> CuttingSources.LIGHT_DEPTH;
      case RIGID_CNC -> CuttingSources.CNC_DEPTH;
    };
  }

  /** Chip load range after depth and machine, metres. */
  SourcedRange chip(double passMetre) {
    SourcedRange table = ChipLoads.of(request.stock(), bit.diameterMetre());
    double share = depthShare(passMetre / bit.diameterMetre());
    if (request.machine().kind() == Machine.Kind.LIGHT_CNC) {
      share = share * CuttingFigures.LIGHT_CHIP_SHARE;
    }
    return SourcedRange.range(share * table.low(), share * table.high(), Unit.METRE, table.from());
  }

  static double depthShare(double diameters) {
    double beyond = Math.max(0, diameters - 1);
    return 1 - CuttingFigures.CHIP_LOST_PER_DIAMETER * beyond;
  }

  Speed speed(SourcedRange chip) {
    Machine machine = request.machine();
    double highest = bit.highestRpm();
    double wanted = request.wantedRpm().orElse(BitSpeeds.startRpm(bit.diameterMetre()));
    double rpm = Math.min(Math.min(wanted, highest), machine.highestRpm());
    if (machine.kind().driven() && request.wantedRpm().isEmpty()) {
      double pushed = machine.highestFeedMetrePerSecond() * 60 / (bit.flutes() * chip.low());
      rpm = Math.min(rpm, pushed);
    }
    rpm = Math.max(rpm, machine.lowestRpm());
    return new Speed(rpm, highest, BitSpeeds.rimMetrePerSecond(bit.diameterMetre(), rpm));
  }

  Feed feed(double rpm, SourcedRange chip) {
    double most = request.machine().highestFeedMetrePerSecond();
    double low = Math.min(most, feedMetrePerSecond(rpm, bit.flutes(), chip.low()));
    double high = Math.min(most, feedMetrePerSecond(rpm, bit.flutes(), chip.high()));
    double perChip = rpm * bit.flutes() / 60;
    return new Feed(low, high, low / perChip, high / perChip);
  }

  static double feedMetrePerSecond(double rpm, double flutes, double chipMetre) {
    return rpm * flutes * chipMetre / 60;
  }

  WorkingLine speedLine(Speed speed) {
    double start = BitSpeeds.startRpm(bit.diameterMetre());
    double chart = BitSpeeds.highestRpm(bit.diameterMetre());
    return new WorkingLine(
        QuantityKey.SPEED_TO_SET,
        Figure.computed("speed to set", speed.rpm(), Unit.RPM),
        "the least of wanted or starting speed, chart, marking, machine, and what the feed can"
            + " follow; never under the machine's slowest",
        List.of(
            request.wantedRpm().isPresent()
                ? Figure.input("wanted", request.wantedRpm().getAsDouble(), Unit.RPM)
                : Figure.of("starting speed", start, Unit.RPM, CuttingSources.START_SPEED),
            Figure.of("highest by chart", chart, Unit.RPM, CuttingSources.TOP_SPEED),
            bit.markedRpm().isPresent()
                ? Figure.input("marked on the bit", bit.markedRpm().getAsDouble(), Unit.RPM)
                : Figure.of("no marking, chart", chart, Unit.RPM, CuttingSources.TOP_SPEED),
            Figure.input("machine's slowest", request.machine().lowestRpm(), Unit.RPM),
            Figure.input("machine's fastest", request.machine().highestRpm(), Unit.RPM)),
        CuttingSources.TOP_SPEED);
  }

  WorkingLine rimLine(Speed speed) {
    return new WorkingLine(
        QuantityKey.RIM_SPEED,
        Figure.computed("rim speed", speed.rimMetrePerSecond(), Unit.METRE_PER_SECOND),
        "rim speed = pi x diameter x rpm / 60",
        List.of(
            Figure.input("bit diameter", bit.diameterMetre(), Unit.METRE),
            Figure.computed("speed", speed.rpm(), Unit.RPM)),
        CuttingSources.RIM);
  }

  WorkingLine chipLine(SourcedRange chip, double passMetre) {
    SourcedRange table = ChipLoads.of(request.stock(), bit.diameterMetre());
    double light =
        request.machine().kind() == Machine.Kind.LIGHT_CNC ? CuttingFigures.LIGHT_CHIP_SHARE : 1;
    return new WorkingLine(
        QuantityKey.CHIP_LOAD,
        Figure.computed("chip load, high end", chip.high(), Unit.METRE),
        "chip = table x share for depth x share for a light machine",
        List.of(
            Figure.of("table, high end", table.high(), Unit.METRE, table.from()),
            Figure.of(
                "share for depth",
                depthShare(passMetre / bit.diameterMetre()),
                Unit.RATIO,
                CuttingSources.DEEP_CUT),
            Figure.of("share for machine", light, Unit.RATIO, CuttingSources.LIGHT_MACHINE)),
        CuttingSources.DEEP_CUT);
  }

  WorkingLine feedLine(Speed speed, Feed feed) {
    return new WorkingLine(
        QuantityKey.FEED,
        Figure.computed("feed, high end", feed.highMetrePerSecond(), Unit.METRE_PER_SECOND),
        "feed = rpm x flutes x chip load, at most what the machine can push",
        List.of(
            Figure.computed("speed", speed.rpm(), Unit.RPM),
            Figure.input("flutes", bit.flutes(), Unit.COUNT),
            Figure.computed("chip load as fed", feed.highChipMetre(), Unit.METRE),
            Figure.input(
                "fastest push",
                request.machine().highestFeedMetrePerSecond(),
                Unit.METRE_PER_SECOND)),
        CuttingSources.FEED);
  }

  WorkingLine passLine(Passes passes) {
    double most = request.wantedPassMetre().orElse(usualPassMetre());
    return new WorkingLine(
        QuantityKey.DEPTH_PASSES,
        Figure.computed("depth passes", passes.depthPasses(), Unit.COUNT),
        "passes = depth / deepest pass, rounded up",
        List.of(
            Figure.input("depth", request.depthMetre(), Unit.METRE),
            request.wantedPassMetre().isPresent()
                ? Figure.input("wanted pass", most, Unit.METRE)
                : Figure.of("deepest pass", most, Unit.METRE, passSource())),
        passSource());
  }

  WorkingLine trimLine(Passes passes) {
    return new WorkingLine(
        QuantityKey.TRIM_PASSES,
        Figure.computed("trim passes", passes.trimPasses(), Unit.COUNT),
        "passes = wood left / bite, rounded up",
        List.of(
            Figure.input("wood left", request.trim().leftMetre(), Unit.METRE),
            Figure.input("most in one bite", request.trim().biteMetre(), Unit.METRE)),
        CuttingSources.BITE);
  }
}
