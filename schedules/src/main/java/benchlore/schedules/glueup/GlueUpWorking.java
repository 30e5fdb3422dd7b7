package benchlore.schedules.glueup;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.glueup.GlueUpSchedule.Batch;
import benchlore.schedules.glueup.GlueUpSchedule.Pressure;
import benchlore.schedules.glueup.GlueUpSchedule.Row;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.DensityClass;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Writes down how a schedule was worked out, one line a figure. */
final class GlueUpWorking {
  private static final Provenance FORCE =
      Provenance.source("Woodworking magazine, September 2021", "clamps for a panel");
  private static final Provenance FAN =
      Provenance.source("Woodworking magazine editors' page, 2010", "45 degree rule");
  private static final Provenance MATURITY =
      Provenance.commonPractice("equivalent age, as concrete maturity is summed");

  private final GlueUpRequest request;
  private final GlueUpSchedule schedule;
  private final Adhesive adhesive;
  private final List<WorkingLine> lines = new ArrayList<>();

  private GlueUpWorking(GlueUpRequest request, GlueUpSchedule schedule) {
    this.request = request;
    this.schedule = schedule;
    this.adhesive = request.adhesive();
  }

  /** The lines, in the order the figures are needed. */
  static List<WorkingLine> of(GlueUpRequest request, GlueUpSchedule schedule) {
    GlueUpWorking working = new GlueUpWorking(request, schedule);
    working.glue();
    working.assembly();
    working.pressure();
    for (int i = 0; i < schedule.rows().size(); i++) {
      working.row(request.joints().get(i), schedule.rows().get(i));
    }
    for (int i = 0; i < schedule.batches().size(); i++) {
      working.batch(i + 1, schedule.batches().get(i));
    }
    working.moments();
    return working.lines;
  }

  private void glue() {
    GlueUpSchedule.Glue glue = schedule.glue();
    List<Figure> sizes = new ArrayList<>();
    for (Joint joint : request.joints()) {
      sizes.add(Figure.input(joint.name() + " length", joint.lengthMetre(), Unit.METRE));
      sizes.add(Figure.input(joint.name() + " width", joint.widthMetre(), Unit.METRE));
      sizes.add(Figure.input(joint.name() + " count", joint.count(), Unit.COUNT));
    }
    line(QuantityKey.GLUE_LINE_AREA, "glue line area", glue.areaSquareMetre(), Unit.SQUARE_METRE)
        .add("area = sum of length x width x count", sizes, Provenance.computed());
    Figure area = Figure.computed("area", glue.areaSquareMetre(), Unit.SQUARE_METRE);
    Figure spread = high("spread for one glue line", adhesive.line().spread());
    line(QuantityKey.ADHESIVE_MASS, "adhesive", glue.massKilogram(), Unit.KILOGRAM)
        .add(
            "kg = area x spread x squeeze-out x pot loss",
            List.of(
                area,
                spread,
                high("squeeze-out", GlueUpFigures.SQUEEZE_OUT),
                high("pot loss", GlueUpFigures.POT_LOSS)),
            GlueUpFigures.SQUEEZE_OUT.from());
    line(QuantityKey.ADHESIVE_VOLUME, "volume", glue.volumeCubicMetre(), Unit.CUBIC_METRE_LIQUID)
        .add(
            "litres = kg / density",
            List.of(
                Figure.computed("adhesive", glue.massKilogram(), Unit.KILOGRAM),
                low("density", adhesive.line().density())),
            Provenance.computed());
    line(
            QuantityKey.ADHESIVE_ON_EACH_FACE,
            "on each face",
            glue.perFaceKilogramPerSquareMetre(),
            Unit.KILOGRAM_PER_SQUARE_METRE)
        .add("each of both faces = spread / 2", List.of(spread), Provenance.commonPractice(""));
  }

  private void assembly() {
    GlueUpSchedule.Assembly assembly = schedule.assembly();
    boolean contact = adhesive.family() == Adhesive.Family.CONTACT;
    List<Figure> air = air();
    air.add(Figure.input("driest part", request.wood().driestPercent(), Unit.PERCENT));
    air.add(
        contact
            ? high("open time", adhesive.times().openTime())
            : low("open time", adhesive.times().openTime()));
    line(QuantityKey.OPEN_TIME_HERE, "open time here", assembly.openSecond(), Unit.SECOND)
        .add("age(t) = open time, by temperature, dry air and dry wood", air, MATURITY);
    adhesive.times().potLife().ifPresent(this::potLife);
    if (contact) {
      line(QuantityKey.DRY_BEFORE_JOINING, "dry before joining", assembly.waitSecond(), Unit.SECOND)
          .add(
              "short end of the open time",
              List.of(low("open time", adhesive.times().openTime())),
              MATURITY);
    }
    SourcedRange closed = BatchLimits.closedLabel(adhesive);
    line(QuantityKey.CLOSED_TIME_HERE, "closed time here", assembly.closedSecond(), Unit.SECOND)
        .add("age(t) = closed time", List.of(low("closed time", closed)), MATURITY);
    line(
            QuantityKey.TOTAL_ASSEMBLY_TIME,
            "total assembly time",
            assembly.totalSecond(),
            Unit.SECOND)
        .add(
            "total = open + closed",
            List.of(
                Figure.computed("open", assembly.openSecond(), Unit.SECOND),
                Figure.computed("closed", assembly.closedSecond(), Unit.SECOND)),
            Provenance.computed());
  }

