package benchlore.generator.planning;

import benchlore.generator.planning.JudgedProject.Check;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.Purchase;
import benchlore.schedules.project.Step;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The closed vocabulary a master's expectations are written in. */
final class JudgedRules {
  /**
   * Whether an expectation is kept.
   *
   * @param kept whether
   * @param cameOut what came out, in a few words
   */
  record Verdict(boolean kept, String cameOut) {}

  private static final List<Integer> SERIES =
      List.of(40, 60, 80, 100, 120, 150, 180, 220, 320, 400, 600);
  private static final Pattern CLAMPS = Pattern.compile("(\\d+) clamps?[ ,]");
  private static final double HOUR_SECONDS = 3_600;
  private static final double DAY_SECONDS = 86_400;

  /** Rules that read the words, or hold of a refusal as well. */
  private static final Map<String, BiFunction<JudgedAnswer, Object, Verdict>> ALWAYS =
      new TreeMap<>(
          Map.of(
              "outcome", JudgedRules::outcome,
              "says", (a, v) -> says(a.flat(), v),
              "says-not", (a, v) -> saysNot(a.flat(), v),
              "coat-says", (a, v) -> says(a.told(StepId.Task.COAT), v),
              "coat-says-not", (a, v) -> saysNot(a.told(StepId.Task.COAT), v),
              "glue-says", (a, v) -> says(a.told(StepId.Task.GLUE), v),
              "warm-while-wet", (a, v) -> warm(a, v, StepId.Task.COAT),
              "warm-while-clamped", (a, v) -> warm(a, v, StepId.Task.GLUE)));

