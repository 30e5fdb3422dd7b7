package benchlore.schedules.air;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a schedule was worked out, a line a figure. */
final class AirWorking {
  static final Provenance DILUTION =
      Provenance.source(
          "University industrial-ventilation course, dilution chapter, formula sheet",
          "V dC = G dt - Q' C dt; Q' = G / C; Q = K Q'");
  private static final Provenance MIXTURE =
      Provenance.source("29 CFR 1910.1000(d)(2)", "sum of concentration / limit at most 1");
  static final Provenance AVERAGE =
      Provenance.source("29 CFR 1910.1000(d)(1)", "sum of concentration x time / 8 hours");
  private static final Provenance LE_CHATELIER =
      Provenance.source(
          "Process-safety formula sheet", "1 / limit of the mixture = sum of share / limit");
  private static final Provenance MOLAR_VOLUME =
      Provenance.source(
          "National fact sheet on converting exposure limits", "molar volume by temperature");

  private final List<WorkingLine> lines = new ArrayList<>();
  private final AirRequest request;
  private final AirSchedule schedule;

  private AirWorking(AirRequest request, AirSchedule schedule) {
    this.request = request;
    this.schedule = schedule;
  }

  static List<WorkingLine> of(AirRequest request, AirSchedule schedule) {
    AirWorking working = new AirWorking(request, schedule);
    working.addRoom();
    working.addRelease();
    working.addHealth();
    working.addFace();
    working.addDanger();
    working.addFire();
    working.addFlow();
    working.addReEntry();
    return working.lines;
  }

  private void addRoom() {
    RoomAir room = request.room();
    add(
        QuantityKey.MOLAR_VOLUME,
        Figure.computed(
            "molar volume x 1000", Vapour.molarVolume(room.celsius()) * 1000, Unit.RATIO),
        "molar volume (litres a mole) = 8.3145 x (temperature + 273.15) / 101.325",
        List.of(Figure.input("air temperature", room.celsius(), Unit.CELSIUS)),
        MOLAR_VOLUME);
    add(
        QuantityKey.EFFECTIVE_AIR_CHANGES,
        Figure.computed(
            "effective air changes", room.effectiveChangesPerSecond() * 3600, Unit.PER_HOUR),
        "effective air changes = outdoor air / mixing factor / volume",
        List.of(
            Figure.input("outdoor air", room.outdoorFlow(), Unit.CUBIC_METRE_PER_SECOND),
            Figure.input("mixing factor", room.mixingFactor(), Unit.RATIO),
            Figure.input("room volume", room.volume(), Unit.CUBIC_METRE)),
        DILUTION);
  }

  private void addRelease() {
    List<Figure> inputs = new ArrayList<>();
    for (Release release : request.releases()) {
      inputs.add(Figure.input("solvent of a coat", release.volatileKilogram(), Unit.KILOGRAM));
      Provenance from = release.curve().isPresent() ? Provenance.input() : ReleaseByMethod.FROM;
      for (Release.Share share : release.shares()) {
        addCurve(release.curveOf(share), from, inputs);
      }
    }
    add(
        QuantityKey.HIGHEST_VAPOUR,
        Figure.computed("highest vapour", schedule.peaks().ppm().value(), Unit.PPM),
        "volume x change of concentration = release - outdoor air / mixing factor x concentration,"
            + " solved exactly; ppm = concentration / molar mass x molar volume",
        inputs,
        DILUTION);
  }

  private static void addCurve(ReleaseCurve curve, Provenance from, List<Figure> inputs) {
    inputs.add(Figure.of("quick share", curve.quickShare(), Unit.RATIO, from));
    inputs.add(Figure.of("quick time", curve.quickSecond(), Unit.SECOND, from));
    inputs.add(Figure.of("decay time", curve.decaySecond(), Unit.SECOND, from));
  }

