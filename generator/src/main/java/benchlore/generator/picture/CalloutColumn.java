package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Arrows;
import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A tool that stands upright, the texts in a column on its right. */
final class CalloutColumn implements CalloutPlan {
  private static final double LEFT = 14;
  private static final double WIDEST = 172;
  private static final double HIGHEST = 270;
  private static final double TEXT = 204;
  private static final double ROOM = Dimensions.PAGE_WIDTH - TEXT - 6;
  private static final double GAP = 10;
  private static final double TOP = 12;

  private final List<Callout> callouts;
  private final double scale;
  private final double high;

  CalloutColumn(List<Callout> given, Box box) {
    this.callouts = new ArrayList<>(given);
    this.callouts.sort(Comparator.comparingDouble(c -> c.at().z()));
    this.scale = Math.min(WIDEST / box.wide(), HIGHEST / box.high());
    double texts = GAP * (callouts.size() - 1);
    for (Callout callout : callouts) {
      texts += block(callout).high();
    }
    this.high = Math.max(texts, box.high() * scale);
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
    return new Point(LEFT + WIDEST / 2, TOP + high / 2);
  }

  @Override
  public double bottom() {
    return TOP + high + 12;
  }

  @Override
  public void write(Svg svg, Placing page) {
    double[] tops = tops(page);
    for (int i = 0; i < tops.length; i++) {
      Lettering.Block block = block(callouts.get(i));
      Point start = new Point(TEXT - 4, tops[i] + block.high() / 2);
      Arrows.pointer(svg, start, page.of(callouts.get(i).at()));
      block.write(svg, "start", TEXT, tops[i]);
    }
  }

  /** Each text beside its point as far as they don't meet. */
  private double[] tops(Placing page) {
    double[] tops = new double[callouts.size()];
    double least = TOP;
    for (int i = 0; i < tops.length; i++) {
      double tall = block(callouts.get(i)).high();
      tops[i] = Math.max(least, page.of(callouts.get(i).at()).z() - tall / 2);
      least = tops[i] + tall + GAP;
    }
    double most = TOP + high;
    for (int i = tops.length - 1; i >= 0; i--) {
      tops[i] = Math.min(tops[i], most - block(callouts.get(i)).high());
      most = tops[i] - GAP;
    }
    return tops;
  }
}