  /** Rules of a plan that was made. */
  private static final Map<String, BiFunction<JudgedAnswer, Object, Verdict>> PLANNED =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("opens", (a, v) -> grade(a, v, 0)),
              Map.entry("ends", (a, v) -> grade(a, v, -1)),
              Map.entry("skips-at-most", JudgedRules::skips),
              Map.entry("one-sequence", JudgedRules::oneSequence),
              Map.entry("has", (a, v) -> has(a, v, true)),
              Map.entry("has-not", (a, v) -> has(a, v, false)),
              Map.entry("coats", JudgedRules::coats),
              Map.entry("scuff", JudgedRules::scuff),
              Map.entry("hours-between-coats", JudgedRules::between),
              Map.entry("coats-within-days", JudgedRules::coatsWithin),
              Map.entry("ready-within-days", JudgedRules::readyWithin),
              Map.entry("buys-not", JudgedRules::buysNot),
              Map.entry("bought-once", JudgedRules::boughtOnce),
              Map.entry("discs-at-most", JudgedRules::discs),
              Map.entry("clamps", JudgedRules::clamps),
              Map.entry("gap", JudgedRules::gap),
              Map.entry("hands-on-hours", JudgedRules::handsOn),
              Map.entry("wait-days", JudgedRules::waitDays),
              Map.entry("caution-share-at-most", JudgedRules::cautionShare),
              Map.entry("not-before-fresh", (a, v) -> JudgedTimes.inWindows(a)),
              Map.entry("in-hours", (a, v) -> JudgedTimes.inHours(a))));

  private JudgedRules() {}

  static Verdict of(JudgedAnswer answer, Check check) {
    var always = ALWAYS.get(check.rule());
    if (always != null) {
      return always.apply(answer, check.value());
    }
    var planned = PLANNED.get(check.rule());
    if (planned == null) {
      throw new IllegalArgumentException("no rule is called " + check.rule());
    }
    return answer.plan().isPresent()
        ? planned.apply(answer, check.value())
        : new Verdict(false, "refused");
  }

  /** The whole vocabulary. */
  static Set<String> names() {
    Set<String> names = new TreeSet<>(ALWAYS.keySet());
    names.addAll(PLANNED.keySet());
    return names;
  }

  /** Whether a rule says something only of a plan that was made. */
  static boolean needsPlan(Check check) {
    return PLANNED.containsKey(check.rule());
  }

  private static Verdict outcome(JudgedAnswer answer, Object value) {
    String came = answer.plan().isPresent() ? "planned" : "refused";
    return new Verdict(came.equals(value), came);
  }

  private static Optional<String> found(String told, Object words) {
    String text = told.toLowerCase(Locale.ROOT);
    for (String word : words.toString().toLowerCase(Locale.ROOT).split("\\|", -1)) {
      if (text.contains(word)) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }

  private static Verdict says(String told, Object value) {
    List<?> missing = ((List<?>) value).stream().filter(w -> found(told, w).isEmpty()).toList();
    return new Verdict(
        missing.isEmpty(), missing.isEmpty() ? "says so" : "does not say " + missing);
  }

  private static Verdict saysNot(String told, Object value) {
    List<?> said = ((List<?>) value).stream().filter(w -> found(told, w).isPresent()).toList();
    return new Verdict(said.isEmpty(), said.isEmpty() ? "does not say it" : "says " + said);
  }

  private static Verdict warm(JudgedAnswer answer, Object value, StepId.Task task) {
    return answer.plan().isEmpty()
        ? new Verdict(true, "refused")
        : JudgedTimes.warm(answer, (Map<?, ?>) value, task);
  }

  private static Verdict grade(JudgedAnswer answer, Object value, int place) {
    List<Integer> range = JudgedAnswer.numbers(Pattern.compile("P(\\d+)"), value.toString());
    Map<String, List<Integer>> grades = answer.grades();
    boolean kept = !grades.isEmpty();
    for (List<Integer> path : grades.values()) {
      int one = path.get(place < 0 ? path.size() - 1 : place);
      kept &= range.get(0) <= one && one <= range.get(1);
    }
    return new Verdict(kept, grades.toString());
  }

  private static Verdict skips(JudgedAnswer answer, Object value) {
    int most = 0;
    for (List<Integer> path : answer.grades().values()) {
      for (int i = 1; i < path.size(); i++) {
        most = Math.max(most, SERIES.indexOf(path.get(i)) - SERIES.indexOf(path.get(i - 1)) - 1);
      }
    }
    return new Verdict(most <= number(value), answer.grades().toString());
  }

  private static Verdict oneSequence(JudgedAnswer answer, Object value) {
    long ends = answer.grades().values().stream().map(p -> p.get(p.size() - 1)).distinct().count();
    return new Verdict(ends <= 1, answer.grades().toString());
  }

  private static Verdict has(JudgedAnswer answer, Object value, boolean wanted) {
    List<String> tasks =
        answer.plan().orElseThrow().steps().stream()
            .map(s -> s.id().task().name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .distinct()
            .toList();
    boolean kept = ((List<?>) value).stream().allMatch(t -> tasks.contains(t) == wanted);
    return new Verdict(kept, tasks.toString());
  }

  private static Verdict coats(JudgedAnswer answer, Object value) {
    int coats = answer.steps(StepId.Task.COAT).size();
    return new Verdict(coats == number(value), coats + " coats");
  }

  /** A scuff has its own step or stands in the words of the coat it is done for. */
  private static Verdict scuff(JudgedAnswer answer, Object value) {
    List<Step> coats = answer.steps(StepId.Task.COAT);
    int scuffs = answer.steps(StepId.Task.SCUFF).size();
    long told =
        coats.stream()
            .skip(1)
            .filter(c -> JudgedAnswer.notes(c).toString().matches("(?s).*(?i)(scuff|denib).*"))
            .count();
    boolean kept = "yes".equals(value) ? scuffs + told >= coats.size() - 1 : scuffs == 0;
    return new Verdict(kept, scuffs + " scuff steps, told at " + told + " of " + coats.size());
  }

  private static Verdict between(JudgedAnswer answer, Object value) {
    List<Double> hours = answer.betweenCoats().stream().map(s -> s / HOUR_SECONDS).toList();
    boolean kept = hours.stream().allMatch(h -> within(h, value));
    return new Verdict(kept, hours.stream().map(JudgedRules::tenth).toList() + " h between");
  }

  private static Verdict coatsWithin(JudgedAnswer answer, Object value) {
    double days =
        answer.betweenCoats().stream().mapToDouble(Double::doubleValue).sum() / DAY_SECONDS;
    return new Verdict(days <= number(value), tenth(days) + " d from first to last coat");
  }

  private static Verdict readyWithin(JudgedAnswer answer, Object value) {
    ProjectPlan plan = answer.plan().orElseThrow();
    double days = plan.start().secondsUntil(plan.end()) / DAY_SECONDS;
    return new Verdict(days <= number(value), tenth(days) + " d in all");
  }

  private static List<Purchase> bought(JudgedAnswer answer, Object kind) {
    return answer.plan().orElseThrow().shopping().stream()
        .filter(p -> p.item().kind().name().toLowerCase(Locale.ROOT).equals(kind))
        .toList();
  }

  private static Verdict buysNot(JudgedAnswer answer, Object value) {
    List<Purchase> bought = bought(answer, value);
    return new Verdict(bought.isEmpty(), "bought: " + bought.size());
  }

  private static Verdict boughtOnce(JudgedAnswer answer, Object value) {
    List<String> bought = bought(answer, value).stream().map(Purchase::words).toList();
    return new Verdict(bought.size() == 1, "bought: " + bought);
  }

  private static Verdict discs(JudgedAnswer answer, Object value) {
    double discs = bought(answer, "abrasive").stream().mapToDouble(p -> p.amount().value()).sum();
    return new Verdict(discs <= number(value), tenth(discs) + " discs");
  }

  private static Verdict clamps(JudgedAnswer answer, Object value) {
    List<Integer> clamps =
        answer.steps(StepId.Task.GLUE).stream()
            .flatMap(s -> JudgedAnswer.numbers(CLAMPS, JudgedAnswer.notes(s).toString()).stream())
            .toList();
    boolean kept = !clamps.isEmpty() && clamps.stream().allMatch(c -> within(c, value));
    return new Verdict(kept, clamps + " clamps");
  }

  private static Verdict gap(JudgedAnswer answer, Object value) {
    Map<?, ?> wanted = (Map<?, ?>) value;
    Pattern told = Pattern.compile(wanted.get("part") + ": .*?(?:leave|grow by) ([0-9.]+) mm");
    String notes =
        answer.steps(StepId.Task.DRY_FIT).stream()
            .flatMap(s -> JudgedAnswer.notes(s).stream())
            .collect(Collectors.joining(" "));
    Matcher matcher = told.matcher(notes);
    if (!matcher.find()) {
      return new Verdict(false, "no gap told");
    }
    double millimetres = Double.parseDouble(matcher.group(1));
    return new Verdict(within(millimetres, value), millimetres + " mm");
  }

  private static Verdict handsOn(JudgedAnswer answer, Object value) {
    double hours = answer.plan().orElseThrow().workSeconds() / HOUR_SECONDS;
    return new Verdict(within(hours, value), tenth(hours) + " h of work");
  }

  private static Verdict waitDays(JudgedAnswer answer, Object value) {
    Object name = ((Map<?, ?>) value).get("step");
    double days =
        answer
                .plan()
                .orElseThrow()
                .find(name.toString())
                .map(s -> s.start().secondsUntil(s.end()))
                .orElse(0.0)
            / DAY_SECONDS;
    return new Verdict(within(days, value), tenth(days) + " d");
  }

  private static Verdict cautionShare(JudgedAnswer answer, Object value) {
    double share = answer.cautionShare();
    return new Verdict(share <= number(value), tenth(share) + " % of the words warn");
  }

  private static boolean within(double number, Object range) {
    Map<?, ?> ends = (Map<?, ?>) range;
    return (ends.get("least") == null || number(ends.get("least")) <= number)
        && (ends.get("most") == null || number <= number(ends.get("most")));
  }

  static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  static String tenth(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }
}
