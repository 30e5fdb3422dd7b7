package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.EquivalentAge;
import benchlore.schedules.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One coat's stages, each an equivalent age.
 *
 * <pre>
 * stage is reached when the integral of r(air) dt = stated time x thickness factor
 * touch dry: r of the first mechanism; full cure: r of the last
 * stages between: the slowest mechanism at each moment
 * recoat closes: the fastest mechanism, the same end of the stated range as the opening
 * pot life: the fastest mechanism, and the short end of the stated range
 * </pre>
 *
 * <p>Valid where {@link DryingRate} is. Every wait but the closing one is kept at least as long as
 * touch dry (but for what goes on tacky or wet), and full cure at least as long as every wait
 * before it.
 */
final class Drying {
  private static final Stage[] WET = {Stage.TOUCH_DRY, Stage.RECOAT_OPENS};
  private static final Stage[] CHAIN = {
    Stage.TOUCH_DRY, Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES, Stage.SAND, Stage.FULL_CURE
  };

  private final DryingRequest request;
  private final Finish finish;
  private final double factor;
  private final DryingCourses courses;

  private Drying(DryingRequest request) {
    this.request = request;
    this.finish = request.finish();
    this.factor = FilmThickness.factor(finish, request.wetFilmMicron());
    this.courses = new DryingCourses(request);
  }

  static Answer<DryingTimes> plan(DryingRequest request) {
    return plan(request, true);
  }

  /** A coat that is on already: what its air does to it is told, not refused. */
  static Answer<DryingTimes> laid(DryingRequest request) {
    return plan(request, false);
  }

  private static Answer<DryingTimes> plan(DryingRequest request, boolean gated) {
    Checks checks = new Checks();
    FinishChecks.check(checks, request.finish());
    FinishChecks.stages(checks, request.finish());
    checks.within("wetFilmMicron", request.wetFilmMicron(), 1, 1000, Unit.MICRON);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    Optional<PassedLimit> passed = gated ? AirGate.passed(request) : Optional.empty();
    if (passed.isPresent()) {
      return Answer.refuse(List.of(AirGate.refusal(passed.get(), request, List.of())));
    }
    return new Drying(request).answer();
  }

  private Answer<DryingTimes> answer() {
    Checks checks = new Checks();
    List<StageTime> stages = stages(checks, Stage.values());
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    DryingTimes times =
        new DryingTimes(
            request.start(),
            stages,
            factor,
            FilmThickness.dryMicron(finish, request.wetFilmMicron()),
            potLife());
    List<Caution> cautions = WetHours.cautions(request, times);
    cautions.addAll(CoatingCautions.of(request, times));
    return Answer.of(times, DryingWorking.of(request, times), cautions);
  }

  /** The stages that end the wet hours, alone: enough to look for a better hour to start. */
  static Optional<DryingTimes> wetTimes(DryingRequest request) {
    Checks checks = new Checks();
    List<StageTime> stages = new Drying(request).stages(checks, WET);
    return checks.isValid()
        ? Optional.of(new DryingTimes(request.start(), stages, 1, 0, Optional.empty()))
        : Optional.empty();
  }

  /** The stages the next coat hangs on, alone: enough to lay out a chain of coats. */
  static Optional<DryingTimes> chainTimes(DryingRequest request) {
    Checks checks = new Checks();
    List<StageTime> stages = new Drying(request).stages(checks, CHAIN);
    return checks.isValid()
        ? Optional.of(new DryingTimes(request.start(), stages, 1, 0, Optional.empty()))
        : Optional.empty();
  }

