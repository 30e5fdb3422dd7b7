package benchlore.generator.picture;

import benchlore.generator.content.LoadResult;
import benchlore.generator.content.Place;
import benchlore.generator.content.Problem;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads an SVG file into its elements, each with its place. What a drawing program notes for itself
 * (names of another namespace, metadata) is passed over.
 */
final class PictureFile {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String NOTES = "metadata";

  private final String file;
  private final String text;
  private final Deque<Open> open = new ArrayDeque<>();
  // The parser tells where it is, not where a tag begins: that is found by going along.
  private int passed;

  /** An element whose end is not read yet. */
  private static final class Open {
    private final Element head;
    private final List<Element> children = new ArrayList<>();
    private final StringBuilder words = new StringBuilder();

    Open(Element head) {
      this.head = head;
    }

    Element closed() {
      String pressed = words.toString().strip().replaceAll("\\s+", " ");
      return new Element(head.name(), head.attributes(), children, pressed, head.place());
    }
  }

  private PictureFile(String file, String text) {
    this.file = file;
    this.text = text;
  }

  /**
   * Parses a file.
   *
   * @param file path as shown to the author
   * @param bytes what it holds
   * @return its root, or what keeps it from being read
   */
  static LoadResult<Element> parse(String file, byte[] bytes) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return failed(
          new Place(file, 1, 1), "the file is not UTF-8 text", "Save it as UTF-8 in your editor.");
    }
    try {
      return new PictureFile(file, text).read();
    } catch (XMLStreamException e) {
      String[] lines = String.valueOf(e.getMessage()).split("\\n(?:Message: )?", 2);
      return failed(
          new Place(
              file,
              Math.max(1, e.getLocation().getLineNumber()),
              Math.max(1, e.getLocation().getColumnNumber())),
          "this is not XML: " + lines[lines.length - 1].strip().replaceAll("\\.$", ""),
          "Look at this line and the one above: close every tag and quote.");
    }
  }

  private static LoadResult<Element> failed(Place place, String what, String todo) {
    return LoadResult.failed(List.of(new Problem(place, "", what, todo)));
  }

  private LoadResult<Element> read() throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    XMLStreamReader xml = factory.createXMLStreamReader(new StringReader(text));
    Element last = null;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        start(xml);
      } else if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
        open.element().words.append(xml.getText());
        pass(event == XMLStreamConstants.CDATA ? "]]>" : "");
      } else if (event == XMLStreamConstants.COMMENT) {
        pass("-->");
      } else if (event == XMLStreamConstants.PROCESSING_INSTRUCTION) {
        pass("?>");
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        last = end();
      }
    }
    boolean svg = last != null && last.name().equals("svg");
    return svg
        ? LoadResult.of(last)
        : failed(new Place(file, 1, 1), "this is no SVG", "Save it as plain SVG.");
  }

  private void start(XMLStreamReader xml) {
    boolean ours = SVG.equals(xml.getNamespaceURI()) && !xml.getLocalName().equals(NOTES);
    String prefix = xml.getPrefix();
    boolean plain = prefix == null || prefix.isEmpty();
    String name = (plain ? "" : prefix + ":") + xml.getLocalName();
    int begin = Math.max(0, text.indexOf("<" + name, passed));
    String tag = tag(begin);
    passed = begin + tag.length();
    Map<String, Element.Attribute> attributes = new HashMap<>();
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      String key = xml.getAttributeLocalName(i);
      // A reference is refused in whatever namespace it is written.
      if (xml.getAttributeNamespace(i) == null || key.equals("href")) {
        Matcher written = Pattern.compile("[\\s:]" + Pattern.quote(key) + "\\s*=").matcher(tag);
        Place place = place(begin + (written.find() ? written.start() + 1 : 0));
        attributes.put(key, new Element.Attribute(xml.getAttributeValue(i), place));
      }
    }
    String kept = ours ? xml.getLocalName() : NOTES;
    open.push(new Open(new Element(kept, attributes, List.of(), "", place(begin))));
  }

  /** Closes the innermost element; what is passed over joins nothing. */
  private Element end() {
    Element closed = open.pop().closed();
    if (!open.isEmpty() && !closed.name().equals(NOTES)) {
      open.element().children.add(closed);
    }
    return closed;
  }

  /** Goes on past the next such ending. */
  private void pass(String ending) {
    int at = text.indexOf(ending, passed);
    if (at >= 0) {
      passed = at + ending.length();
    }
  }

  /** The whole tag that begins here; what stands in quotes does not end it. */
  private String tag(int begin) {
    char quote = 0;
    int end = begin;
    while (end < text.length() && (quote != 0 || text.charAt(end) != '>')) {
      char c = text.charAt(end);
      if (quote == 0 && (c == '"' || c == '\'')) {
        quote = c;
      } else if (c == quote) {
        quote = 0;
      }
      end++;
    }
    return text.substring(begin, end);
  }

  private Place place(int offset) {
    int line = 1;
    int start = 0;
    for (int at = text.indexOf('\n'); at >= 0 && at < offset; at = text.indexOf('\n', at + 1)) {
      line++;
      start = at + 1;
    }
    return new Place(file, line, offset - start + 1);
  }
}
