package benchlore.generator.drawing;

import java.util.List;

/** One continuous line of a shape: straight and cubic pieces from a start. */
record Trace(Point from, List<Piece> pieces, boolean closed) {
  private static final int SAMPLES = 24;

  /** A cubic piece; of a straight one the control points don't matter. */
  record Piece(Point first, Point second, Point to, boolean straight) {
    Piece moved(Affine move) {
      return new Piece(move.of(first), move.of(second), move.of(to), straight);
    }

    Point at(Point start, double t) {
      if (straight) {
        return start.towards(to, t);
      }
      Point a = start.towards(first, t);
      Point b = first.towards(second, t);
      Point c = second.towards(to, t);
      return a.towards(b, t).towards(b.towards(c, t), t);
    }
  }

  Trace {
    pieces = List.copyOf(pieces);
  }

  Trace moved(Affine move) {
    return new Trace(
        move.of(from), pieces.stream().map(piece -> piece.moved(move)).toList(), closed);
  }

  /** Path data, the line moved onto the page. */
  String path(Affine page) {
    Trace moved = moved(page);
    StringBuilder d = new StringBuilder("M").append(pair(moved.from));
    for (Piece piece : moved.pieces) {
      if (piece.straight()) {
        d.append('L').append(pair(piece.to()));
      } else {
        d.append('C').append(pair(piece.first())).append(' ').append(pair(piece.second()));
        d.append(' ').append(pair(piece.to()));
      }
    }
    return closed ? d.append('Z').toString() : d.toString();
  }

  /** The box round the line, to a thousandth of a piece. */
  Box box() {
    Box box = new Box(from.x(), from.z(), from.x(), from.z());
    Point start = from;
    for (Piece piece : pieces) {
      for (int i = 1; i <= SAMPLES; i++) {
        box = box.with(piece.at(start, (double) i / SAMPLES));
      }
      start = piece.to();
    }
    return box;
  }

  private static String pair(Point p) {
    return Svg.pair(p.x(), p.z());
  }
}
