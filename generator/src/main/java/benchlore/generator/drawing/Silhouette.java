package benchlore.generator.drawing;

import java.util.List;
import java.util.Optional;

/**
 * A tool to scale, seen from one side: parts drawn in their order, in millimetres, y up.
 *
 * @param view from where: side, front or top
 * @param says what it shows, a sentence
 * @param level whether the small picture keeps it level, however long
 * @param wide usual size from left to right, millimetres
 * @param high usual size from bottom to top, millimetres
 * @param parts what is drawn, the hindmost first
 * @param callouts where to look
 * @param moves what slides or turns
 */
public record Silhouette(
    View view,
    String says,
    boolean level,
    double wide,
    double high,
    List<Part> parts,
    List<Callout> callouts,
    List<Travel> moves) {
  /** Where the eye is. */
  public enum View {
    /** From the side. */
    SIDE,
    /** From the front. */
    FRONT,
    /** From above. */
    TOP;

    String words() {
      return switch (this) {
        case SIDE -> "from the side";
        case FRONT -> "from the front";
        case TOP -> "from above";
      };
    }
  }

  /**
   * One part.
   *
   * @param material its look
   * @param shape its form
   * @param holes what is cut out of it, if anything
   * @param fine whether the small picture leaves it out
   * @param aside whether it stands beside the tool: an inset, a section, a second view
   */
  public record Part(
      Material material, Shape shape, Optional<Shape> holes, boolean fine, boolean aside) {}

  /** Which side of the drawing a callout's words stand on. */
  public enum Side {
    /** Above the tool. */
    ABOVE,
    /** Below it. */
    BELOW,
    /** Wherever its point is nearer. */
    NEARER
  }

  /**
   * A telling feature.
   *
   * @param text a few words
   * @param at its place
   * @param side where the words stand
   */
  public record Callout(String text, Point at, Side side) {}

  /**
   * An arrow that shows a movement.
   *
   * @param slide from one point to another, if it slides
   * @param turn the circle it turns on, if it turns
   */
  public record Travel(List<Point> slide, Optional<Turn> turn) {
    /** Copies the list. */
    public Travel {
      slide = List.copyOf(slide);
    }
  }

  /** Part of a circle, angles in degrees. */
  public record Turn(Point about, double radius, Shape.Sweep sweep) {}

  /** Copies the lists. */
  public Silhouette {
    parts = List.copyOf(parts);
    callouts = List.copyOf(callouts);
    moves = List.copyOf(moves);
  }

  /** How wide its parts really are, millimetres, what stands aside not counted. */
  public double drawnWide() {
    return itself().wide();
  }

  /** How high its parts really are, millimetres, what stands aside not counted. */
  public double drawnHigh() {
    return itself().high();
  }

  private Box itself() {
    return box(parts.stream().filter(part -> !part.aside()).toList());
  }

  /** Whether a point lies among its parts, or as good as. */
  public boolean covers(Point p) {
    Box box = box();
    double slack = 0.04 * Math.max(box.wide(), box.high());
    return p.x() >= box.x0() - slack
        && p.x() <= box.x1() + slack
        && p.z() >= box.z0() - slack
        && p.z() <= box.z1() + slack;
  }

  Box box() {
    return box(parts);
  }

  /** The parts of the small picture. */
  List<Part> mainParts() {
    List<Part> main = parts.stream().filter(part -> !part.fine()).toList();
    return main.isEmpty() ? parts : main;
  }

  static Box box(List<Part> parts) {
    Optional<Box> box = Optional.empty();
    for (Part part : parts) {
      // Teeth at their true size, however fine; other patterns keep to their field at any.
      Shape.Ink ink = part.shape().ink(part.shape().stroke() == Shape.Stroke.TEETH ? 1e6 : 1);
      for (Trace trace : ink.areas().isEmpty() ? ink.strokes() : ink.areas()) {
        box = Optional.of(box.map(b -> b.with(trace.box())).orElse(trace.box()));
      }
    }
    return box.orElse(new Box(0, 0, 1, 1));
  }
}