  private List<StageTime> stages(Checks checks, Stage[] wanted) {
    List<StageTime> stages = new ArrayList<>();
    double[] floor = {0, 0};
    for (Stage stage : wanted) {
      Optional<SourcedRange> stated = stage.of(finish);
      if (stated.isEmpty()) {
        continue;
      }
      Optional<StageTime> reached = reach(stage, stated.get(), floor, stages);
      if (reached.isEmpty()) {
        // The later stages would only say the same.
        checks.add(never(stage));
        return List.of();
      }
      stages.add(reached.get());
      if (stage == Stage.TOUCH_DRY || stage == Stage.LIGHT_USE) {
        floor[0] = soonest(stages);
        floor[1] = planned(stages);
      }
    }
    return stages;
  }

  private Optional<StageTime> reach(
      Stage stage, SourcedRange stated, double[] floor, List<StageTime> before) {
    EquivalentAge.Course course = courses.of(stage);
    if (stage == Stage.RECOAT_CLOSES) {
      OptionalDouble closes = seconds(paired(stated), course);
      return closes.isEmpty() ? Optional.empty() : Optional.of(closing(down(closes), before));
    }
    boolean opens = stage == Stage.RECOAT_OPENS;
    OptionalDouble soonest = seconds(stated.low(), course);
    OptionalDouble planned = seconds(opens ? paired(stated) : stated.high(), course);
    if (soonest.isEmpty() || planned.isEmpty()) {
      return Optional.empty();
    }
    // What goes on tacky or wet does not wait until it is dry.
    boolean floored = !(opens && finish.film().bond().beforeDry());
    double early = Math.max(floored ? floor[0] : 0, Numeric.ceil(soonest.getAsDouble()));
    double late = Math.max(floored ? floor[1] : 0, Numeric.ceil(planned.getAsDouble()));
    return Optional.of(time(stage, early, Math.max(early, late)));
  }

  /**
   * The end of a stated range that both ends of the recoat window take: the same, since the long
   * end of one tin's opening has nothing to do with the short end of another's closing. The short
   * ends where being late spoils the work, else the long ones.
   */
  private double paired(SourcedRange stated) {
    boolean lateSpoils =
        finish.film().bond().beforeDry() || finish.family() == FinishFamily.CATALYSED_LACQUER;
    return lateSpoils ? stated.low() : stated.high();
  }

  /** The closing of the window, never before its opening. */
  private static StageTime closing(double closes, List<StageTime> before) {
    double opens = 0;
    for (StageTime time : before) {
      opens = time.stage() == Stage.RECOAT_OPENS ? time.planned().seconds() : opens;
    }
    double at = Math.max(closes, opens);
    return time(Stage.RECOAT_CLOSES, at, at);
  }

  private Optional<Duration> potLife() {
    if (finish.curing().potLife().isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble seconds = courses.fastest().secondsUntil(finish.curing().potLife().get().low());
    return seconds.isEmpty() ? Optional.empty() : Optional.of(Duration.ofSeconds(down(seconds)));
  }

  private OptionalDouble seconds(double stated, EquivalentAge.Course course) {
    return course.secondsUntil(stated * factor);
  }

  private static double down(OptionalDouble seconds) {
    return Math.floor(seconds.getAsDouble());
  }

  private static StageTime time(Stage stage, double soonest, double planned) {
    return new StageTime(stage, Duration.ofSeconds(soonest), Duration.ofSeconds(planned));
  }

  private static double soonest(List<StageTime> stages) {
    double most = 0;
    for (StageTime time : stages) {
      if (time.stage() != Stage.RECOAT_CLOSES) {
        most = Math.max(most, time.soonest().seconds());
      }
    }
    return most;
  }

  private static double planned(List<StageTime> stages) {
    double most = 0;
    for (StageTime time : stages) {
      if (time.stage() != Stage.RECOAT_CLOSES) {
        most = Math.max(most, time.planned().seconds());
      }
    }
    return most;
  }

  private static Refusal never(Stage stage) {
    return Refusal.of(
        "climate",
        "In this air the film does not get to the stage: " + stage.words() + ".",
        "Warm the room, dry the air (or, for a moisture-curing finish, damp it), or choose a finish"
            + " made for this air.");
  }
}
