package benchlore.schedules.exchange;

import benchlore.schedules.material.Species;
import benchlore.schedules.movement.Film;
import benchlore.schedules.movement.FitRequest;
import benchlore.schedules.movement.FitSchedule;
import benchlore.schedules.movement.Opening;
import benchlore.schedules.movement.Panel;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.movement.Seasons;
import benchlore.schedules.movement.SteadyAir;
import benchlore.schedules.movement.Tape;

/** Movement, clearance and slots: request and answer. */
final class FitJson {
  private FitJson() {}

  static FitRequest request(RequestReader f) {
    return new FitRequest(
        Species.table().read(f.group("wood")),
        rings(f.group("rings")),
        f.number("widthMetre"),
        f.number("thicknessMetre"),
        f.number("moisturePercent"),
        air(f.group("shop")),
        seasons(f.group("seasons")),
        f.optional("opening", FitJson::opening),
        f.optional("panel", p -> new Panel(p.number("screwMetre"), p.numbers("distancesMetre"))));
  }

  static RingAngle rings(RequestReader f) {
    return new RingAngle(f.number("lowDegrees"), f.number("highDegrees"));
  }

  private static SteadyAir air(RequestReader f) {
    return new SteadyAir(f.number("celsius"), f.number("relativeHumidityPercent"));
  }

  static Seasons seasons(RequestReader f) {
    return new Seasons(air(f.group("dry")), air(f.group("damp")), f.provenance("from"));
  }

  private static Opening opening(RequestReader f) {
    return new Opening(
        film(f.group("partFilm")),
        film(f.group("openingFilm")),
        f.number("slipMetre"),
        f.word("hanging", Opening.Hanging.values()),
        f.list(
            "tapes",
            t -> new Tape(t.text("name"), t.number("thicknessMicron"), t.provenance("from"))));
  }

  private static Film film(RequestReader f) {
    return new Film(
        f.number("coats"), f.number("wetFilmMicron"), f.number("solidsByVolumePercent"));
  }

  static void schedule(AnswerWriter out, FitSchedule schedule) {
    out.group("moisture", schedule.moisture(), FitJson::moistures)
        .group("movement", schedule.movement(), FitJson::travel)
        .group("settling", schedule.settling(), FitJson::settling)
        .optional("clearance", schedule.clearance(), FitJson::clearance)
        .optional("fixing", schedule.fixing(), FitJson::fixing);
  }

  private static void moistures(AnswerWriter out, FitSchedule.Moistures moisture) {
    out.number("shopPercent", moisture.shopPercent())
        .number("dryPercent", moisture.dryPercent())
        .number("dampPercent", moisture.dampPercent());
  }

  private static void travel(AnswerWriter out, FitSchedule.Travel travel) {
    out.number("lowCoefficient", travel.lowCoefficient())
        .number("highCoefficient", travel.highCoefficient())
        .number("swellMetre", travel.swellMetre())
        .number("shrinkMetre", travel.shrinkMetre())
        .number("yearMetre", travel.yearMetre())
        .number("thicknessYearMetre", travel.thicknessYearMetre());
  }

  private static void settling(AnswerWriter out, FitSchedule.Settling settling) {
    out.number("lowSecond", settling.lowSecond()).number("highSecond", settling.highSecond());
  }

  private static void clearance(AnswerWriter out, FitSchedule.Clearance clearance) {
    out.number("filmMicron", clearance.filmMicron())
        .number("growthMetre", clearance.growthMetre())
        .number("gapMetre", clearance.gapMetre())
        .number("openingMinusPartMetre", clearance.openingMinusPartMetre())
        .number("drySeasonGapMetre", clearance.drySeasonGapMetre())
        .list("stacks", clearance.stacks(), FitJson::stack);
  }

  private static void stack(AnswerWriter out, FitSchedule.TapeStack stack) {
    out.group("tape", stack.tape(), FitJson::tape)
        .number("layers", stack.layers())
        .number("gapMicron", stack.gapMicron());
  }

  private static void tape(AnswerWriter out, Tape tape) {
    out.text("name", tape.name())
        .number("thicknessMicron", tape.thicknessMicron())
        .group("from", tape.from(), AnswerJson::provenance);
  }

  private static void fixing(AnswerWriter out, FitSchedule.Fixing fixing) {
    out.flag("rigidAllowed", fixing.rigidAllowed()).list("slots", fixing.slots(), FitJson::slot);
  }

  private static void slot(AnswerWriter out, FitSchedule.Slot slot) {
    out.number("distanceMetre", slot.distanceMetre())
        .number("lengthMetre", slot.lengthMetre())
        .number("outwardMetre", slot.outwardMetre())
        .number("inwardMetre", slot.inwardMetre());
  }
}
