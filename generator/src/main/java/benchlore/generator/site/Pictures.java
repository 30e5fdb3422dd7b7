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

/** Small pictures for lists, each a file of its own: router bits, drawn tools, faults. */
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

  private static final String FAULT =
      "<style>path,rect,circle{stroke-linejoin:round;stroke-linecap:round}"
          + ".drw-stock{fill:#f3dfbf;stroke:#7a5322}.drw-cut{fill:#fff;stroke:#7a5322}"
          + ".drw-hatch{fill:none;stroke:#c49a63;stroke-width:.8}"
          + ".drw-ring{fill:none;stroke:#7a5322;stroke-width:.9}.drw-dim{stroke:#44525e}"
          + ".drw-edge{fill:none;stroke:#0b4f8a;stroke-width:2.2}"
          + ".drw-film{fill:#d39a4e;stroke:#7a5322}"
          + ".drw-film-deep{fill:#a9692a;fill-opacity:.75;stroke:#7a5322}"
          + ".drw-film-line{fill:none;stroke:#6b3f14;stroke-width:1.1}"
          + ".drw-film-fold{fill:none;stroke:#6b3f14;stroke-width:2.6}"
          + ".drw-dimple{fill:#a9692a;fill-opacity:.55}"
          + ".drw-rim{fill:#a9692a;stroke:#6b3f14;stroke-width:.9}"
          + ".drw-shine{fill:#fff;fill-opacity:.28}"
          + ".drw-shine-line{fill:none;stroke:#fff;stroke-opacity:.7;stroke-width:1.2}"
          + ".drw-haze{fill:#fff;fill-opacity:.55}"
          + ".drw-haze-line{fill:none;stroke:#fff;stroke-opacity:.8;stroke-width:5}"
          + ".drw-scorch{fill:#40200c;fill-opacity:.55}"
          + ".drw-scorch-line{fill:none;stroke:#40200c;stroke-opacity:.6;stroke-width:3}"
          + ".drw-hole{fill:#1d2730}.drw-pit{fill:#fff;fill-opacity:.75;stroke:#7a5322}"
          + ".drw-crack{fill:none;stroke:#1d2730;stroke-width:1.1}"
          + ".drw-thick{stroke-width:2.6}</style>";

  private final Library library;
  private final Map<String, ToolDrawing> drawings;
  private final NavigableSet<String> ids = new TreeSet<>();

  Pictures(Library library, Map<String, ToolDrawing> drawings) {
    this.library = library;
    this.drawings = drawings;
    library.of(Kind.ROUTER_BITS).stream().map(Entry::id).forEach(ids::add);
    ids.addAll(drawings.keySet());
    for (Entry fault : library.of(Kind.DEFECTS)) {
      if (Drawings.faultGlyph(fault.id()).isPresent()) {
        ids.add(fault.id());
      }
    }
  }

  /** Every record that has a picture. */
  NavigableSet<String> ids() {
    return Collections.unmodifiableNavigableSet(ids);
  }

  /** How many whole millimetres the picture's side stands for; only tools are to scale. */
  OptionalLong sideMm(String id) {
    ToolDrawing tool = drawings.get(id);
    return tool == null
        ? OptionalLong.empty()
        : OptionalLong.of(Math.round(Drawings.glyphSideMm(tool.silhouette())));
  }

  /** The picture of a record, its file {@code drawings/<id>.svg}. */
  byte[] file(String id) {
    Entry entry = library.find(id).orElseThrow();
    if (entry.kind() == Kind.DEFECTS) {
      return styled(FAULT, Drawings.faultGlyph(id).orElseThrow());
    }
    ToolDrawing tool = drawings.get(id);
    return tool == null
        ? styled(BIT, Drawings.glyph(BitData.of(entry)))
        : styled(TOOL, Drawings.glyph(tool.silhouette()));
  }

  private static byte[] styled(String style, String svg) {
    int head = svg.indexOf('>') + 1;
    return (svg.substring(0, head) + style + svg.substring(head)).getBytes(StandardCharsets.UTF_8);
  }
}
