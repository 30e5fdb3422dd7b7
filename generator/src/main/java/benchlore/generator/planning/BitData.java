package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.bit.BearingPlace;
import benchlore.generator.drawing.bit.BitGeometry;
import benchlore.generator.drawing.bit.BitShape;
import benchlore.generator.drawing.bit.FluteForm;
import benchlore.schedules.quantity.SourcedRange;
import java.util.Optional;
import java.util.OptionalDouble;

/** A router-bit record as the drawings see it. */
public final class BitData {
  private BitData() {}

  /** The measures of a bit, in millimetres; of a range the middle. */
  public static BitGeometry of(LibraryRecord bit) {
    Facts f = bit.facts();
    Facts bearing = f.group("bearing");
    return new BitGeometry(
        BitShape.parse(f.words("shape")).orElseThrow(),
        millimetre(f.datum("diameter")),
        millimetre(f.datum("cutting-length")),
        millimetre(f.datum("shank")),
        (int) f.datum("flutes").mid(),
        f.word("flute-form", FluteForm.class),
        bearing.word("place", BearingPlace.class),
        optional(bearing.optionalDatum("diameter")),
        optional(f.optionalDatum("radius")),
        f.optionalDatum("angle")
            .map(d -> OptionalDouble.of(d.mid()))
            .orElse(OptionalDouble.empty()),
        optional(f.optionalDatum("tip")),
        optional(f.optionalDatum("depth")),
        optional(f.optionalDatum("step")));
  }

  private static OptionalDouble optional(Optional<SourcedRange> datum) {
    return datum.map(d -> OptionalDouble.of(millimetre(d))).orElse(OptionalDouble.empty());
  }

  private static double millimetre(SourcedRange metres) {
    return metres.mid() * 1_000;
  }
}
