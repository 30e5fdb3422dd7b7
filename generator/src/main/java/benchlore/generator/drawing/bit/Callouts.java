package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import java.util.Optional;

/** Callouts for the measures that belong to the shape: radius, angle, tip. */
final class Callouts {
  private Callouts() {}

  static void shape(Dimensions dims, Svg svg, BitBody body, Frame frame) {
    BitGeometry g = body.geometry();
    Outline profile = body.form().profile();
    arc(profile)
        .filter(arc -> g.shape() != BitShape.TAPERED_BALL)
        .ifPresent(
            arc -> dims.callout(frame.page(arc.at(0.5)), "radius", Measure.mm(arc.radius())));
    Flank.of(g, profile)
        .ifPresent(
            flank ->
                dims.callout(
                    flank.mark(svg, frame),
                    flank.label(),
                    Measure.degrees(g.angleDegrees().orElse(0))));
    g.tipMm().ifPresent(tip -> tip(dims, body, frame, tip));
  }

  private static Optional<Arc> arc(Outline profile) {
    return profile.segments().stream()
        .filter(Arc.class::isInstance)
        .map(Arc.class::cast)
        .findFirst();
  }

  private static void tip(Dimensions dims, BitBody body, Frame frame, double tip) {
    double high = body.geometry().cuttingLengthMm();
    Point at =
        switch (body.geometry().shape()) {
          case FLAT_TIP_V -> new Point(tip / 2, 0);
          case TAPERED_BALL -> new Point(tip / 2 * Math.sqrt(0.5), tip / 2 * (1 - Math.sqrt(0.5)));
          case T_SLOT, KEYHOLE -> new Point(tip / 2, high + body.form().stemMm() / 2);
          default -> new Point(body.form().profile().reachAt(high / 2), high / 2);
        };
    dims.callout(frame.page(at), Words.tipName(body.geometry().shape()), Measure.mm(tip));
  }
}
