package benchlore.schedules.cutting;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.CuttingRows;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a bit reaches.
 *
 * <pre>
 * stick-out = the larger of (nose to work + depth) and (edges + bearing + 3 mm of neck),
 *             both with a tip bearing's height below the edges
 * grip = whole length - stick-out, at least 3/4 of the shank (or the whole bore) and 4/5 of the bore
 * contact of a shank bearing = top of template - bottom of bearing, at the first pass
 * </pre>
 *
 * <p>Plain geometry; the grips are published, the neck and the least contact are from memory.
 */
final class ReachPlan {
  private static final double NECK = 0.003;

  /** About 1/8 in off the bottom; source {@link CuttingSources#BOTTOM}. */
  private static final double DRAW_BACK = 0.003175;

  private static final double SHANK_SHARE = 0.75;
  private static final double BORE_SHARE = 0.8;
  private static final double LEAST_CONTACT = 0.003;
  private static final double SAME_DIAMETER = 0.00005;

  private final ReachRequest request;
  private final Bit bit;
  private final List<Message> problems = new ArrayList<>();
  private final List<Caution> cautions = new ArrayList<>();

  ReachPlan(ReachRequest request) {
    this.request = request;
    this.bit = request.bit();
  }

  Answer<Reach> plan() {
    Checks checks = check();
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    double stickOut = stickOutMetre();
    double needed = neededGripMetre();
    double grip = lengthMetre() - stickOut;
    checkGrip(grip, needed);
    checkDepth();
    bit.bearing().ifPresent(b -> checkBearing(b, request.templateMetre().getAsDouble()));
    cautions.add(
        CuttingRows.DO_NOT_BOTTOM_THE_SHANK.caution(
            List.of(), List.of(Quantity.of(DRAW_BACK, Unit.METRE))));
    Reach reach = new Reach(problems.isEmpty(), stickOut, grip, needed, problems);
    return Answer.of(reach, working(reach), cautions);
  }

  private Checks check() {
    Checks checks = new Checks();
    bit.check(checks);
    checks
        .within("depthMetre", request.depthMetre(), 0.0001, 0.15, Unit.METRE)
        .within("colletMetre", request.colletMetre(), 0.005, 0.06, Unit.METRE)
        .within("noseToWorkMetre", request.noseToWorkMetre(), 0, 0.1, Unit.METRE)
        .within("firstPassMetre", request.firstPassMetre(), 0.0001, 0.15, Unit.METRE);
    if (request.templateMetre().isPresent()) {
      checks.within(
          "templateMetre", request.templateMetre().getAsDouble(), 0.002, 0.05, Unit.METRE);
    }
    return checks.require(
        bit.bearing().isEmpty() || request.templateMetre().isPresent(),
        "templateMetre",
        "A bit with a bearing needs something to run on.",
        "Give the template's thickness, or choose a bit without a bearing.");
  }

  private double bearingHeightMetre() {
    return bit.bearing().isPresent() ? bit.bearing().get().heightMetre() : 0;
  }

  private double belowEdgesMetre() {
    return onTip() ? bearingHeightMetre() : 0;
  }

  private boolean onTip() {
    return bit.bearing().isPresent() && bit.bearing().get().seat() == Bit.Bearing.Seat.TIP;
  }

  private double lengthMetre() {
    return bit.shankLengthMetre() + bit.cuttingLengthMetre() + bearingHeightMetre();
  }

  private double stickOutMetre() {
    double down = request.noseToWorkMetre() + request.depthMetre() + belowEdgesMetre();
    double edges = bit.cuttingLengthMetre() + bearingHeightMetre() + NECK;
    return Math.max(down, edges);
  }

  private double neededGripMetre() {
    double bore = request.colletMetre();
    return Math.max(BORE_SHARE * bore, Math.min(SHANK_SHARE * bit.shankLengthMetre(), bore));
  }

  private void checkGrip(double grip, double needed) {
    if (grip < needed - 1e-9) {
      problems.add(
          Message.of(
              "Only {0} of shank would be held; it takes {1}. Use a longer bit, a shallower cut or"
                  + " a thinner template; never pull the bit out to reach.",
              Quantity.of(grip, Unit.METRE), Quantity.of(needed, Unit.METRE)));
      cautions.add(CuttingRows.BIT_OUT_TOO_FAR.caution());
    }
  }

  private void checkDepth() {
    if (request.depthMetre() <= bit.cuttingLengthMetre() + 1e-9) {
      return;
    }
    if (onTip()) {
      problems.add(
          Message.of(
              "The edges are {0} long and leave a ledge on thicker work. Use longer edges, or cut"
                  + " half from each side.",
              Quantity.of(bit.cuttingLengthMetre(), Unit.METRE)));
    } else if (bit.shankDiameterMetre() > bit.diameterMetre() + SAME_DIAMETER) {
      problems.add(
          Message.of(
              "The shank is wider than the cut and meets its edge at {0}. Use longer edges or a"
                  + " shank no wider than the bit.",
              Quantity.of(bit.cuttingLengthMetre(), Unit.METRE)));
    } else {
      cautions.add(CuttingRows.SHANK_IN_THE_CUT.caution());
    }
  }

