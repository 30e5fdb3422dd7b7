package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Svg;

/** The section of the work a bit leaves, with the bit in place, over a small plan of the feed. */
final class CutDrawing {
  private static final double HEIGHT = 372;
  private static final double LEFT = 90;
  private static final double RIGHT = 232;
  private static final double TOP = 50;
  private static final double BOTTOM = 224;
  private static final double PLAN_TOP = 262;
  private static final double HATCH = 6;

  private CutDrawing() {}

  static String draw(BitGeometry g, String title, String idPrefix) {
    BitBody body = BitBody.of(g);
    Section section = Section.of(body);
    Frame frame = frame(section.window());
    Svg svg =
        Svg.titled(Dimensions.PAGE_WIDTH, HEIGHT, new Label(idPrefix, title, CutWords.cut(g)));
    hatched(svg, idPrefix + "-s", frame, section.stock());
    int number = 0;
    for (Outline template : section.templates()) {
      number++;
      svg.path("drw-template", frame.closedPath(template));
      plyLines(svg, idPrefix + "-m" + number, frame, template);
    }
    for (Outline bit : section.bit()) {
      svg.path("drw-ghost", frame.closedPath(bit));
    }
    body.drawBearings(svg, frame, g.shape().cut() != CutKind.GROOVE);
    svg.path("drw-removed", frame.closedPath(section.removed()));
    svg.path("drw-edge", frame.path(section.surface()));
    double axisTop = frame.y(section.window().z1()) - 4;
    svg.line("drw-axis", frame.x(0), axisTop, frame.x(0), frame.y(section.window().z0()) + 4);
    CutDimensions.draw(svg, body, section, frame);
    PlanView.draw(svg, PLAN_TOP, g);
    return svg.end();
  }

  private static Frame frame(Box window) {
    double wide = window.x1() - window.x0();
    double high = window.z1() - window.z0();
    double scale = Math.min((RIGHT - LEFT) / wide, (BOTTOM - TOP) / high);
    double spareX = RIGHT - LEFT - scale * wide;
    double spareY = BOTTOM - TOP - scale * high;
    return new Frame(
        scale, LEFT + spareX / 2 - scale * window.x0(), BOTTOM - spareY / 2 + scale * window.z0());
  }

  private static void hatched(Svg svg, String clipId, Frame frame, Outline stock) {
    Box box = stock.box();
    double top = frame.y(box.z1());
    double bottom = frame.y(box.z0());
    double high = bottom - top;
    svg.path("drw-stock", frame.closedPath(stock));
    svg.clippedGroup(clipId, frame.closedPath(stock));
    StringBuilder d = new StringBuilder();
    for (double x = frame.x(box.x0()) - high; x < frame.x(box.x1()); x += HATCH) {
      d.append('M').append(Svg.pair(x, bottom));
      d.append('L').append(Svg.pair(x + high, top));
    }
    svg.path("drw-hatch", d.toString()).endGroup();
  }

  private static void plyLines(Svg svg, String clipId, Frame frame, Outline template) {
    Box box = template.box();
    StringBuilder d = new StringBuilder();
    double left = frame.x(box.x0());
    double right = frame.x(box.x1());
    for (double y = frame.y(box.z1()) + 4; y < frame.y(box.z0()); y += 4) {
      d.append('M').append(Svg.pair(left, y)).append('L').append(Svg.pair(right, y));
    }
    if (d.length() > 0) {
      svg.clippedGroup(clipId, frame.closedPath(template));
      svg.path("drw-hatch", d.toString()).endGroup();
    }
  }
}
