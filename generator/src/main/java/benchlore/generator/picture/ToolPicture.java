package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Arrows;
import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.List;
import java.util.Optional;

/** A tool to scale, from its file: the page's picture and the small one. */
public final class ToolPicture {
  private static final double WIDTH = Dimensions.PAGE_WIDTH;
  private static final double MARGIN = 14;
  private static final double FOOT = 34;
  private static final double FLAT = 1.3;

  private final String title;
  private final String says;
  private final boolean level;
  private final Box frame;
  private final List<Mark> marks;
  private final List<Callout> callouts;

  private ToolPicture(Element root) {
    this.title = root.children("title").get(0).text();
    this.says = root.children("desc").get(0).text();
    this.level = root.value("data-level").equals("true");
    this.frame = Frames.of(root).orElseThrow();
    this.marks = Mark.of(root);
    this.callouts = Callout.of(root);
  }

  /** The picture of a file that is checked. */
  static ToolPicture of(Element root) {
    return new ToolPicture(root);
  }

  /** What it shows, one sentence or more for someone who can't see it. */
  public String says() {
    return says;
  }

  /** The box round the tool itself, millimetres; empty if nothing of it is drawn. */
  Optional<Box> itself() {
    return box(marks.stream().filter(Mark::sized).toList());
  }

  /** The box round everything drawn on the page but the words. */
  Optional<Box> all() {
    return box(marks.stream().filter(mark -> mark.shown() != Mark.Shown.SMALL).toList());
  }

  List<Mark> marks() {
    return List.copyOf(marks);
  }

  private static Optional<Box> box(List<Mark> marks) {
    return marks.stream().flatMap(mark -> Outlines.box(mark.outline()).stream()).reduce(Box::with);
  }

  /**
   * The tool with what to look at, what moves, and a scale bar.
   *
   * @param idPrefix a letter, then letters, digits, - or _; unique on the page
   * @param wideMm its width as its record says
   * @param highMm its height as its record says
   */
  public String page(String idPrefix, double wideMm, double highMm) {
    boolean flat = frame.wide() >= FLAT * frame.high();
    CalloutPlan plan = flat ? new CalloutRows(callouts, frame) : new CalloutColumn(callouts, frame);
    Label label = new Label(idPrefix, title, description(wideMm, highMm));
    Svg svg = Svg.titled(WIDTH, plan.bottom() + FOOT, label);
    Placing page = new Placing(plan.scale(), frame.middle(), plan.middle());
    AffineTransform move = page.turned(0);
    for (Mark mark : marks) {
      if (mark.shown() != Mark.Shown.SMALL) {
        mark.draw(svg, move);
      }
      if (mark.moves()) {
        head(svg, mark, move);
      }
    }
    plan.write(svg, page);
    foot(svg, plan, wideMm, highMm);
    return svg.end();
  }

  private String description(double wideMm, double highMm) {
    return says
        + " About "
        + Num.of(wideMm)
        + " mm wide and "
        + Num.of(highMm)
        + " mm high as drawn. Look for: "
        + String.join("; ", callouts.stream().map(Callout::text).toList())
        + ".";
  }

  /** The head of an arrow at the end of its line. */
  private static void head(Svg svg, Mark mark, AffineTransform move) {
    double[] at = new double[6];
    Point before = new Point(0, 0);
    Point tip = before;
    for (PathIterator i = mark.outline().getPathIterator(move); !i.isDone(); i.next()) {
      int places = Math.max(1, i.currentSegment(at));
      before = places > 1 ? new Point(at[2 * places - 4], at[2 * places - 3]) : tip;
      tip = new Point(at[2 * places - 2], at[2 * places - 1]);
    }
    Arrows.big(svg, before, tip);
  }

  /** The scale bar, and the longer side in figures. */
  private static void foot(Svg svg, CalloutPlan plan, double wideMm, double highMm) {
    double y = plan.bottom() + 10;
    double bar = barMm(plan.scale());
    double end = MARGIN + bar * plan.scale();
    double half = (MARGIN + end) / 2;
    svg.rect("drw-scale", MARGIN, y - 2, half - MARGIN, 4);
    svg.rect("drw-scale-empty", half, y - 2, end - half, 4);
    svg.figure("start", MARGIN, y + 17, Measure.mm(bar));
    boolean lies = wideMm >= highMm;
    svg.text("end", WIDTH - MARGIN, y + 3, (lies ? "length" : "height") + " as drawn, about");
    svg.figure("end", WIDTH - MARGIN, y + 17, Measure.mm(lies ? wideMm : highMm));
  }

  /** The largest round length that is no longer than a third of the page. */
  private static double barMm(double scale) {
    double best = 1;
    for (double power = 1; power <= 1_000; power *= 10) {
      for (double mm : new double[] {power, 2 * power, 5 * power}) {
        if (mm * scale <= 100) {
          best = mm;
        }
      }
    }
    return best;
  }

  /** The tool on 48 by 48 units, to stand beside its name; a long one lies askew. */
  public String small() {
    return new SmallTool(marks, level).draw();
  }

  /** How many millimetres the side of the small picture stands for. */
  public double sideMm() {
    return new SmallTool(marks, level).sideMm();
  }
}
