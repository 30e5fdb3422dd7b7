package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Objects;

/**
 * Plans a project of one wood, one adhesive and finishes in order: settle the stock, glue up,
 * machine, test-fit, sand, coat, cure, install. What the tables refuse is refused.
 *
 * <p>Each step starts as early as the one before it, the shop's hours and the air allow. A dry fit
 * always stands before the first coat. A step that a rule of the engine refuses refuses the plan,
 * with that rule's reasons.
 *
 * <p>Greedy: it takes the first moment that is sound, and does not shift an early step to shorten
 * the whole.
 */
public final class Project {
  private Project() {}

  /**
   * Plans a project.
   *
   * @param request what, of what, where and from when
   * @return the steps with their cautions and working, or every reason why not
   */
  public static Answer<ProjectPlan> plan(ProjectRequest request) {
    Objects.requireNonNull(request, "request");
    List<Refusal> nonsense = checks(request).refusals();
    List<Refusal> first = nonsense.isEmpty() ? Suited.refusals(request) : nonsense;
    if (!first.isEmpty()) {
      return Answer.refuse(first);
    }
    PlanBuilder draft = new PlanBuilder(request.shop().week(), request.start(), request.progress());
    StockSteps.add(request, draft);
    new GlueSteps(request, draft).add();
    if (draft.refused()) {
      return Answer.refuse(draft.refusals());
    }
    MachineSteps.add(request, draft);
    boolean isLate = FitSteps.isLate(request);
    if (!isLate) {
      FitSteps.add(request, draft);
    }
    new SandSteps(request, draft).add();
    if (isLate) {
      FitSteps.add(request, draft);
    }
    FitSteps.check(request, draft);
    DustDown.add(request, draft);
    if (draft.refused()) {
      return Answer.refuse(draft.refusals());
    }
    LayerSteps coats = new LayerSteps(request, draft);
    coats.add();
    if (draft.refused()) {
      return Answer.refuse(draft.refusals());
    }
    CureSteps.add(request, draft, coats.last());
    if (draft.refused()) {
      return Answer.refuse(draft.refusals());
    }
    ProjectPlan plan = new ProjectPlan(draft.steps(), draft.shopping(), coats.laid());
    return Answer.of(plan, coats.working(), coats.cautions());
  }

  private static Checks checks(ProjectRequest request) {
    Checks checks = new Checks();
    checks
        .require(!request.parts().isEmpty(), "parts", "No part is named.", "Name at least one.")
        .require(
            !request.shop().week().empty(),
            "shop.week",
            "Nobody is ever in the shop.",
            "Give the hours of at least one day of the week.")
        .within("moisturePercent", request.moisturePercent(), 3, 25, Unit.PERCENT);
    for (Part part : request.parts()) {
      checks
          .within("part.count", part.count(), 1, 100, Unit.COUNT)
          .within("part.boards", part.boards(), 1, 20, Unit.COUNT)
          .within("part.lengthMetre", part.lengthMetre(), 0.01, 10, Unit.METRE)
          .within("part.widthMetre", part.widthMetre(), 0.01, 3, Unit.METRE)
          .within("part.thicknessMetre", part.thicknessMetre(), 0.003, 0.1, Unit.METRE)
          .within("part.machiningSecond", part.machiningSecond(), 0, 604_800, Unit.SECOND);
    }
    return checks;
  }
}
