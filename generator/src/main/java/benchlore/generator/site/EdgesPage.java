package benchlore.generator.site;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.bit.Bits;
import benchlore.generator.drawing.bit.EdgeShape;
import benchlore.generator.page.EdgeProfilesModel;
import benchlore.generator.planning.BitData;
import benchlore.generator.units.Display;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.List;

/**
 * Fills the page of every edge profile at one scale: drawn from the bit that cuts it, or by its own
 * shape.
 */
final class EdgesPage {
  private final Library library;
  private final List<Facts> rows;

  EdgesPage(Library library, List<Facts> rows) {
    this.library = library;
    this.rows = List.copyOf(rows);
  }

  EdgeProfilesModel model() {
    List<EdgeProfilesModel.Edge> edges = new ArrayList<>();
    for (Facts row : rows) {
      edges.add(edge(row, "edge-" + (edges.size() + 1)));
    }
    return new EdgeProfilesModel(edges);
  }

  private EdgeProfilesModel.Edge edge(Facts row, String id) {
    List<LibraryRecord> cutBy = new ArrayList<>();
    library.find(row.words("bit")).ifPresent(cutBy::add);
    row.list("needs").forEach(need -> cutBy.add(library.entries().get(need)));
    return new EdgeProfilesModel.Edge(
        row.words("title"),
        String.join(", ", row.list("also")),
        svg(row, id),
        size(row),
        cutBy,
        row.words("where"),
        row.words("wears"));
  }

  private String svg(Facts row, String id) {
    String title = row.words("title") + ", the end of a board";
    if (row.words("bit").isEmpty()) {
      EdgeShape shape = EdgeShape.parse(row.words("shape")).orElseThrow();
      return Bits.edge(shape, row.datum("size").mid() * 1_000, title, id);
    }
    return Bits.edgeCut(BitData.of(bit(row)), title, id);
  }

  private LibraryRecord bit(Facts row) {
    return library.find(row.words("bit")).orElseThrow();
  }

  /** What is cut: the bit's radius or reach, or the size of the shape. */
  private String size(Facts row) {
    if (row.words("bit").isEmpty()) {
      SourcedRange size = row.datum("size");
      return size.high() == 0 ? "nothing cut" : "drawn with " + Display.html(size) + " cut";
    }
    return bit(row)
        .facts()
        .optionalDatum("radius")
        .or(() -> bit(row).facts().optionalDatum("depth"))
        .map(radius -> "drawn from a bit of " + Display.html(radius) + measured(row))
        .orElse("");
  }

  private String measured(Facts row) {
    return bit(row).facts().optionalDatum("radius").isPresent() ? " radius" : " depth";
  }
}
