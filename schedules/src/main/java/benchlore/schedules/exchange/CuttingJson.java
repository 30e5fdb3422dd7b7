package benchlore.schedules.exchange;

import benchlore.schedules.cutting.Bit;
import benchlore.schedules.cutting.CutMaterial;
import benchlore.schedules.cutting.CuttingRequest;
import benchlore.schedules.cutting.CuttingSchedule;
import benchlore.schedules.cutting.Machine;
import benchlore.schedules.cutting.Reach;
import benchlore.schedules.cutting.ReachRequest;
import benchlore.schedules.cutting.Surfacing;
import benchlore.schedules.cutting.SurfacingRequest;
import benchlore.schedules.cutting.Tabs;
import benchlore.schedules.cutting.TabsRequest;

/** Speed, feed and passes of a cut, reach, tabs and flattening: requests and answers. */
final class CuttingJson {
  private CuttingJson() {}

  static CuttingRequest request(RequestReader f) {
    RequestReader machine = f.group("machine");
    RequestReader trim = f.group("trim");
    return new CuttingRequest(
        f.word("stock", CutMaterial.values()),
        bit(f.group("bit")),
        new Machine(
            machine.word("kind", Machine.Kind.values()),
            machine.number("lowestRpm"),
            machine.number("highestRpm"),
            machine.number("highestFeedMetrePerSecond")),
        f.word("side", CuttingRequest.Side.values()),
        f.number("depthMetre"),
        f.optionalNumber("wantedPassMetre"),
        new CuttingRequest.Trim(trim.number("leftMetre"), trim.number("biteMetre")),
        f.optionalNumber("wantedRpm"));
  }

  private static Bit bit(RequestReader f) {
    return new Bit(
        f.number("diameterMetre"),
        f.whole("flutes"),
        f.number("cuttingLengthMetre"),
        f.number("shankDiameterMetre"),
        f.number("shankLengthMetre"),
        f.optionalNumber("markedRpm"),
        f.optional(
            "bearing",
            b ->
                new Bit.Bearing(
                    b.word("seat", Bit.Bearing.Seat.values()),
                    b.number("diameterMetre"),
                    b.number("heightMetre"))));
  }

  static SurfacingRequest surfacing(RequestReader f) {
    return new SurfacingRequest(
        f.number("lengthMetre"),
        f.number("acrossMetre"),
        f.number("bitDiameterMetre"),
        f.number("overlapPercent"),
        f.number("removeMetre"),
        f.number("passMetre"),
        f.number("feedMetrePerSecond"));
  }

  static ReachRequest reach(RequestReader f) {
    return new ReachRequest(
        bit(f.group("bit")),
        f.number("depthMetre"),
        f.number("colletMetre"),
        f.number("noseToWorkMetre"),
        f.optionalNumber("templateMetre"),
        f.number("firstPassMetre"));
  }

  static TabsRequest tabs(RequestReader f) {
    return new TabsRequest(
        f.number("lengthMetre"),
        f.number("widthMetre"),
        f.number("thicknessMetre"),
        f.number("bitDiameterMetre"),
        f.flag("inside"));
  }

  static void schedule(AnswerWriter out, CuttingSchedule schedule) {
    out.group("speed", schedule.speed(), CuttingJson::speed)
        .group("feed", schedule.feed(), CuttingJson::feed)
        .group("passes", schedule.passes(), CuttingJson::passes)
        .group("direction", schedule.direction(), CuttingJson::direction);
  }

  private static void speed(AnswerWriter out, CuttingSchedule.Speed speed) {
    out.number("rpm", speed.rpm())
        .number("highestRpm", speed.highestRpm())
        .number("rimMetrePerSecond", speed.rimMetrePerSecond());
  }

  private static void feed(AnswerWriter out, CuttingSchedule.Feed feed) {
    out.number("lowMetrePerSecond", feed.lowMetrePerSecond())
        .number("highMetrePerSecond", feed.highMetrePerSecond())
        .number("lowChipMetre", feed.lowChipMetre())
        .number("highChipMetre", feed.highChipMetre());
  }

  private static void passes(AnswerWriter out, CuttingSchedule.Passes passes) {
    out.number("depthPasses", passes.depthPasses())
        .number("depthMetre", passes.depthMetre())
        .number("trimPasses", passes.trimPasses())
        .number("biteMetre", passes.biteMetre());
  }

  private static void direction(AnswerWriter out, CuttingSchedule.Direction direction) {
    out.word("turn", direction.turn()).group("how", direction.how(), AnswerJson::note);
  }

  static void surfacing(AnswerWriter out, Surfacing surfacing) {
    out.number("strokes", surfacing.strokes())
        .number("stepMetre", surfacing.stepMetre())
        .number("layers", surfacing.layers())
        .number("layerMetre", surfacing.layerMetre())
        .number("pathMetre", surfacing.pathMetre())
        .number("seconds", surfacing.seconds())
        .number("highestRpm", surfacing.highestRpm());
  }

  static void reach(AnswerWriter out, Reach reach) {
    out.flag("reaches", reach.reaches())
        .number("stickOutMetre", reach.stickOutMetre())
        .number("gripMetre", reach.gripMetre())
        .number("neededGripMetre", reach.neededGripMetre())
        .list("problems", reach.problems(), AnswerJson::note);
  }

  static void tabs(AnswerWriter out, Tabs tabs) {
    out.number("count", tabs.count())
        .number("widthMetre", tabs.widthMetre())
        .number("programmedWidthMetre", tabs.programmedWidthMetre())
        .number("heightMetre", tabs.heightMetre())
        .number("pathMetre", tabs.pathMetre())
        .number("spacingMetre", tabs.spacingMetre())
        .list("order", tabs.order(), AnswerJson::note);
  }
}