  private void potLife(SourcedRange label) {
    double pot = BatchLimits.at(request, request.start()).potSecond();
    line(QuantityKey.POT_LIFE_HERE, "pot life here", pot, Unit.SECOND)
        .add(
            "age(t) = pot life",
            adhesive
                .air()
                .speed()
                .potRateQ10()
                .map(own -> List.of(low("pot life", label), high("Q10 in the pot", own)))
                .orElse(List.of(low("pot life", label))),
            MATURITY);
  }

  private void pressure() {
    Pressure pressure = schedule.pressure();
    SourcedRange range = pressure.density().pressureOf(adhesive);
    double density = request.wood().densityKilogramPerCubicMetre();
    line(QuantityKey.PRESSURE_TO_AIM_AT, "pressure to aim at", pressure.targetPascal(), Unit.PASCAL)
        .add(
            "middle of the adhesive's range for this class of wood",
            List.of(
                Figure.input("wood density", density, Unit.KILOGRAM_PER_CUBIC_METRE),
                low("least", range),
                high("most", range)),
            DensityClass.FROM);
  }

  private void row(Joint joint, Row row) {
    if (row.count() == 0) {
      return;
    }
    Clamps clamps = request.clamps();
    line(
            QuantityKey.JOINT_CLAMPS_FOR_FORCE,
            row.joint() + ": clamps for force",
            row.neededForForce(),
            Unit.COUNT)
        .add(
            "n = length x width x least pressure / clamp force, rounded up",
            List.of(
                Figure.input("length", joint.lengthMetre(), Unit.METRE),
                Figure.input("width", joint.widthMetre(), Unit.METRE),
                low("least pressure", schedule.pressure().density().pressureOf(adhesive)),
                Figure.input("clamp force", clamps.forceNewton(), Unit.NEWTON)),
            FORCE);
    spacing(joint, row);
    governing(joint, row);
  }

  private void spacing(Joint joint, Row row) {
    Clamps clamps = request.clamps();
    line(
            QuantityKey.JOINT_FARTHEST_APART,
            row.joint() + ": farthest apart",
            row.spacingLimitMetre(),
            Unit.METRE)
        .add(
            "s = 2 x (wood + caul) + jaw, at most 12 in",
            List.of(
                Figure.input("wood behind the line", joint.backingMetre(), Unit.METRE),
                Figure.input("caul depth", clamps.caulDepthMetre(), Unit.METRE),
                Figure.input("jaw width", clamps.headMetre(), Unit.METRE),
                high("usual spacing", GlueUpFigures.SPACING)),
            FAN);
    Figure spacing = Figure.computed("s", row.spacingLimitMetre(), Unit.METRE);
    line(
            QuantityKey.JOINT_CLAMPS_FOR_SPACING,
            row.joint() + ": clamps for spacing",
            row.neededForSpacing(),
            Unit.COUNT)
        .add(
            "n = 1 + (length - 2 x end) / s, rounded up; end = least of 1.5 in and s / 2",
            List.of(
                Figure.input("length", joint.lengthMetre(), Unit.METRE),
                spacing,
                low("end", GlueUpFigures.END)),
            GlueUpFigures.END.from());
  }

  private void governing(Joint joint, Row row) {
    line(QuantityKey.JOINT_CLAMPS, row.joint() + ": clamps", row.count(), Unit.COUNT)
        .add(
            "the larger governs, as far as the shelf goes and as they fit side by side",
            List.of(
                Figure.computed("for force", row.neededForForce(), Unit.COUNT),
                Figure.computed("for spacing", row.neededForSpacing(), Unit.COUNT),
                Figure.input("on the shelf", request.clamps().count(), Unit.COUNT),
                Figure.of(
                    "fit side by side",
                    ClampRoom.most(joint, request.clamps()),
                    Unit.COUNT,
                    ClampRoom.WIDTH.from())),
            Provenance.computed());
    line(
            QuantityKey.JOINT_TIGHTEN_EACH_TO,
            row.joint() + ": tighten each to",
            row.forceEachNewton(),
            Unit.NEWTON)
        .add(
            "pressure aimed at x length x width / clamps, at most the clamp's force",
            List.of(
                Figure.computed("pressure", schedule.pressure().targetPascal(), Unit.PASCAL),
                Figure.computed("clamps", row.count(), Unit.COUNT)),
            FORCE);
  }

