package benchlore.generator.drawing;

import java.util.ArrayList;
import java.util.List;

/** A tool to scale with what to look at, what moves, and a scale bar. */
final class SilhouetteDrawing {
  private static final double WIDTH = Dimensions.PAGE_WIDTH;
  private static final double MARGIN = 14;
  private static final double FOOT = 34;
  private static final double FLAT = 1.3;

  private SilhouetteDrawing() {}

  static String draw(Silhouette tool, String title, String idPrefix) {
    Box box = withMoves(tool);
    boolean flat = box.wide() >= FLAT * box.high();
    CalloutPlan plan = flat ? new CalloutRows(tool, box) : new CalloutColumn(tool, box);
    Label label = new Label(idPrefix, title + ", " + tool.view().words(), description(tool));
    Svg svg = Svg.titled(WIDTH, plan.bottom() + FOOT, label);
    Affine page = Affine.page(plan.scale(), box.middle(), plan.middle());
    PartPainter painter = new PartPainter(svg, page, plan.scale());
    tool.parts().forEach(painter::paint);
    for (Silhouette.Travel move : tool.moves()) {
      move(svg, move, page);
    }
    plan.write(svg, page);
    foot(svg, tool, plan);
    return svg.end();
  }

  private static String description(Silhouette tool) {
    List<String> look = tool.callouts().stream().map(Silhouette.Callout::text).toList();
    return tool.says()
        + " About "
        + Num.of(tool.wide())
        + " mm wide and "
        + Num.of(tool.high())
        + " mm high as drawn. Look for: "
        + String.join("; ", look)
        + ".";
  }

  /** The box round everything to be drawn. */
  private static Box withMoves(Silhouette tool) {
    Box box = tool.box();
    for (Silhouette.Travel move : tool.moves()) {
      for (Point p : move.slide()) {
        box = box.with(p);
      }
      if (move.turn().isPresent()) {
        box = box.with(arc(move.turn().get()).box());
      }
    }
    return box;
  }

  private static Trace arc(Silhouette.Turn turn) {
    Shape line = Shape.arc(turn.about(), turn.radius(), turn.sweep());
    return line.ink(1).strokes().get(0);
  }

  private static void move(Svg svg, Silhouette.Travel move, Affine page) {
    if (!move.slide().isEmpty()) {
      Arrows.movement(svg, page.of(move.slide().get(0)), page.of(move.slide().get(1)));
    }
    move.turn()
        .ifPresent(
            turn -> {
              Trace arc = arc(turn);
              svg.path("drw-move", arc.path(page));
              Trace.Piece last = arc.pieces().get(arc.pieces().size() - 1);
              Arrows.big(svg, page.of(last.second()), page.of(last.to()));
            });
  }

  /** The scale bar, and the longer side in figures. */
  private static void foot(Svg svg, Silhouette tool, CalloutPlan plan) {
    double y = plan.bottom() + 10;
    double bar = barMm(plan.scale());
    double end = MARGIN + bar * plan.scale();
    double half = (MARGIN + end) / 2;
    svg.rect("drw-scale", MARGIN, y - 2, half - MARGIN, 4);
    svg.rect("drw-scale-empty", half, y - 2, end - half, 4);
    svg.figure("start", MARGIN, y + 17, Measure.mm(bar));
    boolean level = tool.wide() >= tool.high();
    svg.text("end", WIDTH - MARGIN, y + 3, (level ? "length" : "height") + " as drawn, about");
    svg.figure("end", WIDTH - MARGIN, y + 17, Measure.mm(level ? tool.wide() : tool.high()));
  }

  /** The largest round length that is no longer than a third of the page. */
  private static double barMm(double scale) {
    List<Double> round = new ArrayList<>();
    for (double power = 1; power <= 1_000; power *= 10) {
      round.addAll(List.of(power, 2 * power, 5 * power));
    }
    double best = 1;
    for (double mm : round) {
      if (mm * scale <= 100) {
        best = mm;
      }
    }
    return best;
  }
}
