package benchlore.generator.json;

import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.coating.DryingTimes;
import benchlore.schedules.coating.StageTime;
import benchlore.schedules.room.Climate;

/** The air of a room, and how one coat dries in it: requests and answers. */
final class DryingJson {
  private DryingJson() {}

  static DryingRequest request(Asked f) {
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

  /** A day with a swing, heated or not. */
  static Climate day(Asked f) {
    Climate day =
        Climate.swing(
            f.number("lowCelsius"), f.number("highCelsius"), f.number("relativeHumidityPercent"));
    if (!f.has("heating")) {
      return day;
    }
    Asked heating = f.group("heating");
    return day.withHeating(
        heating.whole("fromHour"), heating.whole("toHour"), heating.number("celsius"));
  }

  static void climate(Out out, Climate climate) {
    out.list(
        "hours",
        climate.hours(),
        (o, hour) ->
            o.number("celsius", hour.celsius())
                .number("relativeHumidityPercent", hour.relativeHumidityPercent()));
  }

  static void times(Out out, DryingTimes times) {
    out.moment("start", times.start())
        .list("stages", times.stages(), DryingJson::stage)
        .number("thicknessFactor", times.thicknessFactor())
        .number("dryFilmMicron", times.dryFilmMicron())
        .duration("potLife", times.potLife());
  }

  private static void stage(Out out, StageTime stage) {
    out.word("stage", stage.stage())
        .duration("soonest", stage.soonest())
        .duration("planned", stage.planned());
  }
}