  private void batch(int number, Batch batch) {
    Pace pace = request.pace();
    String name = "batch " + number;
    double hands = GlueUpFigures.hands(pace.people());
    int joints = 0;
    for (GlueUpSchedule.Share share : batch.shares()) {
      joints = joints + share.count();
    }
    double area = batch.massKilogram() / GlueNeed.massKilogram(1, adhesive);
    line(QuantityKey.BATCH_SPREADING, name + ": spreading", batch.spreadSecond(), Unit.SECOND)
        .add(
            "(joints x each + area x spreading) / hands",
            List.of(
                Figure.computed("joints", joints, Unit.COUNT),
                Figure.input("each joint", pace.perJointSecond(), Unit.SECOND),
                Figure.computed("area", area, Unit.SQUARE_METRE),
                Figure.input(
                    "spreading", pace.perSquareMetreSecond(), Unit.SECOND_PER_SQUARE_METRE),
                Figure.computed("hands", hands, Unit.RATIO)),
            GlueUpFigures.EXTRA_HANDS.from());
    double clamps = batch.closeSecond() * hands / pace.perClampSecond();
    line(QuantityKey.BATCH_CLAMPING, name + ": clamping", batch.closeSecond(), Unit.SECOND)
        .add(
            "clamps set x each / hands",
            List.of(
                Figure.computed("clamps set", Numeric.round(clamps), Unit.COUNT),
                Figure.input("each clamp", pace.perClampSecond(), Unit.SECOND),
                Figure.computed("hands", hands, Unit.RATIO)),
            GlueUpFigures.EXTRA_HANDS.from());
    inClamps(name, batch);
  }

  private void inClamps(String name, Batch batch) {
    double clamped = batch.tight().secondsUntil(batch.clampsOff());
    List<Figure> air = air();
    air.add(high("clamp time", adhesive.times().clampTime()));
    air.add(Figure.input("wettest part", request.wood().wettestPercent(), Unit.PERCENT));
    line(QuantityKey.BATCH_IN_CLAMPS, name + ": in clamps", clamped, Unit.SECOND)
        .add("age(t) = clamp time, by " + ruleFormula() + ", damp air and wood", air, MATURITY);
  }

  private void moments() {
    line(QuantityKey.HANDLE_AFTER, "handle after", schedule.handle().afterSecond(), Unit.SECOND)
        .add(
            "age(t) = handling time, not before the clamps are off",
            List.of(high("handling time", adhesive.times().handleAfter())),
            MATURITY);
    line(QuantityKey.MACHINE_AFTER, "machine after", schedule.machine().afterSecond(), Unit.SECOND)
        .add(
            adhesive.waterBased()
                ? "age(t) = wait for glue water to spread: 7 d at 20, 4 d at 50, 1 d at 70 deg C"
                : "age(t) = wait, by the setting rate",
            List.of(high("wait", Milestones.machineLabel(adhesive))),
            adhesive.waterBased() ? SettingRates.DIFFUSION : MATURITY);
    line(
            QuantityKey.FULL_LOAD_AFTER,
            "full load after",
            schedule.fullLoad().afterSecond(),
            Unit.SECOND)
        .add(
            "age(t) = full strength",
            List.of(high("full strength", adhesive.times().fullStrength())),
            MATURITY);
  }

  private List<Figure> air() {
    List<Figure> air = new ArrayList<>();
    double celsius = request.climate().at(request.start()).celsius();
    double percent = request.climate().at(request.start()).relativeHumidityPercent();
    air.add(Figure.input("air at the start", celsius, Unit.CELSIUS));
    air.add(Figure.input("humidity at the start", percent, Unit.PERCENT));
    air.add(low("reference air", adhesive.air().referenceTemperature()));
    Adhesive.Speed speed = adhesive.air().speed();
    SourcedRange rule =
        speed
            .rateActivationEnergy()
            .or(speed::rateDatum)
            .orElseGet(() -> SettingRates.q10(adhesive));
    air.add(low(ruleName() + ", low end", rule));
    air.add(high(ruleName() + ", high end", rule));
    return air;
  }

  private String ruleName() {
    Adhesive.Speed speed = adhesive.air().speed();
    if (speed.rateActivationEnergy().isPresent()) {
      return "activation energy";
    }
    return speed.rateDatum().isPresent() ? "stops at" : "Q10";
  }

  private String ruleFormula() {
    Adhesive.Speed speed = adhesive.air().speed();
    if (speed.rateActivationEnergy().isPresent()) {
      return "exp(E / R (1 / Tref - 1 / T))";
    }
    return speed.rateDatum().isPresent() ? "(T - T0) / (Tref - T0)" : "Q10 ^ ((T - Tref) / 10)";
  }

  private Draughted line(QuantityKey key, String name, double value, Unit unit) {
    Figure result = Figure.computed(name, value, unit);
    return (formula, inputs, rule) ->
        lines.add(new WorkingLine(key, result, formula, inputs, rule));
  }

  private static Figure low(String name, SourcedRange datum) {
    return Figure.of(name, datum.low(), datum.unit(), datum.from());
  }

  private static Figure high(String name, SourcedRange datum) {
    return Figure.of(name, datum.high(), datum.unit(), datum.from());
  }

  /** A line whose figure is known and whose working is still to be given. */
  @FunctionalInterface
  private interface Draughted {
    void add(String formula, List<Figure> inputs, Provenance rule);
  }
}