  private void addHealth() {
    List<Figure> limits = new ArrayList<>();
    for (ExposureLimit limit : schedule.coverage().limits()) {
      String name = "limit of " + limit.solventId() + ", " + limit.body();
      limits.add(Figure.of(name, limit.ppm(), Unit.PPM, limit.from()));
    }
    if (schedule.peaks().index().isPresent()) {
      double peak = schedule.peaks().index().get().value();
      add(
          QuantityKey.HIGHEST_MIXTURE_INDEX,
          Figure.computed("highest mixture index", peak, Unit.RATIO),
          "index = sum of concentration / limit",
          limits,
          MIXTURE);
    }
    addSpells();
    addOptional(
        QuantityKey.EIGHT_HOUR_MIXTURE_INDEX,
        figure("8-hour mixture index", schedule.eightHour().index(), Unit.RATIO),
        "average = (solvent released - solvent still in the air) / flow / 8 hours, each over its"
            + " limit",
        AVERAGE);
  }

  /** The worst quarter of an hour and the worst moment against a ceiling. */
  private void addSpells() {
    List<Figure> spells = new ArrayList<>();
    List<Figure> ceilings = new ArrayList<>();
    for (Solvent solvent : request.solvents()) {
      Optional<SourcedRange> own = solvent.exposure().shortTerm();
      own.ifPresent(d -> spells.add(limit("15-minute limit of ", solvent, d)));
      if (own.isEmpty() && ExposureLimit.of(solvent).isPresent()) {
        double factor = LimitScale.EXCURSION;
        spells.add(
            Figure.of(
                "8-hour limits allowed over 15 minutes",
                factor,
                Unit.RATIO,
                LimitScale.EXCURSION_FROM));
      }
      solvent.exposure().ceiling().ifPresent(d -> ceilings.add(limit("ceiling of ", solvent, d)));
    }
    schedule
        .peaks()
        .quarterHour()
        .ifPresent(
            peak ->
                add(
                    QuantityKey.QUARTER_HOUR_INDEX,
                    Figure.computed("index of the worst 15 minutes", peak.value(), Unit.RATIO),
                    "index = sum of average of 15 minutes / limit for 15 minutes",
                    spells,
                    MIXTURE));
    schedule
        .peaks()
        .ceiling()
        .ifPresent(
            peak ->
                add(
                    QuantityKey.CEILING_INDEX,
                    Figure.computed("index against the ceilings", peak.value(), Unit.RATIO),
                    "index = sum of concentration / ceiling",
                    ceilings,
                    MIXTURE));
  }

  /** What chooses the mask. */
  private void addFace() {
    if (schedule.coverage().limits().isEmpty()) {
      return;
    }
    double worst = schedule.worstIndex();
    add(
        QuantityKey.FACE_INDEX,
        Figure.computed("index at the face", RespiratorChoice.NEAR_WORK * worst, Unit.RATIO),
        "index = the greatest of those over 8 hours, over 15 minutes and against ceilings x how"
            + " much richer the air is over wet work; above 1 a mask, above 10 a full facepiece",
        List.of(
            Figure.computed("greatest index", worst, Unit.RATIO),
            Figure.of(
                "richer over wet work",
                RespiratorChoice.NEAR_WORK,
                Unit.RATIO,
                RespiratorChoice.NEAR_WORK_FROM)),
        Respirator.FROM);
  }

  private static Figure limit(String name, Solvent solvent, SourcedRange limit) {
    return Figure.of(name + solvent.id(), limit.low(), Unit.PPM, limit.from());
  }

  private void addDanger() {
    if (schedule.peaks().dangerShare().isPresent()) {
      List<Figure> levels = new ArrayList<>();
      for (Solvent solvent : request.solvents()) {
        solvent
            .exposure()
            .idlh()
            .ifPresent(
                d ->
                    levels.add(
                        Figure.of("danger level of " + solvent.id(), d.low(), Unit.PPM, d.from())));
      }
      double share = schedule.peaks().dangerShare().get().value();
      add(
          QuantityKey.HIGHEST_SHARE_OF_THE_DANGER_LEVEL,
          Figure.computed("highest share of the danger level", share, Unit.RATIO),
          "share = sum of concentration / level immediately dangerous to life or health",
          levels,
          Provenance.commonPractice("levels added as for like effects, to the safe side"));
    }
    addOptional(
        QuantityKey.HIGHEST_MIXTURE_INDEX_IF_BRUSHED,
        figure("index if brushed", schedule.brushedIndex(), Unit.RATIO),
        "the sprayed coats worked out again with the brush's release",
        ReleaseByMethod.FROM);
  }

