package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Svg;

/** The metal of a bit above and below its cutting edges: stem, taper, shank, bearings. */
record BitBody(BitGeometry geometry, Form form) {

  static BitBody of(BitGeometry geometry) {
    return new BitBody(geometry, Form.of(geometry));
  }

  double shankRadius() {
    return geometry.shankMm() / 2;
  }

  /** Top of the cutting edges and of a neck, where the taper to the shank starts. */
  double neckTop() {
    return geometry.cuttingLengthMm() + form.stemMm();
  }

  /** Where the plain shank starts. */
  double shankFoot() {
    double change = Math.abs(form.profile().to().x() - shankRadius());
    return neckTop() + (geometry.bearingPlace().onShank() ? 0 : Math.min(change * 0.4 + 0.6, 7));
  }

  double bearingHeight() {
    return Math.max(2.5, Math.min(7, geometry.bearingRadius() * 0.7));
  }

  /** Lowest point of bit, bearing and screw. */
  double lowest() {
    return geometry.bearingPlace().atTip() ? -bearingHeight() - screwHeight() : 0;
  }

  double screwHeight() {
    return bearingHeight() * 0.3;
  }

  /** Highest point that must be seen: shank foot or the bearing with its collar. */
  double highest() {
    return geometry.bearingPlace().onShank() ? neckTop() + bearingHeight() * 1.5 : shankFoot();
  }

  /** Right side of the metal from the tip's centre up to a height on the shank. */
  Outline side(double shankTop) {
    double foot = shankFoot();
    return form.profile()
        .thenLineTo(form.profile().to().x(), neckTop())
        .thenLineTo(shankRadius(), foot)
        .thenLineTo(shankRadius(), Math.max(shankTop, foot + 0.01));
  }

  /** The cutter alone, both sides, closed. */
  Outline cutter() {
    Outline side = form.profile();
    return side.then(side.mirrored().reversed()).closed();
  }

  /** Draws the bearings, their screw and collar; {@code half} only right of the axis. */
  void drawBearings(Svg svg, Frame frame, boolean half) {
    double high = bearingHeight();
    double r = geometry.bearingRadius();
    if (geometry.bearingPlace().atTip()) {
      double screw = Math.min(r * 0.5, shankRadius() * 0.6);
      box(svg, "drw-metal", frame, new Box(half ? 0 : -screw, lowest(), screw, -high));
      bearing(svg, frame, new Box(half ? 0 : -r, -high, r, 0));
    }
    if (geometry.bearingPlace().onShank()) {
      double foot = neckTop();
      double collar = Math.min(r, shankRadius() * 1.35);
      box(
          svg,
          "drw-metal",
          frame,
          new Box(half ? 0 : -collar, foot + high, collar, foot + high * 1.5));
      bearing(svg, frame, new Box(half ? 0 : -r, foot, r, foot + high));
    }
  }

  private static void bearing(Svg svg, Frame frame, Box box) {
    box(svg, "drw-bearing", frame, box);
    double low = box.z0() + (box.z1() - box.z0()) * 0.3;
    double high = box.z0() + (box.z1() - box.z0()) * 0.7;
    svg.line("drw-flute", frame.x(box.x0()), frame.y(low), frame.x(box.x1()), frame.y(low));
    svg.line("drw-flute", frame.x(box.x0()), frame.y(high), frame.x(box.x1()), frame.y(high));
  }

  private static void box(Svg svg, String cssClass, Frame frame, Box box) {
    double width = (box.x1() - box.x0()) * frame.scale();
    double height = (box.z1() - box.z0()) * frame.scale();
    svg.rect(cssClass, frame.x(box.x0()), frame.y(box.z1()), width, height);
  }
}
