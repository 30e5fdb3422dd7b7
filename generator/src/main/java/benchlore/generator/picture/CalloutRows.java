package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Arrows;
import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A tool that lies flat, at most two texts above it and two below. */
final class CalloutRows implements CalloutPlan {
  private static final double WIDTH = Dimensions.PAGE_WIDTH;
  private static final double EDGE = 8;
  private static final double WIDEST = 292;
  private static final double HIGHEST = 190;
  private static final double ROOM = 142;
  private static final double GAP = 12;
  private static final double LEADER = 18;

  private final List<Callout> above = new ArrayList<>();
  private final List<Callout> below = new ArrayList<>();
  private final double scale;
  private final double top;
  private final double high;

  CalloutRows(List<Callout> given, Box box) {
    this.scale = Math.min(WIDEST / box.wide(), HIGHEST / box.high());
    this.high = box.high() * scale;
    share(given, box.middle().z());
    this.top = above.isEmpty() ? 12 : 4 + rowHeight(above) + LEADER;
  }

  /** Two above and two below at most, the highest point above. */
  private void share(List<Callout> callouts, double middle) {
    List<Callout> sorted = new ArrayList<>(callouts);
    sorted.sort(Comparator.comparingDouble((Callout c) -> c.at().z()));
    for (Callout callout : sorted) {
      boolean up =
          switch (callout.side()) {
            case ABOVE -> true;
            case BELOW -> false;
            case NEARER -> callout.at().z() <= middle;
          };
      (up ? above : below).add(callout);
    }
    while (above.size() > 2) {
      below.add(0, above.remove(above.size() - 1));
    }
    while (below.size() > 2) {
      above.add(below.remove(0));
    }
    above.sort(Comparator.comparingDouble(c -> c.at().x()));
    below.sort(Comparator.comparingDouble(c -> c.at().x()));
  }

  private static double rowHeight(List<Callout> row) {
    return row.stream().mapToDouble(c -> block(c).high()).max().orElse(0);
  }

  private static Lettering.Block block(Callout callout) {
    return Lettering.Block.of(callout.text(), ROOM);
  }

  @Override
  public double scale() {
    return scale;
  }

  @Override
  public Point middle() {
    return new Point(WIDTH / 2, top + high / 2);
  }

  @Override
  public double bottom() {
    return top + high + (below.isEmpty() ? 10 : LEADER + rowHeight(below) + 6);
  }

  @Override
  public void write(Svg svg, Placing page) {
    row(svg, page, above, true);
    row(svg, page, below, false);
  }

  private void row(Svg svg, Placing page, List<Callout> row, boolean up) {
    double[] middles = middles(page, row);
    for (int i = 0; i < row.size(); i++) {
      Lettering.Block block = block(row.get(i));
      Point anchor = page.of(row.get(i).at());
      double textTop = up ? top - LEADER - block.high() : top + high + LEADER;
      double side = up ? textTop + block.high() : textTop - 1;
      double reach = Math.max(0, block.wide() / 2 - 6);
      double x = Math.max(middles[i] - reach, Math.min(middles[i] + reach, anchor.x()));
      Arrows.pointer(svg, new Point(x, side), anchor);
      block.write(svg, "middle", middles[i], textTop);
    }
  }

  /** The texts over their points as far as they don't meet. */
  private static double[] middles(Placing page, List<Callout> row) {
    double[] middles = new double[row.size()];
    for (int i = 0; i < middles.length; i++) {
      double half = block(row.get(i)).wide() / 2 + EDGE;
      middles[i] = Math.max(half, Math.min(WIDTH - half, page.of(row.get(i).at()).x()));
    }
    if (middles.length == 2) {
      double halfLeft = block(row.get(0)).wide() / 2;
      double halfRight = block(row.get(1)).wide() / 2;
      double lack = halfLeft + halfRight + GAP - (middles[1] - middles[0]);
      if (lack > 0) {
        double left = Math.max(halfLeft + EDGE, middles[0] - lack / 2);
        double right = Math.min(WIDTH - halfRight - EDGE, left + halfLeft + halfRight + GAP);
        middles[0] = right - halfLeft - halfRight - GAP;
        middles[1] = right;
      }
    }
    return middles;
  }
}
