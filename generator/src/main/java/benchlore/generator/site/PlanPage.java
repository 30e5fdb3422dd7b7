package benchlore.generator.site;

import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.days.DayLadder;
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
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the template of a plan's page needs. */
final class PlanPage {
  private static final String ROOT = "../";

  private final Library library;
  private final Planned planned;
  private final Markdown markdown;
  private final WorkingView working = new WorkingView();

  PlanPage(Library library, Planned planned) {
    this.library = library;
    this.planned = planned;
    this.markdown = new Markdown(library, ROOT);
  }

  String url() {
    return "plans/" + planned.id() + ".html";
  }

  /** Values for the template {@code plan}. */
  Map<String, Object> values() {
    Map<String, Object> values = new HashMap<>();
    values.put("root", ROOT);
    values.put("title", planned.title());
    values.put("file", planned.id());
    values.put("intro", markdown.block(planned.facts().words("intro")));
    values.put("materials", materials());
    if (planned.answer() instanceof Answer.Given<ProjectPlan> given) {
      values.put("refusals", List.of());
      plan(values, given.value());
    } else {
      values.put("refusals", refusals((Answer.Refused<ProjectPlan>) planned.answer()));
    }
    return values;
  }

  private void plan(Map<String, Object> values, ProjectPlan plan) {
    values.put("from", Moments.dayHtml(plan.start().date()));
    values.put("until", Moments.dayHtml(plan.end().date()));
    values.put("hours", Display.hours(plan.workSeconds()));
    values.put("ladder", ladder(plan, planned.request().shop()));
    values.put("nights", !PlanDays.nights(plan, planned.request().shop().climate()).isEmpty());
    values.put("shopping", shopping(plan));
    values.put("days", days(plan));
  }

  private static String ladder(ProjectPlan plan, Shop shop) {
    return DayLadder.draw(PlanDays.of(plan, shop), "The days of this plan", "ladder");
  }

  /** One line of HTML for lists: when it ends, how much work. */
  String shortly() {
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
    for (String id :
        List.of(
            planned.facts().words("species"),
            planned.facts().words("adhesive"),
            planned.facts().group("finish").words("record"))) {
      materials.add(library.entries().get(id));
    }
    return materials;
  }

  private static List<Map<String, String>> refusals(Answer.Refused<ProjectPlan> refused) {
    List<Map<String, String>> list = new ArrayList<>();
    for (Refusal reason : refused.reasons()) {
      list.add(
          Map.of(
              "problem", Display.html(reason.problem()), "remedy", Display.html(reason.remedy())));
    }
    return list;
  }

  private List<Map<String, String>> shopping(ProjectPlan plan) {
    List<Map<String, String>> list = new ArrayList<>();
    for (Purchase purchase : plan.shopping()) {
      list.add(
          Map.of(
              "what", named(purchase),
              "amount", Display.html(purchase.amount()),
              "remark", purchase.remark()));
    }
    return list;
  }

  /** Adhesive and finish by the names of their records. */
  private String named(Purchase purchase) {
    return switch (purchase.item().kind()) {
      case ADHESIVE -> purchase.named(materials().get(1).title());
      case FINISH -> purchase.named(materials().get(2).title());
      case ABRASIVE, FILLER -> purchase.words();
    };
  }

  /** Steps under the day they begin on. */
  private List<Map<String, Object>> days(ProjectPlan plan) {
    List<Map<String, Object>> days = new ArrayList<>();
    Set<String> told = new HashSet<>();
    Date current = null;
    List<Map<String, Object>> steps = new ArrayList<>();
    int number = 1;
    for (Step step : plan.steps()) {
      Date day = step.start().date();
      if (!day.equals(current)) {
        steps = new ArrayList<>();
        days.add(Map.of("day", Moments.dayHtml(day), "steps", steps));
        current = day;
      }
      steps.add(step(step, number++, told));
    }
    return days;
  }

  private Map<String, Object> step(Step step, int number, Set<String> told) {
    Map<String, Object> values = new HashMap<>();
    values.put("id", step.id().name());
    values.put("number", number);
    values.put("title", step.title());
    values.put("work", step.kind() == Step.Kind.WORK);
    values.put("when", when(step));
    values.put("notes", step.notes().stream().map(Display::html).toList());
    values.put("window", window(step));
    values.put("cautions", step.cautions().stream().map(c -> caution(c, told)).toList());
    values.put("working", working.of(step.working()));
    return values;
  }

  /** In full unless the same words stand above and nobody can be badly hurt; the measure always. */
  private static Map<String, Object> caution(Caution caution, Set<String> told) {
    boolean first =
        told.add(Display.html(caution.what())) || caution.severity() == Caution.Severity.DANGER;
    return Map.of(
        "severity", caution.severity().name().toLowerCase(java.util.Locale.ROOT),
        "what", first ? Display.html(caution.what()) : "",
        "measure", Display.html(caution.measure()));
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
