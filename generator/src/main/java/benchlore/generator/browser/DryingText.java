package benchlore.generator.browser;

import benchlore.schedules.coating.Coating;
import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.coating.DryingTimes;
import benchlore.schedules.room.Climate;

/** Drying of one coat: request text to answer text. */
final class DryingText {
  private DryingText() {}

  static String plan(String request) {
    return Answers.text(request, f -> Coating.drying(request(f)), DryingText::times);
  }

  private static DryingRequest request(Asked f) {
    return new DryingRequest(
        RecordData.finish(f.group("finish")),
        f.number("wetFilmMicron"),
        climate(f.group("climate")),
        f.moment("start"));
  }

  static Climate climate(Asked f) {
    return new Climate(
        f.list(
            "hours",
            h -> new Climate.Reading(h.number("celsius"), h.number("relativeHumidityPercent"))));
  }

  static void times(JsonWriter out, DryingTimes times) {
    out.moment("start", times.start())
        .list(
            "stages",
            times.stages(),
            (w, stage) ->
                w.open("")
                    .word("stage", stage.stage())
                    .number("soonestSecond", (double) stage.soonest().getSeconds())
                    .number("plannedSecond", (double) stage.planned().getSeconds())
                    .close())
        .number("thicknessFactor", times.thicknessFactor())
        .number("dryFilmMicron", times.dryFilmMicron())
        .optional(
            "potLife",
            times.potLife(),
            (w, life) -> w.number("second", (double) life.getSeconds()));
  }
}
