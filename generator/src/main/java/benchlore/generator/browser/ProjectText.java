package benchlore.generator.browser;

import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.calendar.ShopWeek;
import benchlore.schedules.coating.ApplicationMethod;
import benchlore.schedules.coating.Sheen;
import benchlore.schedules.plan.CoatChoice;
import benchlore.schedules.plan.Materials;
import benchlore.schedules.plan.Part;
import benchlore.schedules.plan.Plan;
import benchlore.schedules.plan.PlanRequest;
import benchlore.schedules.plan.ProjectPlan;
import benchlore.schedules.plan.Shop;
import benchlore.schedules.plan.Step;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A whole project: request text to answer text. */
final class ProjectText {
  private ProjectText() {}

  static String plan(String request) {
    return Answers.text(request, f -> Plan.plan(request(f)), ProjectText::project);
  }

  private static PlanRequest request(Asked f) {
    Asked materials = f.group("materials");
    Asked coats = f.group("coats");
    return new PlanRequest(
        f.moment("start"),
        f.list("parts", ProjectText::part),
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
        FitText.seasons(f.group("place")),
        f.flag("settled"),
        f.number("moisturePercent"));
  }

  private static Part part(Asked f) {
    return new Part(
        f.text("name"),
        f.whole("count"),
        f.number("lengthMetre"),
        f.number("widthMetre"),
        f.number("thicknessMetre"),
        FitText.rings(f.group("rings")),
        f.whole("boards"),
        SandingText.surface(f.group("surface")),
        f.number("machiningSecond"),
        f.flag("moves"));
  }

  private static Shop shop(Asked f) {
    return new Shop(
        week(f.group("week")),
        DryingText.climate(f.group("climate")),
        AirText.room(f.group("room")),
        f.words("ignition", IgnitionSource.values()),
        SandingText.shop(f.group("sanding")),
        GlueUpText.clamps(f.group("clamps")),
        f.whole("people"));
  }

  private static ShopWeek week(Asked f) {
    Asked days = f.group("days");
    Map<DayOfWeek, List<ShopWeek.Span>> spans = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (days.has(day.name())) {
        spans.put(
            day,
            days.list(
                day.name(),
                s ->
                    new ShopWeek.Span(
                        s.whole("fromMinuteInclusive"), s.whole("toMinuteExclusive"))));
      }
    }
    List<LocalDate> off = new ArrayList<>();
    for (String day : f.texts("daysOff")) {
      off.add(
          LocalDate.of(
              f.digits("daysOff", day, 0, 4),
              f.digits("daysOff", day, 5, 7),
              f.digits("daysOff", day, 8, 10)));
    }
    return new ShopWeek(spans, off);
  }

  private static void project(JsonWriter out, ProjectPlan plan) {
    out.list("steps", plan.steps(), ProjectText::step)
        .list(
            "shopping",
            plan.shopping(),
            (w, purchase) ->
                w.open("")
                    .text("what", purchase.what())
                    .group("amount", purchase.amount(), Answers::quantity)
                    .text("remark", purchase.remark())
                    .close())
        .list(
            "coats",
            plan.coats().coats(),
            (w, coat) ->
                w.open("")
                    .number("number", coat.number())
                    .word("scuff", coat.scuff())
                    .group("drying", coat.drying(), DryingText::times)
                    .close())
        .optional("air", plan.air(), AirText::schedule);
  }

  private static void step(JsonWriter out, Step step) {
    out.open("")
        .text("id", step.id())
        .text("title", step.title())
        .word("kind", step.kind())
        .list(
            "slots",
            step.slots(),
            (w, slot) -> w.open("").moment("start", slot.start()).moment("end", slot.end()).close())
        .list("notes", step.notes(), (w, note) -> w.group("", note, Answers::note))
        .list("cautions", step.cautions(), Answers::caution)
        .list("working", step.working(), Answers::line)
        .optional("window", step.window(), ProjectText::window)
        .close();
  }

  private static void window(JsonWriter out, Step.Window window) {
    out.moment("opens", window.opens());
    window.closes().ifPresent(closes -> out.moment("closes", closes));
  }
}
