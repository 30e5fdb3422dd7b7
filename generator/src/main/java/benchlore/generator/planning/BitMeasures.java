package benchlore.generator.planning;

import benchlore.generator.drawing.BearingPlace;
import benchlore.generator.drawing.BitGeometry;
import benchlore.generator.drawing.BitShape;
import benchlore.generator.drawing.FluteForm;
import benchlore.generator.library.Entry;
import benchlore.generator.library.Facts;
import benchlore.generator.library.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A router-bit record as the drawings see it, and what keeps it from being drawn. */
public final class BitMeasures {
  private static final double MM = 1e-3;

  private BitMeasures() {}

  /** The measures of a router-bit record; a range counts with its middle. */
  public static BitGeometry of(Entry bit) {
    Facts f = bit.facts();
    Facts bearing = f.group("bearing");
    return new BitGeometry(
        BitShape.parse(f.words("shape")).orElseThrow(),
        mm(f, "diameter").orElseThrow(),
        mm(f, "cutting-length").orElseThrow(),
        mm(f, "shank").orElseThrow(),
        (int) Math.round(f.datum("flutes").mid()),
        f.word("flute-form", FluteForm.class),
        bearing.word("place", BearingPlace.class),
        mm(bearing, "diameter"),
        mm(f, "radius"),
        figure(f, "angle", 1),
        mm(f, "tip"),
        mm(f, "depth"),
        mm(f, "step"));
  }

  private static OptionalDouble mm(Facts f, String key) {
    return figure(f, key, MM);
  }

  private static OptionalDouble figure(Facts f, String key, double unit) {
    return f.optionalDatum(key)
        .map(datum -> OptionalDouble.of(datum.mid() / unit))
        .orElse(OptionalDouble.empty());
  }

  /** What keeps a router-bit record from being drawn, each at its field. */
  static List<Problem> problems(Entry bit) {
    List<Problem> problems = new ArrayList<>();
    for (String line : BitGeometry.problems(of(bit))) {
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
