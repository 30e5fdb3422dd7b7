package benchlore.generator.planning;

import benchlore.generator.planning.JudgedRules.Verdict;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.project.Step;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What judged plans are held to by clock and thermometer, reckoned anew from the plan file. */
final class JudgedTimes {
  /** A day is coldest at five and warmest at three in the afternoon, roughly a wave between. */
  private static final double COLDEST_HOUR = 5;

  private static final double WARMEST_HOUR = 15;

  /** The shop's own air is a guess: a degree either way is not judged. */
  private static final double SLACK_CELSIUS = 1;

  private static final double QUARTER_SECONDS = 900;

  private JudgedTimes() {}

  /** Whether the air stays warm enough for some hours from the start of each such step. */
  static Verdict warm(JudgedAnswer answer, Map<?, ?> wanted, StepId.Task task) {
    Map<?, ?> climate = (Map<?, ?>) answer.project().plan().get("climate");
    double least = Double.POSITIVE_INFINITY;
    for (Step step : answer.steps(task)) {
      double seconds = JudgedRules.number(wanted.get("hours")) * 3_600;
      for (double after = 0; after <= seconds; after += QUARTER_SECONDS) {
        least = Math.min(least, celsius(climate, step.start().plusSeconds(after)));
      }
    }
    boolean kept = least >= JudgedRules.number(wanted.get("degrees")) - SLACK_CELSIUS;
    return new Verdict(kept, JudgedRules.tenth(least) + " °C at the coldest");
  }

  private static double celsius(Map<?, ?> climate, Moment moment) {
    double hour = moment.secondOfDay() / 3_600.0;
    double low = figure(climate.get("low"));
    double high = figure(climate.get("high"));
    double since = (hour - COLDEST_HOUR + 24) % 24;
    double rising = WARMEST_HOUR - COLDEST_HOUR;
    double wave = since < rising ? since / rising : 1 - (since - rising) / (24 - rising);
    double outside = low + (high - low) * (1 - Math.cos(Math.PI * wave)) / 2;
    return climate.get("heating") instanceof Map<?, ?> heating && heated(heating, hour)
        ? Math.max(outside, figure(heating.get("at")))
        : outside;
  }

  private static boolean heated(Map<?, ?> heating, double hour) {
    double from = figure(heating.get("from"));
    double to = figure(heating.get("to"));
    return from <= to ? from <= hour && hour < to : hour >= from || hour < to;
  }

  private static double figure(Object words) {
    return Double.parseDouble(words.toString().split(" ", -1)[0]);
  }

  /** Whether every step with a window begins in it. */
  static Verdict inWindows(JudgedAnswer answer) {
    List<String> outside = new ArrayList<>();
    for (Step step : answer.plan().orElseThrow().steps()) {
      step.window()
          .filter(
              w ->
                  step.start().isBefore(w.opens())
                      || w.closes()
                          .filter(c -> !c.isBefore(w.opens()))
                          .filter(step.start()::isAfter)
                          .isPresent())
          .ifPresent(w -> outside.add(step.id().name()));
    }
    return new Verdict(outside.isEmpty(), "outside their window: " + outside);
  }

  /** Whether all hands-on work lies in the hours given. */
  static Verdict inHours(JudgedAnswer answer) {
    Map<?, ?> hours = (Map<?, ?>) answer.project().plan().get("hours");
    List<String> outside = new ArrayList<>();
    for (Step step : answer.plan().orElseThrow().steps()) {
      if (step.kind() == Step.Kind.WORK && !step.slots().stream().allMatch(s -> in(hours, s))) {
        outside.add(step.id().name());
      }
    }
    return new Verdict(outside.isEmpty(), "outside the hours: " + outside);
  }

  private static boolean in(Map<?, ?> hours, Interval slot) {
    String day = slot.start().date().weekday().name().toLowerCase(Locale.ROOT);
    if (!(hours.get(day) instanceof List<?> stretches)) {
      return false;
    }
    Moment midnight = slot.start().startOfDay();
    double from = midnight.secondsUntil(slot.start());
    double to = midnight.secondsUntil(slot.end());
    return stretches.stream()
        .map(s -> s.toString().split("-", -1))
        .anyMatch(s -> seconds(s[0]) <= from + 1 && to <= seconds(s[1]) + 1);
  }

  private static double seconds(String clock) {
    String[] parts = clock.split(":", -1);
    return Integer.parseInt(parts[0]) * 3_600.0 + Integer.parseInt(parts[1]) * 60.0;
  }
}
