package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.bit.BitGeometry;
import benchlore.generator.drawing.bit.Bits;
import benchlore.generator.planning.BitData;
import java.util.List;

/** Drawings for a router bit: the bit and the cut it leaves. */
final class BitDrawings {
  /**
   * A drawing on a page.
   *
   * @param svg the drawing
   * @param caption words under it
   */
  public record Figure(String svg, String caption) {}

  private BitDrawings() {}

  /** The drawings of a record's page; none for other kinds. */
  static List<Figure> of(LibraryRecord entry) {
    if (entry.kind() != Kind.ROUTER_BITS) {
      return List.of();
    }
    BitGeometry geometry = BitData.of(entry);
    return List.of(
        new Figure(Bits.bit(geometry, entry.title(), "bit"), "The bit, in the size below"),
        new Figure(
            Bits.cut(geometry, entry.title() + ": the cut it leaves", "cut"),
            "The cut it leaves, and the way to feed"));
  }
}
