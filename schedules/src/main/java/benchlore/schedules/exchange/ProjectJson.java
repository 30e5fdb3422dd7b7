package benchlore.schedules.exchange;

import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.CoatingSchedule;
import benchlore.schedules.present.PlanDays;
import benchlore.schedules.project.Habits;
import benchlore.schedules.project.Moves;
import benchlore.schedules.project.Part;
import benchlore.schedules.project.Progress;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Purchase;
import benchlore.schedules.project.Shop;
import benchlore.schedules.project.Step;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.ShopWeek;
import java.util.Optional;

/** A whole project: request and answer. */
final class ProjectJson {
  private ProjectJson() {}

  static ProjectRequest request(RequestReader f) {
    return new ProjectRequest(
        f.moment("start"),
        f.list("parts", ProjectJson::part),
        MaterialsJson.materials(f.group("materials")),
        shop(f.group("shop")),
        FitJson.seasons(f.group("place")),
        f.flag("settled"),
        f.number("moisturePercent"),
        f.optional("progress", ProjectJson::progress).orElse(Progress.NONE));
  }

  private static Progress progress(RequestReader f) {
    return new Progress(
        f.has("resume") ? Optional.of(f.moment("resume")) : Optional.empty(),
        f.list(
            "done",
            d ->
                new Progress.Done(
                    step(d.text("step")),
                    d.list("slots", s -> new Interval(s.moment("start"), s.moment("end"))))));
  }

  private static StepId step(String name) {
    return StepId.parse(name)
        .orElseThrow(() -> new IllegalArgumentException("step is the name of no step: " + name));
  }

  private static Part part(RequestReader f) {
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
        f.word("moves", Moves.values()));
  }

  private static Shop shop(RequestReader f) {
    return new Shop(
        week(f.group("week")),
        DryingJson.climate(f.group("climate")),
        AirJson.room(f.group("room")),
        f.words("ignition", IgnitionSource.values()),
        SandingJson.shop(f.group("sanding")),
        GlueUpJson.clamps(f.group("clamps")),
        f.whole("people"),
        habits(f.group("habits")));
  }

  private static Habits habits(RequestReader f) {
    return new Habits(f.optionalNumber("transfer"), f.optionalNumber("glueSettlesSecond"));
  }

  private static ShopWeek week(RequestReader f) {
    return new ShopWeek(f.lists("days", ProjectJson::span), f.days("daysOff"));
  }

  private static ShopWeek.Span span(RequestReader f) {
    return new ShopWeek.Span(f.whole("fromMinuteInclusive"), f.whole("toMinuteExclusive"));
  }

  /** A plan with what it was asked for. */
  record Planned(ProjectRequest request, ProjectPlan plan) {}

  static void planned(AnswerWriter out, Planned planned) {
    ProjectPlan plan = planned.plan();
    out.list("days", PlanDays.of(plan, planned.request().shop()), ShownJson::row);
    out.list("steps", plan.steps(), ProjectJson::step)
        .list("shopping", plan.shopping(), ProjectJson::purchase)
        .list("layers", plan.layers(), ProjectJson::laid);
  }

  private static void laid(AnswerWriter out, ProjectPlan.Laid laid) {
    out.text("title", laid.title())
        .number("before", laid.before())
        .group("coats", laid.coats(), ProjectJson::coats)
        .optional("air", laid.air(), AirJson::schedule);
  }

  private static void purchase(AnswerWriter out, Purchase purchase) {
    out.group("item", purchase.item(), ProjectJson::item)
        .text("what", purchase.what())
        .text("detail", purchase.detail())
        .group("amount", purchase.amount(), AnswerJson::quantity)
        .text("remark", purchase.remark());
  }

  private static void item(AnswerWriter out, Purchase.Item item) {
    out.word("kind", item.kind())
        .word("sheen", item.sheen())
        .optional("grit", item.grit(), SandingJson::grit);
  }

  private static void coats(AnswerWriter out, CoatingSchedule schedule) {
    out.list("coats", schedule.coats(), ProjectJson::coat)
        .group("liquid", schedule.liquid(), AnswerJson::quantity)
        .group("dryFilm", schedule.dryFilm(), AnswerJson::quantity)
        .flag("rubOut", schedule.rubOut());
  }

  private static void coat(AnswerWriter out, CoatStep coat) {
    out.number("number", coat.number())
        .moment("start", coat.start())
        .word("scuff", coat.scuff())
        .word("sheen", coat.sheen())
        .group("drying", coat.drying(), DryingJson::times);
  }

  private static void step(AnswerWriter out, Step step) {
    AnswerJson.step(out, step.id());
    out.text("title", step.title())
        .word("kind", step.kind())
        .list(
            "slots",
            step.slots(),
            (o, slot) -> o.moment("start", slot.start()).moment("end", slot.end()))
        .list("notes", step.notes(), AnswerJson::note)
        .flag("isByTheDay", step.isByTheDay())
        .list("cautions", step.cautions(), AnswerJson::caution)
        .list("working", step.working(), AnswerJson::line)
        .optional("window", step.window(), ProjectJson::window);
  }

  private static void window(AnswerWriter out, Step.Window window) {
    out.moment("opens", window.opens()).moment("closes", window.closes());
  }
}
