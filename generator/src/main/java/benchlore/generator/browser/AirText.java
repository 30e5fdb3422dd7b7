package benchlore.generator.browser;

import benchlore.schedules.air.Air;
import benchlore.schedules.air.AirRequest;
import benchlore.schedules.air.AirSchedule;
import benchlore.schedules.air.ApplyMethod;
import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.air.Release;
import benchlore.schedules.air.ReleaseCurve;
import benchlore.schedules.air.RoomAir;

/** The air of the shop: request text to answer text. */
final class AirText {
  private AirText() {}

  static String plan(String request) {
    return Answers.text(request, f -> Air.plan(request(f)), AirText::schedule);
  }

  private static AirRequest request(Asked f) {
    return new AirRequest(
        room(f.group("room")),
        f.list("releases", AirText::release),
        f.words("ignitionSources", IgnitionSource.values()),
        f.flag("isocyanate"),
        f.flag("selfHeatingRags"));
  }

  static RoomAir room(Asked f) {
    return new RoomAir(
        f.number("volume"), f.number("outdoorFlow"), f.number("mixingFactor"), f.number("celsius"));
  }

  private static Release release(Asked f) {
    return new Release(
        f.number("startSecond"),
        f.number("volatileKilogram"),
        f.list("shares", RecordData::share),
        f.word("method", ApplyMethod.values()),
        f.optional(
            "curve",
            c ->
                new ReleaseCurve(
                    c.number("quickShare"), c.number("quickSecond"), c.number("decaySecond"))));
  }

  static void schedule(JsonWriter out, AirSchedule schedule) {
    out.list("curve", schedule.curve(), AirText::point)
        .group("peakPpm", schedule.peaks().ppm(), AirText::peak)
        .optional("peakIndex", schedule.peaks().index(), AirText::peak)
        .optional(
            "peakPercentLowerExplosive", schedule.peaks().percentLowerExplosive(), AirText::peak)
        .number("eightHourPpm", schedule.eightHour().ppm())
        .number("eightHourIndex", schedule.eightHour().index())
        .number("flowHealthEveryMoment", schedule.flow().healthEveryMoment())
        .number("flowHealthEightHour", schedule.flow().healthEightHour())
        .number("flowFireTenth", schedule.flow().fireTenth())
        .word("flowGoverns", schedule.flow().governs())
        .number("flowGoverning", schedule.flow().governing())
        .number("changesPerHour", schedule.flow().changesPerHour())
        .list(
            "reEntries",
            schedule.reEntries(),
            (w, entry) ->
                w.open("")
                    .number("coatStartSecond", entry.coatStartSecond())
                    .number("second", entry.second())
                    .close())
        .word("respirator", schedule.respirator().respirator())
        .number("brushedPeakIndex", schedule.brushedPeakIndex());
  }

  private static void point(JsonWriter out, AirSchedule.Point point) {
    out.open("")
        .number("second", point.second())
        .number("ppm", point.ppm())
        .number("index", point.index())
        .number("percentLowerExplosive", point.percentLowerExplosive())
        .close();
  }

  private static void peak(JsonWriter out, AirSchedule.Peak peak) {
    out.number("second", peak.second()).number("value", peak.value());
  }
}
