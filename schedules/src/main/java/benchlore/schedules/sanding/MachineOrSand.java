package benchlore.schedules.sanding;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.SandingRows;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Machine longer or sand longer: the stepover of a ball-nose finishing pass that costs the least
 * time in all.
 *
 * <pre>
 * machine = area / (feed x stepover)
 * sanding = face passes from ridges of h = r - sqrt(r^2 - (stepover/2)^2)
 * cost    = weight x machine + sanding
 * </pre>
 *
 * <p>Halving the stepover doubles the machine time and quarters the ridges. The curve is worked out
 * at {@value #POINTS} stepovers evenly spread by ratio, then again ever closer about the best. The
 * sum has kinks where the start grade changes, so the best is the best of the points tried, found
 * to about a thousandth of the range. Known error: machine time leaves out turning, slowing in
 * corners and lifting, often a tenth to a half more; sanding minutes may be out by a factor of two.
 */
public final class MachineOrSand {
  static final int POINTS = 33;
  private static final int ROUNDS = 3;
  private static final int CLOSER_POINTS = 9;
  private static final Provenance RULE =
      Provenance.commonPractice("path length is area over stepover; turning left out");

  private MachineOrSand() {}

  /**
   * The curve and its best point.
   *
   * @param request the question; refused as {@link Sanding#plan} would, and outside the ranges of
   *     {@link MillingPass}
   * @return the curve with its working
   */
  public static Answer<MachineOrSandCurve> plan(MachineOrSandRequest request) {
    Objects.requireNonNull(request, "request");
    MillingPass milling = request.milling();
    SandingRequest sanding =
        request
            .sanding()
            .withStart(
                new StartSurface.BallNose(
                    milling.ballDiameterMetre(), milling.coarsestStepoverMetre()));
    Checks checks = new Checks();
    check(checks, milling);
    SandingChecks.butStart(checks, sanding);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    Answer<SandingSchedule> worst = Sanding.plan(sanding);
    if (worst instanceof Answer.Refused<SandingSchedule> refused) {
      return Answer.refuse(refused.reasons());
    }
    MachineOrSandCurve curve = curve(milling, sanding);
    return Answer.of(curve, working(request, curve), cautions(milling, curve));
  }

  private static void check(Checks checks, MillingPass milling) {
    double ball = milling.ballDiameterMetre();
    double widest = ball >= 0.0005 && ball <= 0.1 ? ball : 0.1;
    StartDepths.checkDiameter(checks, "ballDiameterMetre", ball);
    StartDepths.checkPitch(checks, "coarsestStepoverMetre", milling.coarsestStepoverMetre(), ball);
    checks.within(
        "feedMetrePerSecond", milling.feedMetrePerSecond(), 0.0005, 1, Unit.METRE_PER_SECOND);
    checks.within(
        "finestStepoverMetre", milling.finestStepoverMetre(), 0.00001, widest, Unit.METRE);
    checks.within("machineWeight", milling.machineWeight(), 0, 10, Unit.RATIO);
    checks.require(
        !(milling.finestStepoverMetre() >= milling.coarsestStepoverMetre()),
        "coarsestStepoverMetre",
        "The coarsest stepover is not above the finest.",
        "Give a range of stepovers to compare.");
  }

  private static MachineOrSandCurve curve(MillingPass milling, SandingRequest sanding) {
    double low = milling.finestStepoverMetre();
    double high = milling.coarsestStepoverMetre();
    List<MachineOrSandCurve.Point> points = spread(milling, sanding, low, high, POINTS);
    for (int round = 0; round < ROUNDS; round++) {
      int best = best(points);
      double from = points.get(Math.max(0, best - 1)).stepoverMetre();
      double to = points.get(Math.min(points.size() - 1, best + 1)).stepoverMetre();
      points.addAll(spread(milling, sanding, from, to, CLOSER_POINTS));
      points.sort((a, b) -> Double.compare(a.stepoverMetre(), b.stepoverMetre()));
      points = distinct(points);
    }
    return new MachineOrSandCurve(points.get(best(points)), points);
  }

  private static List<MachineOrSandCurve.Point> spread(
      MillingPass milling, SandingRequest sanding, double low, double high, int count) {
    List<MachineOrSandCurve.Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double share = i / (count - 1.0);
      double stepover = i == count - 1 ? high : Numeric.pow(high / low, share) * low;
      points.add(point(milling, sanding, stepover));
    }
    return points;
  }

  private static MachineOrSandCurve.Point point(
      MillingPass milling, SandingRequest sanding, double stepover) {
    double area = sanding.area().totalSquareMetre();
    double machine = area / (milling.feedMetrePerSecond() * stepover);
    StartSurface start = new StartSurface.BallNose(milling.ballDiameterMetre(), stepover);
    Optional<List<SandingPass>> passes = Sanding.facePasses(sanding, sanding.shop(), start.depth());
    if (passes.isEmpty()) {
      throw new IllegalStateException("a way from the coarsest stepover is one from any other");
    }
    double hands = Sanding.seconds(passes.get());
    double scallop = ArcMarks.heightMetre(milling.ballDiameterMetre() / 2, stepover) * 1e6;
    double weighted = machine * milling.machineWeight() + hands;
    return new MachineOrSandCurve.Point(stepover, scallop, machine, hands, weighted);
  }

  private static int best(List<MachineOrSandCurve.Point> points) {
    int best = 0;
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).weightedSeconds() < points.get(best).weightedSeconds()) {
        best = i;
      }
    }
    return best;
  }

  private static List<MachineOrSandCurve.Point> distinct(List<MachineOrSandCurve.Point> points) {
    List<MachineOrSandCurve.Point> kept = new ArrayList<>();
    double last = 0;
    for (MachineOrSandCurve.Point point : points) {
      if (point.stepoverMetre() > last * (1 + 1e-9)) {
        kept.add(point);
        last = point.stepoverMetre();
      }
    }
    return kept;
  }

  private static List<WorkingLine> working(MachineOrSandRequest request, MachineOrSandCurve curve) {
    MillingPass milling = request.milling();
    MachineOrSandCurve.Point best = curve.best();
    double area = request.sanding().area().totalSquareMetre();
    Figure stepover = Figure.computed("best stepover", best.stepoverMetre(), Unit.METRE);
    WorkingLine machine =
        new WorkingLine(
            QuantityKey.MACHINE_TIME,
            Figure.computed("machine time", best.machineSeconds(), Unit.SECOND),
            "machine = area / (feed x stepover)",
            List.of(
                Figure.input("area", area, Unit.SQUARE_METRE),
                Figure.input("feed", milling.feedMetrePerSecond(), Unit.METRE_PER_SECOND),
                stepover),
            RULE);
    WorkingLine ridge =
        new WorkingLine(
            QuantityKey.RIDGE_HEIGHT,
            Figure.computed("ridge height", best.scallopMicron(), Unit.MICRON),
            "h = r - sqrt(r^2 - (s/2)^2)",
            List.of(Figure.input("ball", milling.ballDiameterMetre(), Unit.METRE), stepover),
            ArcMarks.FORMULA);
    WorkingLine sum =
        new WorkingLine(
            QuantityKey.WEIGHTED_TIME,
            Figure.computed("weighted time", best.weightedSeconds(), Unit.SECOND),
            "least of weight x machine + sanding over " + curve.points().size() + " stepovers",
            List.of(
                Figure.input("machine weight", milling.machineWeight(), Unit.RATIO),
                Figure.computed("sanding", best.sandingSeconds(), Unit.SECOND)),
            Provenance.fromMemory("sanding minutes rest on removal rates that are not published"));
    return List.of(ridge, machine, sum);
  }

  private static List<Caution> cautions(MillingPass milling, MachineOrSandCurve curve) {
    double best = curve.best().stepoverMetre();
    boolean atEdge =
        best <= milling.finestStepoverMetre() * 1.001
            || best >= milling.coarsestStepoverMetre() * 0.999;
    if (!atEdge) {
      return List.of();
    }
    return List.of(SandingRows.BEST_AT_THE_EDGE.caution());
  }
}
