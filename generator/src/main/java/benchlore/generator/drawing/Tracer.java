package benchlore.generator.drawing;

import java.util.ArrayList;
import java.util.List;

/** Draws a {@link Trace} piece by piece. */
final class Tracer {
  private final Point from;
  private final List<Trace.Piece> pieces = new ArrayList<>();

  Tracer(Point from) {
    this.from = from;
  }

  Tracer line(Point to) {
    pieces.add(new Trace.Piece(to, to, to, true));
    return this;
  }

  Tracer curve(Point first, Point second, Point to) {
    pieces.add(new Trace.Piece(first, second, to, false));
    return this;
  }

  /** An arc of an ellipse from where the line is, at angle {@code from}, to angle {@code to}. */
  Tracer arc(Point centre, Point radii, double from, double to) {
    int parts = Math.max(1, (int) Math.ceil(Math.abs(to - from) / (Math.PI / 2) - 1e-9));
    double step = (to - from) / parts;
    double pull = 4.0 / 3 * Math.tan(step / 4);
    for (int i = 0; i < parts; i++) {
      double a = from + i * step;
      double b = a + step;
      curve(
          at(centre, radii, Math.cos(a) - pull * Math.sin(a), Math.sin(a) + pull * Math.cos(a)),
          at(centre, radii, Math.cos(b) + pull * Math.sin(b), Math.sin(b) - pull * Math.cos(b)),
          at(centre, radii, Math.cos(b), Math.sin(b)));
    }
    return this;
  }

  static Point at(Point centre, Point radii, double cos, double sin) {
    return new Point(centre.x() + radii.x() * cos, centre.z() + radii.z() * sin);
  }

  Trace closed() {
    return new Trace(from, pieces, true);
  }

  Trace open() {
    return new Trace(from, pieces, false);
  }
}
