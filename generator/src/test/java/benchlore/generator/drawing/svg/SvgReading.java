package benchlore.generator.drawing.svg;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a drawing back as XML and estimates where its texts lie. */
public final class SvgReading {
  private final Document document;

  private SvgReading(Document document) {
    this.document = document;
  }

  public static SvgReading of(String svg) {
    try {
      DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(null);
      return new SvgReading(builder.parse(new InputSource(new StringReader(svg))));
    } catch (Exception e) {
      throw new AssertionError("not well-formed: " + e.getMessage() + "\n" + svg, e);
    }
  }

  public record TextBox(String text, double x0, double y0, double x1, double y1) {
    boolean meets(TextBox other) {
      return x0 < other.x1 && other.x0 < x1 && y0 < other.y1 && other.y0 < y1;
    }
  }

  public double[] viewBox() {
    String[] parts = document.getDocumentElement().getAttribute("viewBox").split(" ", -1);
    double[] box = new double[parts.length];
    for (int i = 0; i < parts.length; i++) {
      box[i] = Double.parseDouble(parts[i]);
    }
    return box;
  }

  public List<Element> elements(String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** Boxes for the widest of the usual typefaces. */
  public List<TextBox> texts() {
    List<TextBox> boxes = new ArrayList<>();
    for (Element text : elements("text")) {
      boolean figure = text.getAttribute("class").contains("drw-value");
      double size = figure ? 12 : 11;
      double width = width(text.getTextContent(), figure) * size;
      double x = Double.parseDouble(text.getAttribute("x"));
      double y = Double.parseDouble(text.getAttribute("y"));
      double left =
          switch (text.getAttribute("text-anchor")) {
            case "start" -> x;
            case "middle" -> x - width / 2;
            case "end" -> x - width;
            default -> throw new AssertionError("no anchor: " + text.getTextContent());
          };
      boxes.add(
          new TextBox(text.getTextContent(), left, y - size * 0.75, left + width, y + size * 0.2));
    }
    return boxes;
  }

  /** Fails if a text leaves the picture or lies over another. */
  public void checkTexts(String name) {
    double[] view = viewBox();
    List<TextBox> texts = texts();
    for (int i = 0; i < texts.size(); i++) {
      TextBox a = texts.get(i);
      boolean inside = a.x0() >= 0 && a.x1() <= view[2] && a.y0() >= 0 && a.y1() <= view[3];
      assertTrue(inside, () -> name + ": outside: " + a);
      for (TextBox b : texts.subList(i + 1, texts.size())) {
        assertFalse(a.meets(b), () -> name + ": " + a + " meets " + b);
      }
    }
  }

  private static double width(String text, boolean bold) {
    double width = 0;
    for (int i = 0; i < text.length(); i++) {
      double regular =
          switch (text.charAt(i)) {
            case ' ', '.', ',', ';', 'i', 'l', 't', 'f', 'r' -> 0.36;
            case 'm', 'w' -> 0.95;
            default -> 0.63;
          };
      width += bold ? regular * 1.1 : regular;
    }
    return width;
  }
}
