package benchlore.generator.site;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.joint.JointDrawing;
import benchlore.generator.drawing.joint.JointForm;
import benchlore.generator.drawing.joint.JointSizes;
import benchlore.generator.page.CaptionedDrawing;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Joints drawn from the rows of {@code joints.yaml}, for their page and for the records. */
final class JointDrawings {
  private static final String THICKNESS = "t is the thickness of the board";

  private final List<Facts> rows;

  JointDrawings(List<Facts> rows) {
    this.rows = List.copyOf(rows);
  }

  List<Facts> rows() {
    return rows;
  }

  /** The joints a record stands for or helps to make. */
  List<CaptionedDrawing> page(LibraryRecord entry) {
    List<CaptionedDrawing> figures = new ArrayList<>();
    for (Facts row : rows) {
      if (row.list("related").contains(entry.id())) {
        figures.add(new CaptionedDrawing(svg(row), row.words("title") + "; " + THICKNESS));
      }
    }
    return figures;
  }

  /** One row's drawing. */
  static String svg(Facts row) {
    String title = row.words("title") + ", parts apart";
    return JointDrawing.draw(form(row), sizes(row), title, "joint-" + form(row).word());
  }

  static JointForm form(Facts row) {
    return JointForm.parse(row.words("form")).orElseThrow();
  }

  private static JointSizes sizes(Facts row) {
    Map<String, JointSizes.Size> sizes = new HashMap<>();
    row.group("sizes")
        .data()
        .facts()
        .forEach((name, fact) -> sizes.put(name, size(((Fact.Measure) fact).datum())));
    return new JointSizes(sizes);
  }

  /** Shares as fractions, lengths in millimetres. */
  private static JointSizes.Size size(SourcedRange datum) {
    double factor = 1;
    if (datum.unit() == Unit.PERCENT) {
      factor = 0.01;
    } else if (datum.unit() == Unit.METRE) {
      factor = 1_000;
    }
    return new JointSizes.Size(datum.low() * factor, datum.high() * factor);
  }
}
