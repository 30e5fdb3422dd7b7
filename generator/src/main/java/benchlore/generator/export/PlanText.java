package benchlore.generator.export;

import benchlore.generator.planning.Planned;
import benchlore.generator.units.Display;
import benchlore.generator.units.Moments;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.Purchase;
import benchlore.schedules.project.Step;
import benchlore.schedules.time.Interval;
import java.util.ArrayList;
import java.util.List;

/** A plan as plain text, wide enough for a terminal and narrow enough to print. */
public final class PlanText {
  private static final int WIDTH = 96;

  private final StringBuilder out = new StringBuilder();

  private PlanText() {}

  /** The plan, or why there is none. */
  public static String render(Planned planned) {
    return render(planned.title(), planned.answer());
  }

  /** The plan under a title of its own, or why there is none. */
  public static String render(String title, Answer<ProjectPlan> answer) {
    PlanText text = new PlanText();
    text.line("", title);
    text.line("", "=".repeat(title.length()));
    if (answer instanceof Answer.Given<ProjectPlan> given) {
      text.plan(given.value());
    } else {
      text.refused((Answer.Refused<ProjectPlan>) answer);
    }
    return text.out.toString();
  }

  private void plan(ProjectPlan plan) {
    line(
        "",
        "From " + Moments.shortly(plan.start()) + " to " + Moments.day(plan.end().date()) + ".");
    line("", Display.hours(plan.workSeconds()) + " of work.");
    out.append('\n');
    for (Step step : plan.steps()) {
      step(step);
    }
    line("", "To have ready");
    for (Purchase purchase : plan.shopping()) {
      String remark = purchase.remark().isEmpty() ? "" : " (" + purchase.remark() + ")";
      line("  ", purchase.words() + ": " + Display.text(purchase.amount()) + remark);
    }
  }

  private void step(Step step) {
    String done = step.kind() == Step.Kind.WORK ? "[ ] " : " …  ";
    line(done, when(step) + "  " + step.title());
    step.window()
        .ifPresent(
            w ->
                line(
                    "      ",
                    "window: from "
                        + Moments.shortly(w.opens())
                        + w.closes()
                            .filter(w.opens()::isBefore)
                            .map(c -> " to " + Moments.shortly(c))
                            .orElse("")));
    for (Message note : step.notes()) {
      line("      ", Display.text(note));
    }
    List<String> again = new ArrayList<>();
    for (Caution caution : step.cautions()) {
      if (caution.again()) {
        again.add(caution.name());
      } else {
        line("    ! ", Display.text(caution.what()));
        line("      ", Display.text(caution.measure()));
      }
    }
    if (!again.isEmpty()) {
      line("    ! ", "As before: " + String.join("; ", again) + ".");
    }
    out.append('\n');
  }

  private static String when(Step step) {
    if (step.isByTheDay()) {
      return Moments.day(step.start().date()) + " to " + Moments.day(step.end().date());
    }
    if (step.slots().size() == 1) {
      Interval slot = step.slots().get(0);
      boolean sameDay = slot.start().date().equals(slot.end().date());
      String end = sameDay ? Moments.clock(slot.end()) : Moments.shortly(slot.end());
      return Moments.shortly(slot.start()) + "–" + end;
    }
    return Moments.shortly(step.start())
        + " to "
        + Moments.shortly(step.end())
        + " in "
        + step.slots().size()
        + " sessions";
  }

  private void refused(Answer.Refused<ProjectPlan> refused) {
    line("", "No plan. What stands in the way:");
    for (Refusal reason : refused.reasons()) {
      line("  - ", Display.text(reason.problem()));
      line("    ", Display.text(reason.remedy()));
    }
  }

  /** Writes a paragraph with a hanging indent as wide as its first sign. */
  private void line(String first, String text) {
    String indent = " ".repeat(first.length());
    StringBuilder row = new StringBuilder(first);
    for (String word : text.split(" ", -1)) {
      if (row.length() + word.length() + 1 > WIDTH && row.length() > indent.length()) {
        out.append(row.toString().stripTrailing()).append('\n');
        row = new StringBuilder(indent);
      }
      row.append(word).append(' ');
    }
    out.append(row.toString().stripTrailing()).append('\n');
  }
}
