package benchlore.schedules.exchange;

import benchlore.schedules.air.AirRequest;
import benchlore.schedules.air.AirSchedule;
import benchlore.schedules.air.DustCapture;
import benchlore.schedules.air.DustRequest;
import benchlore.schedules.air.DustSchedule;
import benchlore.schedules.air.DustSource;
import benchlore.schedules.air.ExposureLimit;
import benchlore.schedules.air.FlowNeeded;
import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.air.MistEstimate;
import benchlore.schedules.air.MistRequest;
import benchlore.schedules.air.Release;
import benchlore.schedules.air.ReleaseCurve;
import benchlore.schedules.air.RespiratorAdvice;
import benchlore.schedules.air.RoomAir;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.material.SprayGun;

/** The air of the shop: requests and answer. */
final class AirJson {
  private AirJson() {}

  static AirRequest request(RequestReader f) {
    return new AirRequest(
        room(f.group("room")),
        f.list("releases", AirJson::release),
        f.words("ignitionSources", IgnitionSource.values()),
        f.flag("isocyanate"),
        f.flag("formaldehyde"),
        f.flag("selfHeatingRags"));
  }

  static RoomAir room(RequestReader f) {
    return new RoomAir(
        f.number("volume"), f.number("outdoorFlow"), f.number("mixingFactor"), f.number("celsius"));
  }

  private static Release release(RequestReader f) {
    return new Release(
        f.number("startSecond"),
        f.number("volatileKilogram"),
        f.list("shares", AirJson::share),
        f.word("method", ApplicationMethod.values()),
        f.optional(
            "curve",
            c ->
                new ReleaseCurve(
                    c.number("quickShare"), c.number("quickSecond"), c.number("decaySecond"))),
        f.number("workSecond"),
        f.optionalNumber("flashPointCelsius"));
  }

  /** A room by its air changes. */
  static RoomAir changing(RequestReader f) {
    return RoomAir.ofAirChanges(
        f.number("volume"),
        f.number("changesPerHour"),
        f.number("mixingFactor"),
        f.number("celsius"));
  }

  static void room(AnswerWriter out, RoomAir room) {
    out.number("volume", room.volume())
        .number("outdoorFlow", room.outdoorFlow())
        .number("mixingFactor", room.mixingFactor())
        .number("celsius", room.celsius());
  }

  static void schedule(AnswerWriter out, AirSchedule schedule) {
    out.list("curve", schedule.curve(), AirJson::point)
        .group("peaks", schedule.peaks(), AirJson::peaks)
        .group("eightHour", schedule.eightHour(), AirJson::eightHour)
        .group("coverage", schedule.coverage(), AirJson::coverage)
        .group("flow", schedule.flow(), AirJson::flow)
        .list("reEntries", schedule.reEntries(), AirJson::reEntry)
        .group("respirator", schedule.respirator(), AirJson::respirator)
        .number("brushedIndex", schedule.brushedIndex());
  }

  private static void point(AnswerWriter out, AirSchedule.Point point) {
    out.number("second", point.second())
        .number("ppm", point.ppm())
        .number("index", point.index())
        .number("percentLowerExplosive", point.percentLowerExplosive());
  }

  private static void peaks(AnswerWriter out, AirSchedule.Peaks peaks) {
    out.group("ppm", peaks.ppm(), AirJson::peak)
        .optional("index", peaks.index(), AirJson::peak)
        .optional("quarterHour", peaks.quarterHour(), AirJson::peak)
        .optional("ceiling", peaks.ceiling(), AirJson::peak)
        .optional("percentLowerExplosive", peaks.percentLowerExplosive(), AirJson::peak)
        .optional("dangerShare", peaks.dangerShare(), AirJson::peak);
  }

  private static void peak(AnswerWriter out, AirSchedule.Peak peak) {
    out.number("second", peak.second()).number("value", peak.value());
  }

