package benchlore.generator.browser;

import benchlore.schedules.cutting.Bit;
import benchlore.schedules.cutting.Cutting;
import benchlore.schedules.cutting.CuttingRequest;
import benchlore.schedules.cutting.CuttingSchedule;
import benchlore.schedules.cutting.Machine;
import benchlore.schedules.cutting.Stock;

/** Speed, feed and passes of a cut: request text to answer text. */
final class CuttingText {
  private CuttingText() {}

  static String plan(String request) {
    return Answers.text(request, f -> Cutting.plan(request(f)), CuttingText::schedule);
  }

  private static CuttingRequest request(Asked f) {
    Asked machine = f.group("machine");
    Asked trim = f.group("trim");
    return new CuttingRequest(
        f.word("stock", Stock.values()),
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

  private static Bit bit(Asked f) {
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

  private static void schedule(JsonWriter out, CuttingSchedule schedule) {
    out.number("rpm", schedule.speed().rpm())
        .number("highestRpm", schedule.speed().highestRpm())
        .number("rimMetrePerSecond", schedule.speed().rimMetrePerSecond())
        .number("lowMetrePerSecond", schedule.feed().lowMetrePerSecond())
        .number("highMetrePerSecond", schedule.feed().highMetrePerSecond())
        .number("lowChipMetre", schedule.feed().lowChipMetre())
        .number("highChipMetre", schedule.feed().highChipMetre())
        .number("depthPasses", schedule.passes().depthPasses())
        .number("depthMetre", schedule.passes().depthMetre())
        .number("trimPasses", schedule.passes().trimPasses())
        .number("biteMetre", schedule.passes().biteMetre())
        .word("turn", schedule.direction().turn())
        .group("how", schedule.direction().how(), Answers::note);
  }
}
