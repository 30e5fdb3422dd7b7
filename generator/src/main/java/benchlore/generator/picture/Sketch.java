package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Svg;
import benchlore.schedules.present.Amount;
import benchlore.schedules.present.FigureText;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.quantity.Quantity;
import java.util.List;

/** A sketch or the picture of a fault, from its file, as it stands there. */
public final class Sketch {
  /**
   * What is carried over, in this order; whatever else a drawing program writes, such as the
   * colours it shows, is not.
   */
  private static final List<String> KEPT =
      List.of(
          "class",
          "text-anchor",
          "fill-rule",
          "transform",
          "x",
          "y",
          "width",
          "height",
          "rx",
          "ry",
          "cx",
          "cy",
          "r",
          "x1",
          "y1",
          "x2",
          "y2",
          "points");

  /** The class of a text that is a figure. */
  private static final String FIGURE = "drw-value";

  private final Element root;

  private Sketch(Element root) {
    this.root = root;
  }

  /** The picture of a file that is checked. */
  static Sketch of(Element root) {
    return new Sketch(root);
  }

  /**
   * The picture for a page.
   *
   * @param title its name there
   * @param idPrefix a letter, then letters, digits, - or _; unique on the page
   */
  public String page(String title, String idPrefix) {
    Box frame = Frames.of(root).orElseThrow();
    Label label = new Label(idPrefix, title, root.children("desc").get(0).text());
    return written(Svg.titled(frame.wide(), frame.high(), label), idPrefix + "-");
  }

  /** A square one, small, to stand beside its name; hidden from screen readers. */
  public String small() {
    return written(Svg.decorative(Frames.of(root).orElseThrow().wide()), "");
  }

  private String written(Svg svg, String ids) {
    StringBuilder out = new StringBuilder();
    root.children().forEach(child -> write(out, child, ids));
    return svg.markup(out.toString()).end();
  }

  private static void write(StringBuilder out, Element element, String ids) {
    if (List.of("title", "desc").contains(element.name())) {
      return;
    }
    String attributes = attributes(element, ids);
    boolean group = element.name().equals("g") || element.name().equals("defs");
    boolean bare = group && attributes.isEmpty();
    boolean empty = element.children().isEmpty() && element.text().isEmpty();
    if (!bare) {
      out.append('<').append(element.name()).append(attributes).append(empty ? "/>" : ">");
    }
    out.append(Svg.escape(element.text()));
    element.children().forEach(child -> write(out, child, ids));
    if (!bare && !empty) {
      out.append("</").append(element.name()).append('>');
    }
  }

  private static String attributes(Element element, String ids) {
    StringBuilder out = new StringBuilder();
    if (!element.value("id").isEmpty() && element.name().equals("clipPath")) {
      add(out, "id", ids + element.value("id"));
    }
    for (String name : KEPT) {
      add(out, name, element.value(name));
    }
    if (element.value("class").contains(FIGURE)) {
      add(out, "data-imperial", imperial(element.text()));
    }
    String clip = element.value("clip-path");
    add(out, "clip-path", clip.replace("url(#", "url(#" + ids));
    add(out, "d", element.value("d").strip().replaceAll("\\s*([A-Za-z,]|\\s)\\s*", "$1"));
    return out.toString();
  }

  /** What a reader of inches reads for a figure such as {@code 200 mm}; empty for other words. */
  private static String imperial(String text) {
    return Amount.find(text)
        .map(amount -> Quantity.of(amount.value(), amount.unit().unit()))
        .map(figure -> FigureText.text(figure, UnitSystem.IMPERIAL))
        .orElse("");
  }

  private static void add(StringBuilder out, String name, String value) {
    if (!value.isEmpty()) {
      String text = Svg.escape(value.strip().replaceAll("\\s+", " "));
      out.append(' ').append(name).append("=\"").append(text).append('"');
    }
  }
}
