package benchlore.generator.browser;

import benchlore.schedules.wood.Air;
import benchlore.schedules.wood.Film;
import benchlore.schedules.wood.FitRequest;
import benchlore.schedules.wood.FitSchedule;
import benchlore.schedules.wood.Opening;
import benchlore.schedules.wood.Panel;
import benchlore.schedules.wood.RingAngle;
import benchlore.schedules.wood.Seasons;
import benchlore.schedules.wood.Tape;
import benchlore.schedules.wood.Wood;

/** Movement, clearance and slots: request text to answer text. */
final class FitText {
  private FitText() {}

  static String plan(String request) {
    return Answers.text(request, f -> Wood.plan(request(f)), FitText::schedule);
  }

  private static FitRequest request(Asked f) {
    return new FitRequest(
        RecordData.wood(f.group("wood")),
        rings(f.group("rings")),
        f.number("widthMetre"),
        f.number("thicknessMetre"),
        f.number("moisturePercent"),
        air(f.group("shop")),
        seasons(f.group("seasons")),
        f.optional("opening", FitText::opening),
        f.optional("panel", p -> new Panel(p.number("screwMetre"), p.numbers("distancesMetre"))));
  }

  static RingAngle rings(Asked f) {
    return new RingAngle(f.number("lowDegrees"), f.number("highDegrees"));
  }

  private static Air air(Asked f) {
    return new Air(f.number("celsius"), f.number("relativeHumidityPercent"));
  }

  static Seasons seasons(Asked f) {
    return new Seasons(air(f.group("dry")), air(f.group("damp")), f.provenance("from"));
  }

  private static Opening opening(Asked f) {
    return new Opening(
        film(f.group("partFilm")),
        film(f.group("openingFilm")),
        f.number("slipMetre"),
        f.word("hanging", Opening.Hanging.values()),
        f.list(
            "tapes",
            t -> new Tape(t.text("name"), t.number("thicknessMicron"), t.provenance("from"))));
  }

  private static Film film(Asked f) {
    return new Film(
        f.number("coats"), f.number("wetFilmMicron"), f.number("solidsByVolumePercent"));
  }

  private static void schedule(JsonWriter out, FitSchedule schedule) {
    out.number("shopPercent", schedule.moisture().shopPercent())
        .number("dryPercent", schedule.moisture().dryPercent())
        .number("dampPercent", schedule.moisture().dampPercent())
        .number("lowCoefficient", schedule.movement().lowCoefficient())
        .number("highCoefficient", schedule.movement().highCoefficient())
        .number("swellMetre", schedule.movement().swellMetre())
        .number("shrinkMetre", schedule.movement().shrinkMetre())
        .number("yearMetre", schedule.movement().yearMetre())
        .number("thicknessYearMetre", schedule.movement().thicknessYearMetre())
        .number("settlingLowSecond", schedule.settling().lowSecond())
        .number("settlingHighSecond", schedule.settling().highSecond())
        .optional("clearance", schedule.clearance(), FitText::clearance)
        .optional("fixing", schedule.fixing(), FitText::fixing);
  }

  private static void clearance(JsonWriter out, FitSchedule.Clearance clearance) {
    out.number("filmMicron", clearance.filmMicron())
        .number("growthMetre", clearance.growthMetre())
        .number("gapMetre", clearance.gapMetre())
        .number("openingMinusPartMetre", clearance.openingMinusPartMetre())
        .number("drySeasonGapMetre", clearance.drySeasonGapMetre())
        .list(
            "stacks",
            clearance.stacks(),
            (w, stack) ->
                w.open("")
                    .text("tape", stack.tape().name())
                    .number("layers", stack.layers())
                    .number("gapMicron", stack.gapMicron())
                    .close());
  }

  private static void fixing(JsonWriter out, FitSchedule.Fixing fixing) {
    out.flag("rigidAllowed", fixing.rigidAllowed())
        .list(
            "slots",
            fixing.slots(),
            (w, slot) ->
                w.open("")
                    .number("distanceMetre", slot.distanceMetre())
                    .number("lengthMetre", slot.lengthMetre())
                    .number("outwardMetre", slot.outwardMetre())
                    .number("inwardMetre", slot.inwardMetre())
                    .close());
  }
}
