package benchlore.generator.planning;

import benchlore.generator.content.Problem;
import benchlore.generator.export.PlanText;
import benchlore.generator.units.Display;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What came out for a judged project, as its user reads it and as it stands in the calendar.
 *
 * @param project what was asked
 * @param plan the plan; empty if none was made
 * @param text all words as printed
 */
record JudgedAnswer(JudgedProject project, Optional<ProjectPlan> plan, String text) {
  private static final Pattern GRADE = Pattern.compile("P(\\d+)");
  private static final Pattern SANDED = Pattern.compile("^.+: P\\d+ (for|by hand).*");

  static JudgedAnswer of(JudgedProject project, Planned planned) {
    Answer<ProjectPlan> answer = planned.answer();
    String text = PlanText.render("", answer);
    return new JudgedAnswer(
        project,
        answer.fold(given -> Optional.of(given.value()), refused -> Optional.empty()),
        spaced(text));
  }

  /** A plan file that is told what is wrong with it; the names of its records say nothing. */
  static JudgedAnswer of(JudgedProject project, List<Problem> problems) {
    String text =
        problems.stream()
            .map(p -> p.what().replaceAll("`[^`]*`", "it") + " " + p.todo())
            .collect(Collectors.joining("\n"));
    return new JudgedAnswer(project, Optional.empty(), spaced(text));
  }

  private static String spaced(String text) {
    return text.replace('\u00a0', ' ').replace('\u202f', ' ');
  }

  /** The printed words on one line. */
  String flat() {
    return text.replaceAll("\\s+", " ");
  }

  /** All words of such steps, their cautions too; of a refusal all there are. */
  String told(StepId.Task task) {
    if (plan.isEmpty()) {
      return flat();
    }
    StringBuilder told = new StringBuilder();
    for (Step step : steps(task)) {
      told.append(step.title()).append(' ').append(String.join(" ", notes(step)));
      for (Caution caution : step.cautions()) {
        told.append(' ').append(Display.text(caution.what()));
        told.append(' ').append(Display.text(caution.measure()));
      }
    }
    return spaced(told.toString());
  }

  List<Step> steps(StepId.Task task) {
    return plan.orElseThrow().steps().stream().filter(s -> s.id().is(task)).toList();
  }

  /** The notes of a step, as printed. */
  static List<String> notes(Step step) {
    return step.notes().stream().map((Message m) -> spaced(Display.text(m))).toList();
  }

  /** The grades on bare faces, coarsest first, by the parts' names. */
  Map<String, List<Integer>> grades() {
    Map<String, List<Integer>> grades = new LinkedHashMap<>();
    for (Step step : steps(StepId.Task.SAND)) {
      for (String note : notes(step)) {
        if (SANDED.matcher(note).matches() && !note.startsWith("End grain")) {
          String names = note.substring(0, note.indexOf(": "));
          grades.put(names, numbers(GRADE, note.substring(names.length())));
        }
      }
    }
    return grades;
  }

  /** Seconds from the start of each coat to the start of the next. */
  List<Double> betweenCoats() {
    List<Step> coats = steps(StepId.Task.COAT);
    List<Double> seconds = new ArrayList<>();
    for (int i = 1; i < coats.size(); i++) {
      seconds.add(coats.get(i - 1).start().secondsUntil(coats.get(i).start()));
    }
    return seconds;
  }

  /** The share of the printed words that warn, in percent. */
  double cautionShare() {
    int all = 0;
    int warning = 0;
    boolean warns = false;
    for (String line : text.lines().toList()) {
      warns = line.startsWith("    ! ") || (warns && !line.isBlank());
      int words = line.isBlank() ? 0 : line.strip().split("\\s+", -1).length;
      all += words;
      warning += warns ? words : 0;
    }
    return 100.0 * warning / all;
  }

  /** The first number of each match. */
  static List<Integer> numbers(Pattern pattern, String text) {
    return pattern
        .matcher(text)
        .results()
        .map((MatchResult m) -> Integer.valueOf(m.group(1)))
        .toList();
  }
}
