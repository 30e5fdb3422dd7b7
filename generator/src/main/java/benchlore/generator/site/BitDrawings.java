package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.bit.BitGeometry;
import benchlore.generator.drawing.bit.Bits;
import benchlore.generator.page.CaptionedDrawing;
import benchlore.generator.planning.BitData;
import java.util.List;

/** Drawings for a router bit: the bit and the cut it leaves. */
final class BitDrawings {
  private BitDrawings() {}

  /** The drawings of a record's page; none for other kinds. */
  static List<CaptionedDrawing> page(LibraryRecord entry) {
    if (entry.kind() != Kind.ROUTER_BITS) {
      return List.of();
    }
    BitGeometry geometry = BitData.of(entry);
    return List.of(
        new CaptionedDrawing(
            Bits.bit(geometry, entry.title(), "bit"), "The bit, in the size below"),
        new CaptionedDrawing(
            Bits.cut(geometry, entry.title() + ": the cut it leaves", "cut"),
            "The cut it leaves, and the way to feed"));
  }
}
