package benchlore.schedules.exchange;

import benchlore.schedules.coating.CoatsRequest;
import benchlore.schedules.coating.DewMargin;
import benchlore.schedules.coating.DewRequest;
import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.coating.DryingTimes;
import benchlore.schedules.coating.StageTime;
import benchlore.schedules.material.Finish;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.DailySwing;
import java.util.List;

/** The air of a room, and how one coat dries in it: requests and answers. */
final class DryingJson {
  private DryingJson() {}

  static DryingRequest request(RequestReader f) {
    return new DryingRequest(
        Finish.table().read(f.group("finish")),
        f.number("wetFilmMicron"),
        climate(f.group("climate")),
        f.moment("start"));
  }

  static DewRequest dew(RequestReader f) {
    return new DewRequest(
        f.number("airCelsius"), f.number("humidityPercent"), f.number("surfaceCelsius"));
  }

  static void margin(AnswerWriter out, DewMargin margin) {
    out.number("dewPointCelsius", margin.dewPointCelsius())
        .number("marginCelsius", margin.marginCelsius())
        .number("leastSurfaceCelsius", margin.leastSurfaceCelsius())
        .flag("sound", margin.sound());
  }

  static CoatsRequest coats(RequestReader f) {
    return new CoatsRequest(
        Finish.table().read(f.group("finish")),
        f.number("wetFilmMicron"),
        f.number("targetDryFilmMicron"));
  }

  static Climate climate(RequestReader f) {
    return new Climate(
        hours(f),
        f.has("otherwise")
            ? f.list("otherwise", d -> new Climate.Day(d.day("date"), hours(d)))
            : List.of());
  }

  private static List<Climate.Reading> hours(RequestReader f) {
    return f.list(
        "hours",
        h -> new Climate.Reading(h.number("celsius"), h.number("relativeHumidityPercent")));
  }

  /** A day with a swing, heated or not, and the nights that were otherwise. */
  static Climate swing(RequestReader f) {
    return new DailySwing(
            f.number("lowCelsius"),
            f.number("highCelsius"),
            f.number("relativeHumidityPercent"),
            f.optional("heating", DryingJson::heater))
        .climate(f.has("nights") ? f.list("nights", DryingJson::night) : List.of());
  }

  private static DailySwing.Heater heater(RequestReader f) {
    return new DailySwing.Heater(f.whole("fromHour"), f.whole("toHour"), f.number("celsius"));
  }

  private static DailySwing.Night night(RequestReader f) {
    return new DailySwing.Night(
        f.day("date"),
        f.number("lowCelsius"),
        f.number("highCelsius"),
        f.optionalNumber("afternoonHumidityPercent"),
        !f.has("heated") || f.flag("heated"));
  }

  static void climate(AnswerWriter out, Climate climate) {
    hours(out, climate.hours());
    out.list(
        "otherwise",
        climate.otherwise(),
        (o, day) -> hours(o.day("date", day.date()), day.hours()));
  }

  private static void hours(AnswerWriter out, List<Climate.Reading> hours) {
    out.list(
        "hours",
        hours,
        (o, hour) ->
            o.number("celsius", hour.celsius())
                .number("relativeHumidityPercent", hour.relativeHumidityPercent()));
  }

  static void times(AnswerWriter out, DryingTimes times) {
    out.moment("start", times.start())
        .list("stages", times.stages(), DryingJson::stage)
        .number("thicknessFactor", times.thicknessFactor())
        .number("dryFilmMicron", times.dryFilmMicron())
        .duration("potLife", times.potLife());
  }

  private static void stage(AnswerWriter out, StageTime stage) {
    out.word("stage", stage.stage())
        .duration("soonest", stage.soonest())
        .duration("planned", stage.planned());
  }
}