  private void checkBearing(Bit.Bearing bearing, double template) {
    checkBearingDiameter(bearing);
    double needed = neededContactMetre(bearing);
    double contact = contactMetre(bearing, template);
    if (contact >= needed - 1e-9) {
      return;
    }
    if (onTip()) {
      problems.add(
          Message.of(
              "The template is too thin for the bearing. Use one at least {0} thick.",
              Quantity.of(needed, Unit.METRE)));
      return;
    }
    double thick = bit.cuttingLengthMetre() + needed - request.firstPassMetre();
    problems.add(
        Message.of(
            "On the first pass the bearing hangs above the template and guides nothing. Use a"
                + " template at least {0} thick, shorter edges, or saw closer and start deeper.",
            Quantity.of(thick, Unit.METRE)));
  }

  private static double neededContactMetre(Bit.Bearing bearing) {
    double half = bearing.heightMetre() / 2;
    return Math.min(bearing.heightMetre(), Math.max(half, LEAST_CONTACT));
  }

  private double contactMetre(Bit.Bearing bearing, double template) {
    if (onTip()) {
      return Math.min(bearing.heightMetre(), template);
    }
    double top = request.firstPassMetre() + template;
    return Math.min(bearing.heightMetre(), top - bit.cuttingLengthMetre());
  }

  private void checkBearingDiameter(Bit.Bearing bearing) {
    double over = bearing.diameterMetre() - bit.diameterMetre();
    if (over < -SAME_DIAMETER) {
      problems.add(
          Message.of(
              "The bearing is {0} smaller than the edges, so the bit cuts into the template. Fit a"
                  + " bearing of the bit's own diameter.",
              Quantity.of(-over, Unit.METRE)));
    } else if (over > SAME_DIAMETER) {
      cautions.add(CuttingRows.BEARING_LARGER_THAN_BIT.caution(Quantity.of(over / 2, Unit.METRE)));
    }
  }

  private List<WorkingLine> working(Reach reach) {
    List<WorkingLine> lines = new ArrayList<>(holdLines(reach));
    if (bit.bearing().isPresent()) {
      lines.add(contactLine(bit.bearing().get(), request.templateMetre().getAsDouble()));
    }
    return lines;
  }

  private WorkingLine contactLine(Bit.Bearing bearing, double template) {
    return new WorkingLine(
        QuantityKey.BEARING_ON_THE_TEMPLATE_AT_FIRST,
        Figure.computed(
            "bearing on the template at first", contactMetre(bearing, template), Unit.METRE),
        onTip()
            ? "the lesser of bearing and template"
            : "first pass + template - edges, at most the bearing; below 0 it hangs above",
        List.of(
            Figure.input("first pass", request.firstPassMetre(), Unit.METRE),
            Figure.input("template", template, Unit.METRE),
            Figure.input("edges", bit.cuttingLengthMetre(), Unit.METRE),
            Figure.input("bearing", bearing.heightMetre(), Unit.METRE),
            Figure.of(
                "least contact", neededContactMetre(bearing), Unit.METRE, CuttingSources.BEARING)),
        CuttingSources.BEARING);
  }

  private List<WorkingLine> holdLines(Reach reach) {
    return List.of(
        new WorkingLine(
            QuantityKey.STICK_OUT,
            Figure.computed("stick-out", reach.stickOutMetre(), Unit.METRE),
            "the larger of nose to work + depth, and edges + bearing + neck",
            List.of(
                Figure.input("nose to work", request.noseToWorkMetre(), Unit.METRE),
                Figure.input("depth", request.depthMetre(), Unit.METRE),
                Figure.input("edges", bit.cuttingLengthMetre(), Unit.METRE),
                Figure.input("bearing", bearingHeightMetre(), Unit.METRE),
                Figure.of("neck", NECK, Unit.METRE, CuttingSources.NECK)),
            CuttingSources.STICK_OUT),
        new WorkingLine(
            QuantityKey.LEAST_GRIP,
            Figure.computed("least grip", reach.neededGripMetre(), Unit.METRE),
            "the larger of 4/5 of the bore and 3/4 of the shank, the latter at most the bore",
            List.of(
                Figure.input("collet bore", request.colletMetre(), Unit.METRE),
                Figure.input("shank", bit.shankLengthMetre(), Unit.METRE),
                Figure.of("share of bore", BORE_SHARE, Unit.RATIO, CuttingSources.BORE),
                Figure.of("share of shank", SHANK_SHARE, Unit.RATIO, CuttingSources.GRIP)),
            CuttingSources.GRIP),
        new WorkingLine(
            QuantityKey.DRAW_BACK_FROM_THE_BOTTOM,
            Figure.of("draw back from the bottom", DRAW_BACK, Unit.METRE, CuttingSources.BOTTOM),
            "push the shank home, then draw it back by this",
            List.of(),
            CuttingSources.BOTTOM));
  }
}
