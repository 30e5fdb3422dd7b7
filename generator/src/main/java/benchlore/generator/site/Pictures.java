package benchlore.generator.site;

import benchlore.generator.drawing.Drawings;
import benchlore.generator.library.Entry;
import benchlore.generator.library.Kind;
import benchlore.generator.library.Library;
import benchlore.generator.planning.BitData;
import benchlore.generator.planning.ToolDrawing;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Map;
import java.util.NavigableSet;
import java.util.OptionalLong;
import java.util.TreeSet;

/** Small pictures for lists, each a file of its own: every router bit and every drawn tool. */
final class Pictures {
  // A picture shown by <img> sees no style sheet of the page, so it carries the few rules it needs.
  private static final String BIT =
      "<style>.drw-metal{fill:#c9d1d8;stroke:#5c6873}.drw-gullet{fill:#b4bec7}"
          + ".drw-edge{fill:none;stroke:#0b4f8a;stroke-width:2.2}"
          + ".drw-flute{fill:none;stroke:#5c6873}"
          + ".drw-bearing{fill:#8fa3b3;stroke:#1d2730}</style>";

  private static final String TOOL =
      "<style>path{stroke-width:.8;stroke-linejoin:round;stroke-linecap:round}"
          + ".drw-iron{fill:#aeb8c1;stroke:#46525c}.drw-blade{fill:#dfe5ea;stroke:#5c6873}"
          + ".drw-brass{fill:#dcb95f;stroke:#7d6016}.drw-wood{fill:#d9a86c;stroke:#6e4519}"
          + ".drw-body{fill:#5f8f8b;stroke:#2c4f4c}.drw-grip{fill:#5a6067;stroke:#2c3136}"
          + ".drw-dark{fill:#343c44;stroke:#1d2730}.drw-glass{fill:#cfe6f1;stroke:#4f7f96}"
          + ".drw-cloth{fill:#e6dcc8;stroke:#7d735e}.drw-plain{stroke:none}"
          + ".drw-edge{fill:none;stroke:#0b4f8a;stroke-width:1.8}"
          + ".drw-teeth{fill:none;stroke:#0b4f8a;stroke-width:1}"
          + ".drw-thin{fill:none;stroke:#46525c}</style>";

  private final Library library;
  private final Map<String, ToolDrawing> drawings;
  private final NavigableSet<String> ids = new TreeSet<>();

  Pictures(Library library, Map<String, ToolDrawing> drawings) {
    this.library = library;
    this.drawings = drawings;
    library.of(Kind.ROUTER_BITS).stream().map(Entry::id).forEach(ids::add);
    ids.addAll(drawings.keySet());
  }

  /** Every record that has a picture. */
  NavigableSet<String> ids() {
    return Collections.unmodifiableNavigableSet(ids);
  }

  /** How many whole millimetres the picture's side stands for; of bits nothing is said. */
  OptionalLong sideMm(String id) {
    ToolDrawing tool = drawings.get(id);
    return tool == null
        ? OptionalLong.empty()
        : OptionalLong.of(Math.round(Drawings.glyphSideMm(tool.silhouette())));
  }

  /** The picture of a record, its file {@code drawings/<id>.svg}. */
  byte[] file(String id) {
    ToolDrawing tool = drawings.get(id);
    String svg =
        tool == null
            ? Drawings.glyph(BitData.of(library.find(id).orElseThrow()))
            : Drawings.glyph(tool.silhouette());
    int head = svg.indexOf('>') + 1;
    String style = tool == null ? BIT : TOOL;
    return (svg.substring(0, head) + style + svg.substring(head)).getBytes(StandardCharsets.UTF_8);
  }
}