  private static void eightHour(AnswerWriter out, AirSchedule.EightHour average) {
    out.number("fromSecond", average.fromSecond())
        .number("ppm", average.ppm())
        .number("index", average.index());
  }

  private static void coverage(AnswerWriter out, AirSchedule.Coverage coverage) {
    out.list("limits", coverage.limits(), AirJson::limit)
        .texts("withoutHealthLimit", coverage.withoutHealthLimit())
        .texts("withoutExplosiveLimit", coverage.withoutExplosiveLimit());
  }

  private static void limit(AnswerWriter out, ExposureLimit limit) {
    out.text("solventId", limit.solventId())
        .number("ppm", limit.ppm())
        .word("body", limit.body())
        .group("from", limit.from(), AnswerJson::provenance);
  }

  private static void flow(AnswerWriter out, FlowNeeded flow) {
    out.number("healthShort", flow.healthShort())
        .number("healthEightHour", flow.healthEightHour())
        .number("fireTenth", flow.fireTenth())
        .number("fireQuarter", flow.fireQuarter())
        .word("governs", flow.governs())
        .number("governing", flow.governing())
        .number("changesPerHour", flow.changesPerHour());
  }

  private static void reEntry(AnswerWriter out, AirSchedule.ReEntry entry) {
    out.number("coatStartSecond", entry.coatStartSecond())
        .number("healthSecond", entry.healthSecond())
        .number("fireSecond", entry.fireSecond())
        .word("verdict", entry.verdict())
        .number("second", entry.second());
  }

  static DustRequest dust(RequestReader f) {
    return new DustRequest(
        room(f.group("room")),
        f.word("source", DustSource.values()),
        f.number("removedKilogram"),
        f.number("sandingSecond"),
        f.word("capture", DustCapture.values()),
        f.optionalNumber("airborneShare"));
  }

  static MistRequest mist(RequestReader f) {
    RequestReader sprayed = f.group("sprayed");
    return new MistRequest(
        room(f.group("room")),
        f.word("gun", SprayGun.values()),
        new MistRequest.Sprayed(
            sprayed.number("liquidCubicMetre"), sprayed.figure("solidsByVolume")),
        f.number("sprayingSecond"),
        f.optionalNumber("transfer"),
        f.flag("isocyanate"));
  }

  static void mistEstimate(AnswerWriter out, MistEstimate mist) {
    out.number("landedKilogram", mist.landedKilogram())
        .number("mistKilogram", mist.mistKilogram())
        .number("peakKilogramPerCubicMetre", mist.peakKilogramPerCubicMetre())
        .number("peakIndex", mist.peakIndex())
        .number("clearSecond", mist.clearSecond());
  }

  static void dustSchedule(AnswerWriter out, DustSchedule dust) {
    out.number("capturedKilogram", dust.capturedKilogram())
        .number("settledKilogram", dust.settledKilogram())
        .number("airborneKilogram", dust.airborneKilogram())
        .number("peakKilogramPerCubicMetre", dust.peakKilogramPerCubicMetre())
        .number("eightHourKilogramPerCubicMetre", dust.eightHourKilogramPerCubicMetre())
        .number("limitKilogramPerCubicMetre", dust.governing().kilogramPerCubicMetre())
        .group("limitFrom", dust.governing().from(), AnswerJson::provenance)
        .number("peakIndex", dust.peakIndex())
        .number("eightHourIndex", dust.eightHourIndex())
        .number("flowNeeded", dust.flowNeeded())
        .number("clearSecond", dust.clearSecond())
        .group("respirator", dust.respirator(), AirJson::respirator);
  }

  private static void respirator(AnswerWriter out, RespiratorAdvice advice) {
    out.word("respirator", advice.respirator())
        .text("words", advice.words())
        .list("limits", advice.limits(), AnswerJson::note);
  }

  static Release.Share share(RequestReader f) {
    return new Release.Share(Solvent.table().read(f.group("solvent")), f.number("massShare"));
  }
}
