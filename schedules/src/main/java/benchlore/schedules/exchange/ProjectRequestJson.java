package benchlore.schedules.exchange;

import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.movement.Seasons;
import benchlore.schedules.movement.SteadyAir;
import benchlore.schedules.project.CoatChoice;
import benchlore.schedules.project.Habits;
import benchlore.schedules.project.Part;
import benchlore.schedules.project.Progress;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Shop;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.SandingShop;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.ShopWeek;
import java.util.List;

/**
 * Writes a plan's request, less its materials: whoever asks has their records. How each finish goes
 * on stands in {@code coats}, in their order.
 */
final class ProjectRequestJson {
  private ProjectRequestJson() {}

  static void request(AnswerWriter out, ProjectRequest request) {
    out.moment("start", request.start())
        .list("parts", request.parts(), ProjectRequestJson::part)
        .list("coats", request.materials().layers(), (o, layer) -> coats(o, layer.coats()))
        .group("shop", request.shop(), ProjectRequestJson::shop)
        .group("place", request.place(), ProjectRequestJson::seasons)
        .flag("settled", request.settled())
        .number("moisturePercent", request.moisturePercent())
        .group("progress", request.progress(), ProjectRequestJson::progress);
  }

  private static void part(AnswerWriter out, Part part) {
    out.text("name", part.name())
        .number("count", part.count())
        .number("lengthMetre", part.lengthMetre())
        .number("widthMetre", part.widthMetre())
        .number("thicknessMetre", part.thicknessMetre())
        .group(
            "rings",
            part.rings(),
            (o, rings) ->
                o.number("lowDegrees", rings.lowDegrees())
                    .number("highDegrees", rings.highDegrees()))
        .number("boards", part.boards())
        .group("surface", part.surface(), ProjectRequestJson::surface)
        .number("machiningSecond", part.machiningSecond())
        .word("moves", part.moves());
  }

  /** The surfaces a plan file knows; a request in JSON may have others, which no file asks for. */
  private static void surface(AnswerWriter out, StartSurface surface) {
    if (surface instanceof StartSurface.Sawn sawn) {
      out.text("surface", "Sawn").word("by", sawn.by());
    } else if (surface instanceof StartSurface.Planed planed) {
      out.text("surface", "Planed")
          .number("knifePitchMetre", planed.knifePitchMetre())
          .number("cutterRadiusMetre", planed.cutterRadiusMetre());
    } else if (surface instanceof StartSurface.BallNose ball) {
      out.text("surface", "BallNose")
          .number("ballDiameterMetre", ball.ballDiameterMetre())
          .number("stepoverMetre", ball.stepoverMetre());
    } else if (surface instanceof StartSurface.StraightCut cut) {
      out.text("surface", "StraightCut")
          .number("bitDiameterMetre", cut.bitDiameterMetre())
          .number("feedPerFluteMetre", cut.feedPerFluteMetre());
    } else if (surface instanceof StartSurface.SandedTo sanded) {
      out.text("surface", "SandedTo").group("grit", sanded.grit(), ProjectRequestJson::grit);
    } else {
      throw new IllegalArgumentException("no plan file has such a surface");
    }
  }

  private static void grit(AnswerWriter out, Grit grit) {
    out.word("system", grit.system()).number("number", grit.number());
  }

  private static void coats(AnswerWriter out, CoatChoice coats) {
    out.number("coats", coats.coats())
        .number("wetFilmMicron", coats.wetFilmMicron())
        .word("method", coats.method())
        .word("sheen", coats.sheen());
  }

  private static void shop(AnswerWriter out, Shop shop) {
    out.group("week", shop.week(), ProjectRequestJson::week)
        .group("climate", shop.climate(), DryingJson::climate)
        .group("room", shop.room(), AirJson::room)
        .texts("ignition", shop.ignition().stream().map(Enum::name).toList())
        .group("sanding", shop.sanding(), ProjectRequestJson::sanding)
        .group("clamps", shop.clamps(), ProjectRequestJson::clamps)
        .number("people", shop.people())
        .group("habits", shop.habits(), ProjectRequestJson::habits);
  }

  private static void habits(AnswerWriter out, Habits habits) {
    out.number("transfer", habits.transfer())
        .number("glueSettlesSecond", habits.glueSettlesSecond());
  }

  private static void week(AnswerWriter out, ShopWeek week) {
    out.lists("days", week.days(), ProjectRequestJson::span)
        .texts("daysOff", week.daysOff().stream().map(Date::toString).toList());
  }

  private static void span(AnswerWriter out, ShopWeek.Span span) {
    out.number("fromMinuteInclusive", span.fromMinuteInclusive())
        .number("toMinuteExclusive", span.toMinuteExclusive());
  }

  private static void sanding(AnswerWriter out, SandingShop shop) {
    out.list("shelf", shop.shelf(), ProjectRequestJson::grit)
        .texts("tools", shop.tools().stream().map(Enum::name).toList())
        .number("jumpLimitRatio", shop.jumpLimitRatio());
  }

  private static void clamps(AnswerWriter out, GlueUpRequest.Clamps clamps) {
    out.number("count", clamps.count())
        .number("forceNewton", clamps.forceNewton())
        .number("caulDepthMetre", clamps.caulDepthMetre())
        .number("headMetre", clamps.headMetre());
  }

  private static void seasons(AnswerWriter out, Seasons seasons) {
    out.group("dry", seasons.dry(), ProjectRequestJson::air)
        .group("damp", seasons.damp(), ProjectRequestJson::air)
        .group("from", seasons.from(), AnswerJson::provenance);
  }

  private static void air(AnswerWriter out, SteadyAir air) {
    out.number("celsius", air.celsius())
        .number("relativeHumidityPercent", air.relativeHumidityPercent());
  }

  private static void progress(AnswerWriter out, Progress progress) {
    out.moment("resume", progress.resume()).list("done", progress.done(), ProjectRequestJson::done);
  }

  private static void done(AnswerWriter out, Progress.Done done) {
    List<Interval> slots = done.slots();
    out.text("step", done.step().name())
        .list(
            "slots", slots, (o, slot) -> o.moment("start", slot.start()).moment("end", slot.end()));
  }
}
