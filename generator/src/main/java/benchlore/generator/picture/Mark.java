package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Svg;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/**
 * One outline of a tool's picture, in millimetres, out of its groups.
 *
 * @param element what draws it
 * @param outline where, every transform done
 * @param aside whether it stands beside the tool: an inset, a section, a second view
 * @param shown where it is shown
 */
record Mark(Element element, Path2D.Double outline, boolean aside, Shown shown) {
  /** Which picture shows a mark. */
  enum Shown {
    /** The page's and the small one. */
    BOTH,
    /** The page's alone: too fine for the small one. */
    PAGE,
    /** The small one alone, in place of something finer. */
    SMALL
  }

  /** What a group hands on to what is in it. */
  private record Group(AffineTransform transform, boolean aside, String small) {
    Group within(Element element) {
      AffineTransform all = new AffineTransform(transform);
      Transforms.parse(element.value("transform")).ifPresent(all::concatenate);
      String here = element.value("data-small");
      return new Group(
          all, aside || element.value("data-aside").equals("true"), here.isEmpty() ? small : here);
    }
  }

  /** The marks of a checked picture, the hindmost first. */
  static List<Mark> of(Element root) {
    List<Mark> marks = new ArrayList<>();
    collect(root, new Group(new AffineTransform(), false, ""), marks);
    return marks;
  }

  private static void collect(Element element, Group group, List<Mark> marks) {
    Group own = group.within(element);
    if (Outlines.DRAWN.contains(element.name())) {
      Path2D.Double outline = Outlines.of(element).orElseThrow();
      outline.transform(own.transform());
      marks.add(new Mark(element, outline, own.aside(), shown(element, own)));
    }
    element.children().forEach(child -> collect(child, own, marks));
  }

  private static Shown shown(Element element, Group group) {
    List<String> looks = element.looks();
    if (group.small().equals("only")) {
      return Shown.SMALL;
    }
    boolean fine = group.aside() || looks.contains("drw-thin");
    boolean left = group.small().isEmpty() ? fine : group.small().equals("no");
    return left || looks.contains("drw-move") ? Shown.PAGE : Shown.BOTH;
  }

  /** Whether it shows what slides or turns. */
  boolean moves() {
    return element.looks().contains("drw-move");
  }

  /** Whether it is part of the tool itself, whose size is told. */
  boolean sized() {
    return !aside && !moves() && shown != Shown.SMALL;
  }

  /** Draws it. */
  void draw(Svg svg, AffineTransform page) {
    String looks = String.join(" ", element.looks());
    String d = Outlines.data(outline, page);
    if (element.value("fill-rule").equals("evenodd")) {
      svg.pierced(looks, d);
    } else {
      svg.path(looks, d);
    }
  }
}