  private void addFire() {
    if (schedule.peaks().percentLowerExplosive().isEmpty()) {
      return;
    }
    List<Figure> limits = new ArrayList<>();
    for (Solvent solvent : request.solvents()) {
      solvent
          .fire()
          .lowerExplosiveLimit()
          .ifPresent(
              d ->
                  limits.add(
                      Figure.of(
                          "explosive limit of " + solvent.id(), d.low(), Unit.PERCENT, d.from())));
    }
    add(
        QuantityKey.HIGHEST_SHARE_OF_THE_LOWER_EXPLOSIVE_LIMIT,
        Figure.computed(
            "highest share of the lower explosive limit",
            schedule.peaks().percentLowerExplosive().get().value(),
            Unit.PERCENT),
        "percent of the limit = 100 x sum of concentration / lower explosive limit",
        limits,
        LE_CHATELIER);
  }

  private void addFlow() {
    FlowNeeded flow = schedule.flow();
    String health =
        "flow = mixing factor x sum of greatest release / limit for 15 minutes, or ceiling";
    Unit unit = Unit.CUBIC_METRE_PER_SECOND;
    addOptional(
        QuantityKey.FLOW_FOR_HEALTH,
        figure("flow for health over 15 minutes", flow.healthShort(), unit),
        health,
        DILUTION);
    String eight = "flow = mixing factor x sum of release in 8 hours / 8 hours / limit";
    addOptional(
        QuantityKey.FLOW_FOR_HEALTH_OVER_8_HOURS,
        figure("flow for health over 8 hours", flow.healthEightHour(), unit),
        eight,
        DILUTION);
    String fire = "flow = mixing factor x greatest release / (share x lower explosive limit)";
    addOptional(
        QuantityKey.FLOW_FOR_FIRE_TENTH,
        figure("flow for fire, 10 %", flow.fireTenth(), unit),
        fire,
        FireRule.TENTH.from());
    addOptional(
        QuantityKey.FLOW_FOR_FIRE_QUARTER,
        figure("flow for fire, 25 %", flow.fireQuarter(), unit),
        fire,
        FireRule.QUARTER.from());
    add(
        QuantityKey.AIR_CHANGES_NEEDED,
        Figure.computed("air changes needed", flow.changesPerHour(), Unit.PER_HOUR),
        "air changes = the greatest of the flows for 8 hours, for 15 minutes and for fire at 10 % /"
            + " volume",
        List.of(Figure.input("room volume", request.room().volume(), Unit.CUBIC_METRE)),
        DILUTION);
  }

  private void addReEntry() {
    for (AirSchedule.ReEntry reEntry : schedule.reEntries()) {
      addOptional(
          QuantityKey.RE_ENTRY,
          figure("re-entry after the coat", reEntry.second(), Unit.SECOND),
          "from here on index at most 1 and vapour at most 10 % of the lower explosive limit",
          DILUTION);
    }
  }

  private static Optional<Figure> figure(String name, OptionalDouble value, Unit unit) {
    return value.isPresent()
        ? Optional.of(Figure.computed(name, value.getAsDouble(), unit))
        : Optional.empty();
  }

  private void addOptional(
      QuantityKey key, Optional<Figure> result, String formula, Provenance rule) {
    result.ifPresent(figure -> add(key, figure, formula, List.of(), rule));
  }

  private void add(
      QuantityKey key, Figure result, String formula, List<Figure> inputs, Provenance rule) {
    lines.add(new WorkingLine(key, result, formula, inputs, rule));
  }
}
