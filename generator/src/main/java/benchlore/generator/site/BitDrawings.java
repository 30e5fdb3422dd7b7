package benchlore.generator.site;

import benchlore.generator.drawing.BitGeometry;
import benchlore.generator.drawing.Drawings;
import benchlore.generator.library.Entry;
import benchlore.generator.library.Kind;
import benchlore.generator.planning.BitData;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Drawings for a router bit: the bit, the cut it leaves, and a small picture for lists. */
final class BitDrawings {
  /**
   * A drawing on a page.
   *
   * @param svg the drawing
   * @param caption words under it
   */
  public record Figure(String svg, String caption) {}

  // A picture shown by <img> sees no style sheet of the page, so it carries the few rules it needs.
  private static final String STYLE =
      "<style>.drw-metal{fill:#c9d1d8;stroke:#5c6873}.drw-gullet{fill:#b4bec7}"
          + ".drw-edge{fill:none;stroke:#0b4f8a;stroke-width:2.2}"
          + ".drw-flute{fill:none;stroke:#5c6873}"
          + ".drw-bearing{fill:#8fa3b3;stroke:#1d2730}</style>";

  private BitDrawings() {}

  /** The drawings of a record's page; none for other kinds. */
  static List<Figure> of(Entry entry) {
    if (entry.kind() != Kind.ROUTER_BITS) {
      return List.of();
    }
    BitGeometry geometry = BitData.of(entry);
    return List.of(
        new Figure(Drawings.bit(geometry, entry.title(), "bit"), "The bit, in the size below"),
        new Figure(
            Drawings.cut(geometry, entry.title() + ": the cut it leaves", "cut"),
            "The cut it leaves, and the way to feed"));
  }

  /** The small picture as a file of its own. */
  static byte[] picture(Entry entry) {
    String svg = Drawings.glyph(BitData.of(entry));
    int head = svg.indexOf('>') + 1;
    return (svg.substring(0, head) + STYLE + svg.substring(head)).getBytes(StandardCharsets.UTF_8);
  }
}
