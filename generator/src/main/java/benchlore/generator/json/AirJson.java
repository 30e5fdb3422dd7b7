package benchlore.generator.json;

import benchlore.schedules.air.AirRequest;
import benchlore.schedules.air.AirSchedule;
import benchlore.schedules.air.ExposureLimit;
import benchlore.schedules.air.FlowNeeded;
import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.air.Release;
import benchlore.schedules.air.ReleaseCurve;
import benchlore.schedules.air.RespiratorAdvice;
import benchlore.schedules.air.RoomAir;
import benchlore.schedules.trade.ApplicationMethod;

/** The air of the shop: requests and answer. */
final class AirJson {
  private AirJson() {}

  static AirRequest request(Asked f) {
    return new AirRequest(
        room(f.group("room")),
        f.list("releases", AirJson::release),
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
        f.word("method", ApplicationMethod.values()),
        f.optional(
            "curve",
            c ->
                new ReleaseCurve(
                    c.number("quickShare"), c.number("quickSecond"), c.number("decaySecond"))));
  }

  /** A room by its air changes. */
  static RoomAir changing(Asked f) {
    return RoomAir.ofAirChanges(
        f.number("volume"),
        f.number("changesPerHour"),
        f.number("mixingFactor"),
        f.number("celsius"));
  }

  static void room(Out out, RoomAir room) {
    out.number("volume", room.volume())
        .number("outdoorFlow", room.outdoorFlow())
        .number("mixingFactor", room.mixingFactor())
        .number("celsius", room.celsius());
  }

  static void schedule(Out out, AirSchedule schedule) {
    out.list("curve", schedule.curve(), AirJson::point)
        .group("peaks", schedule.peaks(), AirJson::peaks)
        .group("eightHour", schedule.eightHour(), AirJson::eightHour)
        .group("coverage", schedule.coverage(), AirJson::coverage)
        .group("flow", schedule.flow(), AirJson::flow)
        .list("reEntries", schedule.reEntries(), AirJson::reEntry)
        .group("respirator", schedule.respirator(), AirJson::respirator)
        .number("brushedPeakIndex", schedule.brushedPeakIndex());
  }

  private static void point(Out out, AirSchedule.Point point) {
    out.number("second", point.second())
        .number("ppm", point.ppm())
        .number("index", point.index())
        .number("percentLowerExplosive", point.percentLowerExplosive());
  }

  private static void peaks(Out out, AirSchedule.Peaks peaks) {
    out.group("ppm", peaks.ppm(), AirJson::peak)
        .optional("index", peaks.index(), AirJson::peak)
        .optional("percentLowerExplosive", peaks.percentLowerExplosive(), AirJson::peak)
        .optional("dangerShare", peaks.dangerShare(), AirJson::peak);
  }

  private static void peak(Out out, AirSchedule.Peak peak) {
    out.number("second", peak.second()).number("value", peak.value());
  }

  private static void eightHour(Out out, AirSchedule.EightHour average) {
    out.number("fromSecond", average.fromSecond())
        .number("ppm", average.ppm())
        .number("index", average.index());
  }

  private static void coverage(Out out, AirSchedule.Coverage coverage) {
    out.list("limits", coverage.limits(), AirJson::limit)
        .texts("withoutHealthLimit", coverage.withoutHealthLimit())
        .texts("withoutExplosiveLimit", coverage.withoutExplosiveLimit());
  }

  private static void limit(Out out, ExposureLimit limit) {
    out.text("solventId", limit.solventId())
        .number("ppm", limit.ppm())
        .word("body", limit.body())
        .group("from", limit.from(), Answers::provenance);
  }

  private static void flow(Out out, FlowNeeded flow) {
    out.number("healthEveryMoment", flow.healthEveryMoment())
        .number("healthEightHour", flow.healthEightHour())
        .number("fireTenth", flow.fireTenth())
        .number("fireQuarter", flow.fireQuarter())
        .word("governs", flow.governs())
        .number("governing", flow.governing())
        .number("changesPerHour", flow.changesPerHour());
  }

  private static void reEntry(Out out, AirSchedule.ReEntry entry) {
    out.number("coatStartSecond", entry.coatStartSecond())
        .number("healthSecond", entry.healthSecond())
        .number("fireSecond", entry.fireSecond())
        .word("verdict", entry.verdict())
        .number("second", entry.second());
  }

  private static void respirator(Out out, RespiratorAdvice advice) {
    out.word("respirator", advice.respirator()).list("limits", advice.limits(), Answers::note);
  }
}
