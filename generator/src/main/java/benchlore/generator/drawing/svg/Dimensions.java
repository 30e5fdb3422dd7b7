package benchlore.generator.drawing.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Dimension lines, and a right-hand column of callouts whose texts never meet. */
public final class Dimensions {
  /** How wide every drawing is, but for the small ones. */
  public static final double PAGE_WIDTH = 320;

  /** Where the left column's text ends. */
  public static final double LEFT_TEXT = 74;

  /** Where the right column's text starts. */
  public static final double RIGHT_TEXT = 243;

  private static final double ROW = 31;
  private static final double HALF_TEXT = 38;
  private static final double OVERSHOOT = 4;

  private record Callout(Point anchor, String label, Measure measure) {}

  private final Svg svg;
  private final List<Callout> callouts = new ArrayList<>();

  /** Dimensions of one drawing. */
  public Dimensions(Svg svg) {
    this.svg = svg;
  }

  /**
   * An upright dimension in the left column; {@code top} and {@code bottom} are the points meant.
   */
  public void upright(Point top, Point bottom, String label, Measure measure) {
    double x = LEFT_TEXT + 8;
    svg.line("drw-dim", top.x() - 2, top.z(), x - OVERSHOOT, top.z());
    svg.line("drw-dim", bottom.x() - 2, bottom.z(), x - OVERSHOOT, bottom.z());
    Arrows.between(svg, new Point(x, top.z()), new Point(x, bottom.z()));
    double middle = (top.z() + bottom.z()) / 2;
    svg.text("end", LEFT_TEXT, middle - 3, label);
    svg.figure("end", LEFT_TEXT, middle + 11, measure);
  }

  /** A level dimension at page height {@code y}, its text above or below the line. */
  public void level(double y, Point left, Point right, Level text) {
    double past = text.above() ? -OVERSHOOT : OVERSHOOT;
    svg.line("drw-dim", left.x(), left.z() + past / 2, left.x(), y + past);
    svg.line("drw-dim", right.x(), right.z() + past / 2, right.x(), y + past);
    Arrows.between(svg, new Point(left.x(), y), new Point(right.x(), y));
    double middle = (left.x() + right.x()) / 2;
    double x = Math.max(HALF_TEXT, Math.min(PAGE_WIDTH - HALF_TEXT, middle));
    svg.text("middle", x, text.above() ? y - 20 : y + 29, text.label());
    svg.figure("middle", x, text.above() ? y - 7 : y + 16, text.measure());
  }

  /** The words of a level dimension and the side of the line they stand on. */
  public record Level(String label, Measure measure, boolean above) {}

  /** A figure in the right-hand column with a line to what it is of. */
  public void callout(Point anchor, String label, Measure measure) {
    callouts.add(new Callout(anchor, label, measure));
  }

  /** Writes the callouts between two page heights, in the order of what they point at. */
  public void finish(double top, double bottom) {
    callouts.sort(Comparator.comparingDouble(c -> c.anchor().z()));
    double[] y = new double[callouts.size()];
    double last = top - ROW / 2;
    for (int i = 0; i < y.length; i++) {
      y[i] = Math.max(callouts.get(i).anchor().z(), last + ROW);
      last = y[i];
    }
    double limit = bottom + ROW / 2;
    for (int i = y.length - 1; i >= 0; i--) {
      y[i] = Math.min(y[i], limit - ROW);
      limit = y[i];
    }
    for (int i = 0; i < y.length; i++) {
      Callout callout = callouts.get(i);
      Point elbow = new Point(RIGHT_TEXT - 4, y[i]);
      Arrows.pointer(svg, elbow, callout.anchor());
      svg.text("start", RIGHT_TEXT, y[i] - 3, callout.label());
      svg.figure("start", RIGHT_TEXT, y[i] + 11, callout.measure());
    }
  }
}
