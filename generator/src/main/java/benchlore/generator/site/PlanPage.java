package benchlore.generator.site;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.days.DayLadder;
import benchlore.generator.page.Link;
import benchlore.generator.page.PlanModel;
import benchlore.generator.page.PlansModel;
import benchlore.generator.planning.Planned;
import benchlore.generator.units.Display;
import benchlore.generator.units.Moments;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.present.PlanDays;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.Purchase;
import benchlore.schedules.project.Shop;
import benchlore.schedules.project.Step;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Interval;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Fills the page of a plan, and its card in a list. */
final class PlanPage {
  private static final String ROOT = "../";

  private final Library library;
  private final Planned planned;
  private final Markdown markdown;

  PlanPage(Library library, Planned planned) {
    this.library = library;
    this.planned = planned;
    this.markdown = new Markdown(library, ROOT);
  }

  String url() {
    return "plans/" + planned.id() + ".html";
  }

  PlanModel model() {
    Optional<PlanModel.Laid> laid =
        planned.answer() instanceof Answer.Given<ProjectPlan> given
            ? Optional.of(laid(given.value()))
            : Optional.empty();
    return new PlanModel(
        planned.title(),
        planned.id(),
        markdown.block(planned.facts().words("intro")),
        materials(),
        refusals(),
        laid);
  }

  private PlanModel.Laid laid(ProjectPlan plan) {
    Shop shop = planned.request().shop();
    return new PlanModel.Laid(
        Moments.dayHtml(plan.start().date()),
        Moments.dayHtml(plan.end().date()),
        Display.hours(plan.workSeconds()),
        DayLadder.draw(PlanDays.of(plan, shop), "The days of this plan", "ladder"),
        !PlanDays.nights(plan, shop.climate()).isEmpty(),
        shopping(plan),
        days(plan));
  }

  /** The plan in a list. */
  PlansModel.Card card() {
    return new PlansModel.Card(new Link(url(), planned.title()), gist());
  }

  private String gist() {
    if (planned.answer() instanceof Answer.Given<ProjectPlan> given) {
      ProjectPlan plan = given.value();
      return Display.hours(plan.workSeconds())
          + " of work, "
          + Moments.dayHtml(plan.start().date())
          + " to "
          + Moments.dayHtml(plan.end().date());
    }
    return "Can&#39;t be done as asked";
  }

  private List<LibraryRecord> materials() {
    List<LibraryRecord> materials = new ArrayList<>();
    materials.add(library.entries().get(planned.facts().words("species")));
    materials.add(library.entries().get(planned.facts().words("adhesive")));
    for (Facts finish : finishes()) {
      materials.add(library.entries().get(finish.words("record")));
    }
    return materials;
  }

  private List<Facts> finishes() {
    return planned.facts().find("finish").isPresent()
        ? List.of(planned.facts().group("finish"))
        : planned.facts().groups("finishes");
  }

  private List<PlanModel.Refused> refusals() {
    List<PlanModel.Refused> list = new ArrayList<>();
    if (planned.answer() instanceof Answer.Refused<ProjectPlan> refused) {
      for (Refusal reason : refused.reasons()) {
        list.add(
            new PlanModel.Refused(Display.html(reason.problem()), Display.html(reason.remedy())));
      }
    }
    return list;
  }

  private List<PlanModel.Bought> shopping(ProjectPlan plan) {
    List<PlanModel.Bought> list = new ArrayList<>();
    for (Purchase purchase : plan.shopping()) {
      list.add(
          new PlanModel.Bought(
              named(purchase), Display.html(purchase.amount()), purchase.remark()));
    }
    return list;
  }

  /** The adhesive by the name of its record; a finish has its own. */
  private String named(Purchase purchase) {
    return switch (purchase.item().kind()) {
      case ADHESIVE -> purchase.named(materials().get(1).title());
      case FINISH, ABRASIVE -> purchase.words();
    };
  }

  /** Steps under the day they begin on. */
  private static List<PlanModel.Day> days(ProjectPlan plan) {
    Map<Date, List<PlanModel.Shown>> byDay = new LinkedHashMap<>();
    int number = 1;
    for (Step step : plan.steps()) {
      byDay
          .computeIfAbsent(step.start().date(), day -> new ArrayList<>())
          .add(shown(step, number++));
    }
    List<PlanModel.Day> days = new ArrayList<>();
    byDay.forEach((day, steps) -> days.add(new PlanModel.Day(Moments.dayHtml(day), steps)));
    return days;
  }

  private static PlanModel.Shown shown(Step step, int number) {
    return new PlanModel.Shown(
        step,
        number,
        when(step),
        window(step),
        step.cautions().stream().filter(c -> !c.again()).map(PlanPage::care).toList(),
        step.cautions().stream()
            .filter(Caution::again)
            .map(Caution::name)
            .collect(Collectors.joining("; ")),
        step.notes().stream().map(Display::html).toList(),
        step.working().stream().map(WorkingView::shown).toList());
  }

  private static PlanModel.Care care(Caution caution) {
    return new PlanModel.Care(
        caution.severity(), Display.html(caution.what()), Display.html(caution.measure()));
  }

  private static String window(Step step) {
    return step.window()
        .filter(w -> w.closes().isPresent() && w.closes().get().isAfter(w.opens()))
        .map(
            w ->
                "Recoat window: "
                    + Moments.shortlyHtml(w.opens())
                    + " to "
                    + Moments.shortlyHtml(w.closes().orElseThrow()))
        .orElse("");
  }

  private static String when(Step step) {
    if (step.isByTheDay()) {
      return "until " + Moments.dayHtml(step.end().date());
    }
    List<String> parts = new ArrayList<>();
    for (Interval slot : step.stretches()) {
      boolean sameDay = slot.start().date().equals(slot.end().date());
      boolean firstDay = slot.start().date().equals(step.start().date());
      String from = firstDay ? Moments.clockHtml(slot.start()) : Moments.shortlyHtml(slot.start());
      parts.add(
          from + "–" + (sameDay ? Moments.clockHtml(slot.end()) : Moments.shortlyHtml(slot.end())));
    }
    return String.join("; ", parts);
  }
}
