package benchlore.schedules.cutting;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.CuttingRows;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Holding tabs.
 *
 * <pre>
 * height = thickness / 4, kept between 1.5 and 3 mm, never over half the thickness
 * width  = 6 mm for parts to 150 mm, 9 mm to 400 mm, 12 mm above
 * path   = 2 (length + width) + pi x bit diameter      (bit's centre, round corners)
 * count  = path / 200 mm, rounded up, at least 4
 * </pre>
 *
 * <p>From memory; nothing firmer is published. Two seen sources leave tabs half the thickness and
 * 4.8 mm (3/16 in) wide, and 0.5 mm by 3.2 mm in thin plastic sheet; so these rules sit between
 * what others do. Refused where tabs would take over a third of the path.
 */
final class TabsPlan {
  private static final double LEAST_HEIGHT = 0.0015;
  private static final double MOST_HEIGHT = 0.003;
  private static final double SPACING = 0.2;
  private static final int LEAST_COUNT = 4;
  private static final double MOST_SHARE = 1.0 / 3;

  // Longer side up to and including, metres; width of a tab.
  private static final double[][] WIDTHS = {{0.15, 0.006}, {0.4, 0.009}, {3, 0.012}};

  private final TabsRequest request;
  private final double path;

  TabsPlan(TabsRequest request) {
    this.request = request;
    double corners = Numeric.PI * request.bitDiameterMetre();
    this.path = 2 * (request.lengthMetre() + request.widthMetre()) + corners;
  }

  Answer<Tabs> plan() {
    Checks checks = check();
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    int count = Math.max(LEAST_COUNT, Numeric.ceil(path / SPACING));
    double width = width();
    double programmed = width + request.bitDiameterMetre();
    if (programmed * count > path * MOST_SHARE) {
      return Answer.refuse(
          checks
              .require(
                  false,
                  "lengthMetre",
                  "The part is too small to be held by tabs.",
                  "Hold it with tape and glue or a vacuum, leave a thin skin to sand off, or cut"
                      + " it as one of a larger piece.")
              .refusals());
    }
    Tabs tabs = new Tabs(count, width, programmed, height(), path, path / count, order());
    return Answer.of(tabs, working(tabs), cautions());
  }

  private Checks check() {
    return new Checks()
        .within("lengthMetre", request.lengthMetre(), 0.02, 3, Unit.METRE)
        .within("widthMetre", request.widthMetre(), 0.005, 3, Unit.METRE)
        .within("thicknessMetre", request.thicknessMetre(), 0.001, 0.06, Unit.METRE)
        .within(
            "bitDiameterMetre",
            request.bitDiameterMetre(),
            0.0005,
            BitSpeeds.MOST_DIAMETER_METRE,
            Unit.METRE);
  }

  private double width() {
    double side = Math.max(request.lengthMetre(), request.widthMetre());
    for (double[] row : WIDTHS) {
      if (side <= row[0]) {
        return row[1];
      }
    }
    return WIDTHS[WIDTHS.length - 1][1];
  }

  private double height() {
    double quarter = request.thicknessMetre() / 4;
    double kept = Math.max(LEAST_HEIGHT, Math.min(MOST_HEIGHT, quarter));
    return Math.min(kept, request.thicknessMetre() / 2);
  }

  private List<Message> order() {
    List<Message> order = new ArrayList<>();
    order.add(Message.of("Drill holes and cut pockets and profiles while the sheet is whole."));
    if (request.inside()) {
      order.add(
          Message.of("Cut inside openings next, each to its own full depth with its own tabs."));
    }
    order.add(
        Message.of("Cut the outside to all depths but the last; small parts before large ones."));
    order.add(
        Message.of(
            "Last: the final depth of the outside, over the tabs, on straight sides away from"
                + " corners and short grain. It frees the part."));
    return order;
  }

  private List<WorkingLine> working(Tabs tabs) {
    return List.of(
        new WorkingLine(
            QuantityKey.TAB_COUNT,
            Figure.computed("tabs", tabs.count(), Unit.COUNT),
            "count = path / spacing, rounded up, at least 4",
            List.of(
                Figure.computed("path", path, Unit.METRE),
                Figure.of("spacing", SPACING, Unit.METRE, CuttingSources.TABS)),
            CuttingSources.TABS),
        new WorkingLine(
            QuantityKey.TAB_HEIGHT,
            Figure.computed("tab height", tabs.heightMetre(), Unit.METRE),
            "height = thickness / 4, from 1.5 to 3 mm, at most half the thickness",
            List.of(Figure.input("thickness", request.thicknessMetre(), Unit.METRE)),
            CuttingSources.TABS),
        new WorkingLine(
            QuantityKey.TAB_WIDTH_TO_ENTER,
            Figure.computed("tab width to enter", tabs.programmedWidthMetre(), Unit.METRE),
            "width to enter = bridge + bit diameter",
            List.of(
                Figure.of("bridge", tabs.widthMetre(), Unit.METRE, CuttingSources.TABS),
                Figure.input("bit diameter", request.bitDiameterMetre(), Unit.METRE)),
            CuttingSources.TAB_PATH));
  }

  private static List<Caution> cautions() {
    return List.of(CuttingRows.LOOSE_PART.caution());
  }
}
