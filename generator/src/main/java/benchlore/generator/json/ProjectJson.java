package benchlore.generator.json;

import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.coating.CoatSchedule;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.Sheen;
import benchlore.schedules.plan.CoatChoice;
import benchlore.schedules.plan.Materials;
import benchlore.schedules.plan.Part;
import benchlore.schedules.plan.PlanRequest;
import benchlore.schedules.plan.Progress;
import benchlore.schedules.plan.ProjectPlan;
import benchlore.schedules.plan.Purchase;
import benchlore.schedules.plan.Shop;
import benchlore.schedules.plan.Step;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.ShopWeek;
import benchlore.schedules.trade.ApplicationMethod;
import java.util.Optional;

/** A whole project: request and answer. */
final class ProjectJson {
  private ProjectJson() {}

  static PlanRequest request(Asked f) {
    Asked materials = f.group("materials");
    Asked coats = f.group("coats");
    return new PlanRequest(
        f.moment("start"),
        f.list("parts", ProjectJson::part),
        new Materials(
            RecordData.wood(materials.group("wood")),
            RecordData.adhesive(materials.group("adhesive")),
            RecordData.finish(materials.group("finish")),
            materials.list("solvents", RecordData::share)),
        new CoatChoice(
            coats.whole("coats"),
            coats.number("wetFilmMicron"),
            coats.word("method", ApplicationMethod.values()),
            coats.word("sheen", Sheen.values())),
        shop(f.group("shop")),
        FitJson.seasons(f.group("place")),
        f.flag("settled"),
        f.number("moisturePercent"),
        f.optional("progress", ProjectJson::progress).orElse(Progress.NONE));
  }

  private static Progress progress(Asked f) {
    return new Progress(
        f.has("resume") ? Optional.of(f.moment("resume")) : Optional.empty(),
        f.list(
            "done",
            d ->
                new Progress.Done(
                    d.text("step"),
                    d.list("slots", s -> new Interval(s.moment("start"), s.moment("end"))))));
  }

  private static Part part(Asked f) {
    return new Part(
        f.text("name"),
        f.whole("count"),
        f.number("lengthMetre"),
        f.number("widthMetre"),
        f.number("thicknessMetre"),
        FitJson.rings(f.group("rings")),
        f.whole("boards"),
        SandingJson.surface(f.group("surface")),
        f.number("machiningSecond"),
        f.flag("moves"));
  }

  private static Shop shop(Asked f) {
    return new Shop(
        week(f.group("week")),
        DryingJson.climate(f.group("climate")),
        AirJson.room(f.group("room")),
        f.words("ignition", IgnitionSource.values()),
        SandingJson.shop(f.group("sanding")),
        GlueUpJson.clamps(f.group("clamps")),
        f.whole("people"));
  }

  private static ShopWeek week(Asked f) {
    return new ShopWeek(f.lists("days", ProjectJson::span), f.days("daysOff"));
  }

  private static ShopWeek.Span span(Asked f) {
    return new ShopWeek.Span(f.whole("fromMinuteInclusive"), f.whole("toMinuteExclusive"));
  }

  static void project(Out out, ProjectPlan plan) {
    out.list("steps", plan.steps(), ProjectJson::step)
        .list("shopping", plan.shopping(), ProjectJson::purchase)
        .group("coats", plan.coats(), ProjectJson::coats)
        .optional("air", plan.air(), AirJson::schedule);
  }

  private static void purchase(Out out, Purchase purchase) {
    out.text("what", purchase.what())
        .group("amount", purchase.amount(), Answers::quantity)
        .text("remark", purchase.remark());
  }

  private static void coats(Out out, CoatSchedule schedule) {
    out.list("coats", schedule.coats(), ProjectJson::coat)
        .group("liquid", schedule.liquid(), Answers::quantity)
        .group("dryFilm", schedule.dryFilm(), Answers::quantity)
        .flag("rubOut", schedule.rubOut());
  }

  private static void coat(Out out, CoatStep coat) {
    out.number("number", coat.number())
        .moment("start", coat.start())
        .word("scuff", coat.scuff())
        .word("sheen", coat.sheen())
        .group("drying", coat.drying(), DryingJson::times);
  }

  private static void step(Out out, Step step) {
    out.text("id", step.id())
        .text("title", step.title())
        .word("kind", step.kind())
        .list(
            "slots",
            step.slots(),
            (o, slot) -> o.moment("start", slot.start()).moment("end", slot.end()))
        .list("notes", step.notes(), Answers::note)
        .list("cautions", step.cautions(), Answers::caution)
        .list("working", step.working(), Answers::line)
        .optional("window", step.window(), ProjectJson::window);
  }

  private static void window(Out out, Step.Window window) {
    out.moment("opens", window.opens()).moment("closes", window.closes());
  }
}
