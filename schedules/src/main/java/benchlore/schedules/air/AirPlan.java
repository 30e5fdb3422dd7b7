package benchlore.schedules.air;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Works out a schedule from a request already checked. */
final class AirPlan {
  private static final double CURVE_AHEAD_SECOND = FlowNeeded.EIGHT_HOURS;
  private static final double MOST_CURVE_SECOND = 60 * 86_400.0;

  private final AirRequest request;
  private final Exposure exposure;
  private final AirSchedule.Coverage coverage;
  private final boolean healthKnown;
  private final boolean fireKnown;

  private AirPlan(AirRequest request) {
    this.request = request;
    this.exposure = Exposure.of(request.room(), request.releases());
    List<Solvent> solvents = request.solvents();
    this.coverage = coverage(solvents);
    this.healthKnown = solvents.isEmpty() || !coverage.limits().isEmpty();
    this.fireKnown =
        solvents.isEmpty() || coverage.withoutExplosiveLimit().size() < solvents.size();
  }

  static AirSchedule of(AirRequest request) {
    return new AirPlan(request).build();
  }

  private AirSchedule build() {
    List<AirSchedule.ReEntry> reEntries = reEntries();
    double until = curveEnd(reEntries);
    ConcentrationSamples samples = ConcentrationSamples.of(exposure, until);
    AirSchedule.Peaks peaks = peaks(samples);
    AirSchedule unmasked =
        new AirSchedule(
            curve(samples),
            peaks,
            eightHour(),
            coverage,
            FlowNeeded.of(exposure, request.room(), healthKnown, fireKnown),
            reEntries,
            new RespiratorAdvice(Respirator.NONE, List.of()),
            brushedIndex());
    return unmasked.with(RespiratorChoice.vapour(request, unmasked.worstIndex(), quickOnesKnown()));
  }

  private static AirSchedule.Coverage coverage(List<Solvent> solvents) {
    List<ExposureLimit> limits = new ArrayList<>();
    List<String> withoutHealth = new ArrayList<>();
    List<String> withoutExplosive = new ArrayList<>();
    for (Solvent solvent : solvents) {
      ExposureLimit.of(solvent).ifPresentOrElse(limits::add, () -> withoutHealth.add(solvent.id()));
      if (solvent.fire().lowerExplosiveLimit().isEmpty()) {
        withoutExplosive.add(solvent.id());
      }
    }
    return new AirSchedule.Coverage(limits, withoutHealth, withoutExplosive);
  }

  private double curveEnd(List<AirSchedule.ReEntry> reEntries) {
    double end =
        Math.max(exposure.lastQuickEndSecond() + CURVE_AHEAD_SECOND, exposure.fallsFromSecond());
    for (AirSchedule.ReEntry reEntry : reEntries) {
      end = Math.max(end, reEntry.coatStartSecond() + reEntry.second().orElse(0));
    }
    return Math.min(end, MOST_CURVE_SECOND);
  }

  private List<AirSchedule.Point> curve(ConcentrationSamples samples) {
    List<AirSchedule.Point> points = new ArrayList<>();
    for (int i = 0; i < samples.size(); i++) {
      points.add(
          new AirSchedule.Point(
              samples.second(i),
              samples.value(LimitScale.PPM, i),
              when(healthKnown, samples.value(LimitScale.HEALTH, i)),
              when(fireKnown, samples.value(LimitScale.EXPLOSIVE, i))));
    }
    return points;
  }

  private AirSchedule.Peaks peaks(ConcentrationSamples samples) {
    return new AirSchedule.Peaks(
        PeakSearch.highest(samples, LimitScale.PPM),
        peak(healthKnown, samples, LimitScale.HEALTH),
        healthKnown ? Optional.of(worstQuarterHour(samples)) : Optional.empty(),
        peak(ceilingKnown(), samples, LimitScale.CEILING),
        peak(fireKnown, samples, LimitScale.EXPLOSIVE),
        peak(idlhKnown(), samples, LimitScale.IDLH));
  }

  private static Optional<AirSchedule.Peak> peak(
      boolean known, ConcentrationSamples samples, LimitScale scale) {
    return known ? Optional.of(PeakSearch.highest(samples, scale)) : Optional.empty();
  }

  /**
   * Whether every solvent that gets into the air in any amount has an exposure limit: one that
   * lingers in the film is told of, and asks for no mask by itself.
   */
  private boolean quickOnesKnown() {
    for (Solvent solvent : request.solvents()) {
      if (ExposureLimit.of(solvent).isEmpty() && !ReleaseByMethod.lingers(solvent)) {
        return false;
      }
    }
    return true;
  }

