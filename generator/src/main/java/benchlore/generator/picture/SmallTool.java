package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import java.awt.geom.AffineTransform;
import java.util.List;

/** A tool, small; a long one lies askew, so that it is drawn larger. */
final class SmallTool {
  private static final double SIDE = 48;
  private static final double ROOM = 43;

  private final List<Mark> marks;
  private final Box box;
  private final boolean askew;

  SmallTool(List<Mark> marks, boolean level) {
    this.marks = marks.stream().filter(mark -> mark.shown() != Mark.Shown.PAGE).toList();
    this.box =
        marks.stream()
            .filter(mark -> mark.shown() == Mark.Shown.BOTH)
            .flatMap(mark -> Outlines.box(mark.outline()).stream())
            .reduce(Box::with)
            .orElse(new Box(0, 0, 1, 1));
    this.askew = !level && diagonal(box) < Math.max(box.wide(), box.high());
  }

  String draw() {
    Placing placing = new Placing(scale(), box.middle(), new Point(SIDE / 2, SIDE / 2));
    AffineTransform page = placing.turned(askew ? 45 : 0);
    Svg svg = Svg.decorative(SIDE);
    marks.forEach(mark -> mark.draw(svg, page));
    return svg.end();
  }

  /** What the picture's side stands for, millimetres. */
  double sideMm() {
    return SIDE / scale();
  }

  private double scale() {
    return ROOM / (askew ? diagonal(box) : Math.max(box.wide(), box.high()));
  }

  /** How wide and high a box is that lies at 45 degrees. */
  private static double diagonal(Box box) {
    return (box.wide() + box.high()) / Math.sqrt(2);
  }
}
