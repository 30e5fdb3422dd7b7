package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;

/** Dimensions of a cut: figures where the bit decides them, words where the setting does. */
final class CutDimensions {
  private static final double LEVEL_GAP = 9;

  private CutDimensions() {}

  static void draw(Svg svg, BitBody body, Section section, Frame frame) {
    Dimensions dims = new Dimensions(svg);
    switch (body.geometry().shape().cut()) {
      case GROOVE -> groove(dims, body, section, frame);
      case SURFACE -> surfacing(dims, body, section, frame);
      case EDGE, WHOLE_EDGE -> edge(dims, body, section, frame);
      case TRIM -> trim(dims, body, frame);
    }
    if (body.geometry().shape().cut() != CutKind.TRIM) {
      Callouts.shape(dims, svg, body, frame);
    }
    dims.finish(46, 228);
  }

  private static void groove(Dimensions dims, BitBody body, Section section, Frame frame) {
    Form form = body.form();
    CutFigures figures = CutFigures.of(body);
    double mouth = form.contour().to().x();
    double widest = form.removed().maxX();
    double above = frame.y(section.window().z1()) - LEVEL_GAP;
    dims.level(
        above,
        new Point(frame.x(-mouth), frame.y(form.faceMm())),
        new Point(frame.x(mouth), frame.y(form.faceMm())),
        new Dimensions.Level(mouth < widest - 1e-6 ? "mouth" : "width", figures.mouth(), true));
    if (mouth < widest - 1e-6) {
      double below = frame.y(section.window().z0()) + LEVEL_GAP;
      dims.level(
          below,
          new Point(frame.x(-widest), frame.y(0)),
          new Point(frame.x(widest), frame.y(0)),
          new Dimensions.Level("at the floor", Measure.mm(2 * widest), false));
    }
    double side = section.window().x0();
    double floorX = form.contour().reachAt(0);
    dims.upright(
        new Point(frame.x(side), frame.y(form.faceMm())),
        new Point(frame.x(-floorX), frame.y(0)),
        "depth",
        figures.height());
  }

  private static void surfacing(Dimensions dims, BitBody body, Section section, Frame frame) {
    double r = body.geometry().maxRadius();
    double top = frame.y(section.window().z1());
    dims.level(
        top - LEVEL_GAP,
        new Point(frame.x(-r), frame.y(body.neckTop())),
        new Point(frame.x(r), frame.y(body.neckTop())),
        new Dimensions.Level("one pass", Measure.mm(2 * r), true));
    dims.level(
        frame.y(section.window().z0()) + LEVEL_GAP,
        new Point(frame.x(-r * 1.2 - r), frame.y(0)),
        new Point(frame.x(-r), frame.y(0)),
        new Dimensions.Level("step over", Measure.words("as set"), false));
    double side = section.window().x0();
    dims.upright(
        new Point(frame.x(side), frame.y(body.form().faceMm())),
        new Point(frame.x(side), frame.y(0)),
        "depth",
        Measure.words("as set"));
  }

  private static void edge(Dimensions dims, BitBody body, Section section, Frame frame) {
    Form form = body.form();
    CutFigures figures = CutFigures.of(body);
    double above = frame.y(section.window().z1()) - LEVEL_GAP;
    Outline cut = figures.cut();
    Box box = cut.box();
    dims.level(
        above,
        new Point(frame.x(form.edgeMm()), frame.y(box.z1())),
        new Point(frame.x(box.x1()), frame.y(box.z1())),
        new Dimensions.Level(figures.widthName(), figures.mouth(), true));
    dims.upright(
        new Point(frame.x(0), frame.y(box.z1())),
        new Point(frame.x(0), frame.y(box.z0())),
        figures.heightName(),
        figures.height());
    body.geometry()
        .stepMm()
        .ifPresent(
            step ->
                dims.callout(
                    new Point(frame.x(box.x1()), frame.y(form.faceMm() - step / 2)),
                    stepName(body.geometry().shape()),
                    Measure.mm(step)));
  }

  private static String stepName(BitShape shape) {
    return shape == BitShape.FINGER_JOINT ? "pitch" : "step";
  }

  private static void trim(Dimensions dims, BitBody body, Frame frame) {
    Form form = body.form();
    Box box = form.removed().box();
    double r = body.geometry().bearingRadius();
    boolean above =
        body.geometry().bearingPlace().onShank() && !body.geometry().bearingPlace().atTip();
    double bearingAt =
        above ? body.neckTop() + body.bearingHeight() / 2 : -body.bearingHeight() / 2;
    double far = box.x1() + (form.faceMm() - form.floorMm()) * 0.2;
    dims.callout(
        frame.page(new Point(r + (far - r) * 0.6, bearingAt)),
        "bearing on",
        Measure.words("template"));
    dims.callout(
        frame.page(new Point(far, (box.z0() + box.z1()) / 2)), "work", Measure.words("cut flush"));
    dims.upright(
        new Point(frame.x(0), frame.y(body.geometry().cuttingLengthMm())),
        new Point(frame.x(0), frame.y(0)),
        "work up to",
        Measure.mm(body.geometry().cuttingLengthMm()));
  }
}
