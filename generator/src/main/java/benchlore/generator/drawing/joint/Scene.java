package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.svg.Arrows;
import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Pieces of a joint drawn apart, in the order they are added: what lies behind comes first.
 *
 * <p>Everything is fitted into the room left of a column of callouts.
 */
final class Scene {
  private static final double LEFT = 8;
  private static final double WIDE = 224;
  private static final double MOST_HIGH = 190;
  private static final double MARGIN = 10;
  private static final double ROW = 34;

  private interface Item {
    List<Space> places();

    void draw(Svg svg, Function<Space, Point> page);
  }

  private record Note(Space at, String label, Measure measure) {}

  private record Move(Space from, Space to) {}

  private final List<Item> items = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();
  private final List<Move> moves = new ArrayList<>();
  private final List<Move> axes = new ArrayList<>();

  /** A piece of wood. */
  Scene wood(Prism prism) {
    items.add(
        new Item() {
          @Override
          public List<Space> places() {
            return prism.near().stream()
                .flatMap(p -> List.of(p, p.plus(prism.back())).stream())
                .toList();
          }

          @Override
          public void draw(Svg svg, Function<Space, Point> page) {
            for (Face face : prism.faces()) {
              Faces.draw(svg, face, prism.grain(), page);
            }
          }
        });
    return this;
  }

  /** A round or rounded piece: its outline and its near end, without the edges between. */
  Scene round(Prism prism, String cssClass) {
    items.add(
        new Item() {
          @Override
          public List<Space> places() {
            return prism.near();
          }

          @Override
          public void draw(Svg svg, Function<Space, Point> page) {
            Faces.round(svg, prism, cssClass, page);
          }
        });
    return this;
  }

  /** A mark on a face: the mouth of a hole, or glue. */
  Scene mark(Face.Look look, Space... corners) {
    Face face = new Face(List.of(corners), false, look);
    items.add(
        new Item() {
          @Override
          public List<Space> places() {
            return face.corners();
          }

          @Override
          public void draw(Svg svg, Function<Space, Point> page) {
            Faces.draw(svg, face, Grain.NONE, page);
          }
        });
    return this;
  }

  /** What a place is called and measures. */
  Scene note(Space at, String label, Measure measure) {
    notes.add(new Note(at, label, measure));
    return this;
  }

  /** The way a piece goes in, a bold arrow. */
  Scene move(Space from, Space to) {
    moves.add(new Move(from, to));
    return this;
  }

  /** A thin line through what belongs together. */
  Scene axis(Space from, Space to) {
    axes.add(new Move(from, to));
    return this;
  }

  String draw(Label label) {
    List<Point> seen = new ArrayList<>();
    items.forEach(item -> item.places().forEach(p -> seen.add(p.seen())));
    moves.forEach(m -> seen.addAll(List.of(m.from().seen(), m.to().seen())));
    double x0 = seen.stream().mapToDouble(Point::x).min().orElseThrow();
    double x1 = seen.stream().mapToDouble(Point::x).max().orElseThrow();
    double z0 = seen.stream().mapToDouble(Point::z).min().orElseThrow();
    double z1 = seen.stream().mapToDouble(Point::z).max().orElseThrow();
    double scale = Math.min(WIDE / (x1 - x0), MOST_HIGH / (z1 - z0));
    double high = Math.max(scale * (z1 - z0), notes.size() * ROW);
    double left = LEFT + (WIDE - scale * (x1 - x0)) / 2;
    double bottom = MARGIN + high / 2 + scale * (z1 - z0) / 2;
    Function<Space, Point> page =
        p -> new Point(left + scale * (p.seen().x() - x0), bottom - scale * (p.seen().z() - z0));
    Svg svg = Svg.titled(Dimensions.PAGE_WIDTH, high + 2 * MARGIN, label);
    paint(svg, page, high);
    return svg.end();
  }

  private void paint(Svg svg, Function<Space, Point> page, double high) {
    items.forEach(item -> item.draw(svg, page));
    for (Move axis : axes) {
      Point a = page.apply(axis.from());
      Point b = page.apply(axis.to());
      svg.line("drw-axis", a.x(), a.z(), b.x(), b.z());
    }
    for (Move move : moves) {
      Arrows.movement(svg, page.apply(move.from()), page.apply(move.to()));
    }
    Dimensions dims = new Dimensions(svg);
    for (Note note : notes) {
      dims.callout(page.apply(note.at()), note.label(), note.measure());
    }
    dims.finish(MARGIN + 6, MARGIN + high - 6);
  }
}
