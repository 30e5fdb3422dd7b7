package benchlore.generator.planning;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.drawing.Knot;
import benchlore.generator.drawing.Material;
import benchlore.generator.drawing.Mirror;
import benchlore.generator.drawing.Point;
import benchlore.generator.drawing.Shape;
import benchlore.generator.drawing.Silhouette;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A drawing's file as the drawings see it. */
final class SilhouetteData {
  private SilhouetteData() {}

  /** The silhouette a checked file describes. */
  static Silhouette of(Facts file) {
    return new Silhouette(
        file.word("view", Silhouette.View.class),
        file.words("says").strip(),
        file.flag("level"),
        file.group("size").datum("wide").mid() * 1_000,
        file.group("size").datum("high").mid() * 1_000,
        file.groups("parts").stream().map(SilhouetteData::part).toList(),
        file.groups("callouts").stream().map(SilhouetteData::callout).toList(),
        file.groups("moves").stream().map(SilhouetteData::travel).toList());
  }

  private static Silhouette.Part part(Facts part) {
    Material material = part.word("material", Material.class);
    List<Shape> holes = part.groups("holes").stream().map(SilhouetteData::shape).toList();
    boolean aside = part.flag("aside");
    boolean small = aside || material == Material.LINE;
    boolean fine = part.find("fine").isPresent() ? part.flag("fine") : small;
    return new Silhouette.Part(
        material,
        placed(part, shape(part)),
        holes.stream().reduce(Shape::and).map(all -> placed(part, all)),
        fine,
        aside);
  }

  /** The shape where the part says it stands. */
  private static Shape placed(Facts part, Shape shape) {
    Shape placed = shape;
    if (part.find("mirror").isPresent() && !joined(part)) {
      placed = placed.mirrored(part.word("mirror", Mirror.class));
    }
    if (part.find("turn").isPresent()) {
      Facts turn = part.group("turn");
      placed = placed.turned(number(turn, "by"), point(turn, "about"));
    }
    Shape first = placed;
    for (Point also : points(part, "also")) {
      placed = placed.and(first.shifted(also.x(), also.z()));
    }
    return placed;
  }

  private static boolean joined(Facts part) {
    return !halves(part).isEmpty();
  }

  /** The whole outline of which only half is written; else empty. */
  private static List<Knot> halves(Facts part) {
    for (String field : List.of("polygon", "smooth")) {
      if (part.find(field).isPresent() && part.find("mirror").isPresent()) {
        return Knot.joined(knots(part, field), part.word("mirror", Mirror.class));
      }
    }
    return List.of();
  }

  private static Shape shape(Facts part) {
    String form = form(part);
    Facts own = part.find(form).orElseThrow() instanceof Fact.Group ? part.group(form) : part;
    return switch (form) {
      case "rect" -> Shape.rect(point(own, "at"), point(own, "size"), number(own, "radius"));
      case "circle" -> {
        double radius = number(own, "radius");
        yield Shape.ellipse(point(own, "at"), new Point(radius, radius));
      }
      case "ellipse" -> Shape.ellipse(point(own, "at"), point(own, "radii"));
      case "polygon" -> Shape.polygon(outline(part, form));
      case "smooth" -> Shape.smooth(outline(part, form));
      case "line" -> Shape.line(knots(part, form));
      case "curve" -> Shape.curve(knots(part, form));
      case "bar" -> Shape.bar(knots(own, "along"), number(own, "thick"));
      case "ring" ->
          Shape.ring(point(own, "at"), number(own, "outer"), number(own, "inner"), sweep(own));
      case "arc" -> Shape.arc(point(own, "at"), number(own, "radius"), sweep(own));
      case "path" -> Shape.path(rows(part, form));
      default -> pattern(form, own);
    };
  }

  private static Shape pattern(String form, Facts own) {
    return switch (form) {
      case "teeth" ->
          Shape.teeth(
              points(own, "along"),
              number(own, "pitch"),
              number(own, "depth"),
              number(own, "lean"));
      case "thread" ->
          Shape.thread(points(own, "along"), number(own, "diameter"), number(own, "pitch"));
      case "hatch" ->
          Shape.hatch(
              points(own, "inside"), number(own, "pitch"), number(own, "angle"), own.flag("cross"));
      case "dots" -> Shape.dots(points(own, "inside"), number(own, "pitch"), number(own, "radius"));
      default -> throw new IllegalArgumentException("no such form: " + form);
    };
  }

  private static final List<String> FORMS =
      List.of(
          "rect", "circle", "ellipse", "polygon", "smooth", "line", "curve", "bar", "ring", "arc",
          "path", "teeth", "thread", "hatch", "dots");

  /** The one field of a part that says its form. */
  static String form(Facts part) {
    return FORMS.stream().filter(form -> part.find(form).isPresent()).findFirst().orElseThrow();
  }

  private static List<Knot> outline(Facts part, String form) {
    List<Knot> whole = halves(part);
    return whole.isEmpty() ? knots(part, form) : whole;
  }

  private static Silhouette.Callout callout(Facts callout) {
    Silhouette.Side side =
        callout.find("side").isPresent()
            ? callout.word("side", Silhouette.Side.class)
            : Silhouette.Side.NEARER;
    return new Silhouette.Callout(callout.words("text"), point(callout, "at"), side);
  }

  private static Silhouette.Travel travel(Facts move) {
    Facts turn = move.group("turn");
    return new Silhouette.Travel(
        points(move, "slide"),
        move.find("turn").isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Silhouette.Turn(point(turn, "about"), number(turn, "radius"), sweep(turn))));
  }

  private static Shape.Sweep sweep(Facts own) {
    double end = own.find("end").isPresent() ? number(own, "end") : 360;
    return new Shape.Sweep(number(own, "start"), end);
  }

  /** A number; 0 where absent. */
  private static double number(Facts facts, String key) {
    return facts.find(key).isPresent() ? Double.parseDouble(facts.words(key)) : 0;
  }

  static Point point(Facts facts, String key) {
    return at(numbers(facts.find(key).orElseThrow()));
  }

  private static Point at(List<Double> numbers) {
    return new Point(numbers.get(0), numbers.get(1));
  }

  private static List<Point> points(Facts facts, String key) {
    return rows(facts, key).stream().map(SilhouetteData::at).toList();
  }

  private static List<List<Double>> rows(Facts facts, String key) {
    return items(facts, key).stream().map(SilhouetteData::numbers).toList();
  }

  private static List<Fact> items(Facts facts, String key) {
    return facts.find(key).map(fact -> ((Fact.Items) fact).items()).orElse(List.of());
  }

  private static List<Double> numbers(Fact list) {
    List<Double> numbers = new ArrayList<>();
    for (Fact item : ((Fact.Items) list).items()) {
      numbers.add(Double.parseDouble(((Fact.Words) item).text()));
    }
    return numbers;
  }

  private static List<Knot> knots(Facts facts, String key) {
    boolean flows = key.equals("smooth") || key.equals("curve");
    List<Knot> knots = new ArrayList<>();
    for (Fact item : items(facts, key)) {
      List<Fact> row = ((Fact.Items) item).items();
      Point at = at(numbers(new Fact.Items(row.subList(0, 2), item.spot())));
      boolean third = row.size() > 2;
      double radius = third && !flows ? Double.parseDouble(((Fact.Words) row.get(2)).text()) : 0;
      knots.add(new Knot(at, flows && !third, radius));
    }
    return knots;
  }
}
