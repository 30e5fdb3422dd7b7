package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Problem;
import benchlore.generator.drawing.bit.BitGeometry;
import java.util.ArrayList;
import java.util.List;

/** What keeps a router-bit record from being drawn. */
final class BitChecks {
  private BitChecks() {}

  /** What keeps a router-bit record from being drawn, each at its field. */
  static List<Problem> problems(LibraryRecord bit) {
    List<Problem> problems = new ArrayList<>();
    for (String line : BitGeometry.problems(BitData.of(bit))) {
      int colon = line.indexOf(':');
      String component = line.substring(0, colon);
      String field = field(component);
      Facts facts = component.startsWith("bearing") ? bit.facts().group("bearing") : bit.facts();
      String what = "this bit can't be drawn: " + field + line.substring(colon);
      problems.add(facts.spot(field).problem(what, "Correct it; lengths here count in mm."));
    }
    return problems;
  }

  private static String field(String component) {
    return switch (component) {
      case "bearingMm" -> "diameter";
      case "bearing" -> "place";
      default -> EngineRefusal.field(component.replaceAll("(Mm|Degrees)$", ""));
    };
  }
}
