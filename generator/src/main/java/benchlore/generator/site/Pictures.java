package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.bit.Bits;
import benchlore.generator.picture.ContentPictures;
import benchlore.generator.picture.ToolPicture;
import benchlore.generator.planning.BitData;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.NavigableSet;
import java.util.OptionalLong;
import java.util.TreeSet;

/** Small pictures for lists, each a file of its own: router bits, drawn tools, faults. */
final class Pictures {
  private final Library library;
  private final ContentPictures drawn;
  private final PictureStyle style;
  private final NavigableSet<String> ids = new TreeSet<>();

  Pictures(Library library, ContentPictures drawn, PictureStyle style) {
    this.library = library;
    this.drawn = drawn;
    this.style = style;
    library.of(Kind.ROUTER_BITS).stream().map(LibraryRecord::id).forEach(ids::add);
    ids.addAll(drawn.tools().keySet());
    for (LibraryRecord fault : library.of(Kind.DEFECTS)) {
      if (!fault.drawings().isEmpty()) {
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
    ToolPicture tool = drawn.tools().get(id);
    return tool == null ? OptionalLong.empty() : OptionalLong.of(Math.round(tool.sideMm()));
  }

  /** The picture of a record, its file {@code drawings/<id>.svg}. */
  byte[] file(String id) {
    return style.styled(drawing(id)).getBytes(StandardCharsets.UTF_8);
  }

  private String drawing(String id) {
    LibraryRecord entry = library.find(id).orElseThrow();
    if (entry.kind() == Kind.DEFECTS) {
      return drawn.faults().get(entry.drawings().get(0).name()).small();
    }
    ToolPicture tool = drawn.tools().get(id);
    return tool == null ? Bits.glyph(BitData.of(entry)) : tool.small();
  }
}