  /** The worst 15 minutes among those that begin or end at a moment looked at. */
  private static AirSchedule.Peak worstQuarterHour(ConcentrationSamples samples) {
    Exposure exposure = samples.exposure();
    AirSchedule.Peak worst = new AirSchedule.Peak(0, 0);
    for (int i = 0; i < samples.size(); i++) {
      for (double before : List.of(0.0, 0.5, 1.0)) {
        double from = Math.max(0, samples.second(i) - before * FlowNeeded.QUARTER_HOUR);
        double index = exposure.average(LimitScale.QUARTER_HOUR, from, FlowNeeded.QUARTER_HOUR);
        worst = index > worst.value() ? new AirSchedule.Peak(from, index) : worst;
      }
    }
    return worst;
  }

  private boolean ceilingKnown() {
    for (Solvent solvent : request.solvents()) {
      if (solvent.exposure().ceiling().isPresent()) {
        return true;
      }
    }
    return false;
  }

  private boolean idlhKnown() {
    for (Solvent solvent : request.solvents()) {
      if (solvent.exposure().idlh().isPresent()) {
        return true;
      }
    }
    return false;
  }

  private AirSchedule.EightHour eightHour() {
    LimitScale scale =
        healthKnown && coverage.healthComplete() ? LimitScale.HEALTH : LimitScale.PPM;
    double from = 0;
    double worst = -1;
    for (Exposure.Coat coat : exposure.coats()) {
      double start = coat.startSecond();
      double average = exposure.average(scale, start, FlowNeeded.EIGHT_HOURS);
      if (average > worst) {
        worst = average;
        from = start;
      }
    }
    double index = exposure.average(LimitScale.HEALTH, from, FlowNeeded.EIGHT_HOURS);
    double ppm = exposure.average(LimitScale.PPM, from, FlowNeeded.EIGHT_HOURS);
    return new AirSchedule.EightHour(from, ppm, when(healthKnown, index));
  }

  private List<AirSchedule.ReEntry> reEntries() {
    List<AirSchedule.ReEntry> list = new ArrayList<>();
    for (Exposure.Coat coat : exposure.coats()) {
      double start = coat.startSecond();
      OptionalDouble health = reEntry(healthKnown, LimitScale.HEALTH, FlowNeeded.FINE_INDEX, start);
      OptionalDouble fire =
          reEntry(fireKnown, LimitScale.EXPLOSIVE, FireRule.TENTH.percent(), start);
      double quick = coat.quickEndSecond() - start;
      AirSchedule.Verdict verdict = verdict(health, fire);
      OptionalDouble second =
          verdict == AirSchedule.Verdict.AFTER
              ? OptionalDouble.of(Math.max(health.orElse(0), fire.getAsDouble()))
              : OptionalDouble.empty();
      list.add(new AirSchedule.ReEntry(start, health, fire, verdict, second).afterWork(quick));
    }
    return list;
  }

  private AirSchedule.Verdict verdict(OptionalDouble health, OptionalDouble fire) {
    if (request.isocyanate() || request.formaldehyde()) {
      return AirSchedule.Verdict.NOT_COUNTED;
    }
    boolean unknown = healthKnown ? health.isEmpty() : !quickOnesKnown();
    if (unknown || fire.isEmpty()) {
      return AirSchedule.Verdict.UNKNOWN;
    }
    if (health.orElse(0) > 0 || fire.getAsDouble() > 0) {
      return AirSchedule.Verdict.AFTER;
    }
    return quickOnesKnown() && coverage.explosiveComplete()
        ? AirSchedule.Verdict.NEVER_OVER
        : AirSchedule.Verdict.UNKNOWN;
  }

  private OptionalDouble reEntry(boolean known, LimitScale scale, double threshold, double start) {
    return known
        ? ReEntrySearch.secondsAfter(exposure, scale, threshold, start)
        : OptionalDouble.empty();
  }

  /** The worst index, each limit over its own time, if what is sprayed were brushed. */
  private OptionalDouble brushedIndex() {
    if (!request.sprays() || !healthKnown) {
      return OptionalDouble.empty();
    }
    List<Release> brushed = new ArrayList<>();
    for (Release release : request.releases()) {
      brushed.add(release.method() == ApplicationMethod.SPRAY ? release.brushed() : release);
    }
    AirRequest other =
        new AirRequest(
            request.room(),
            brushed,
            request.ignitionSources(),
            request.isocyanate(),
            request.formaldehyde(),
            request.selfHeatingRags());
    return OptionalDouble.of(of(other).worstIndex());
  }

  private static OptionalDouble when(boolean known, double value) {
    return known ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
