package benchlore.schedules.project;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Optional;

/**
 * A small amount of liquid in the measures a shop has: teaspoons up to a tablespoon, tablespoons up
 * to ten, cups up to a litre, to the nearest half spoon or quarter cup. More is poured by the
 * litre. A spoon is known to about a tenth, so an American cup and a metric one are one cup here.
 *
 * @param quarters how many, in quarters of the measure
 * @param measure which
 * @param cubicMetre the amount itself
 */
record ShopMeasure(int quarters, Measure measure, double cubicMetre) {
  private static final Provenance KITCHEN = Provenance.commonPractice("kitchen measures");

  /** What is at hand. */
  enum Measure {
    /** 5 mL. */
    TEASPOON(5e-6, 15e-6),
    /** 15 mL. */
    TABLESPOON(15e-6, 150e-6),
    /** 240 mL, between the American cup and the metric one. */
    CUP(240e-6, 1e-3);

    private final double size;
    private final double below;

    Measure(double cubicMetre, double below) {
      this.size = cubicMetre;
      this.below = below;
    }

    private String word() {
      return switch (this) {
        case TEASPOON -> "teaspoon";
        case TABLESPOON -> "tablespoon";
        case CUP -> "cup";
      };
    }

    /** A spoon is halved, a cup quartered. */
    private int step() {
      return this == CUP ? 1 : 2;
    }
  }

  /** The measure for an amount; empty from a litre on. */
  static Optional<ShopMeasure> of(double cubicMetre) {
    for (Measure measure : Measure.values()) {
      if (cubicMetre < measure.below) {
        double steps = cubicMetre / measure.size * 4 / measure.step();
        int whole = Math.max(1, Numeric.round(steps));
        return Optional.of(new ShopMeasure(whole * measure.step(), measure, cubicMetre));
      }
    }
    return Optional.empty();
  }

  /** In words: {@code about 2½ tablespoons}. */
  String words() {
    int whole = quarters / 4;
    String part = List.of("", "¼", "½", "¾").get(quarters % 4);
    String number = (whole == 0 ? "" : Integer.toString(whole)) + part;
    return "about " + number + " " + measure.word() + (quarters > 4 ? "s" : "");
  }

  /** How it came about. */
  WorkingLine working() {
    return new WorkingLine(
        QuantityKey.SHOP_MEASURE,
        new Figure(
            measure.word() + "s", Quantity.of(quarters / 4.0, Unit.COUNT), Provenance.computed()),
        "amount / "
            + measure.word()
            + ", to the nearest "
            + (measure.step() == 1 ? "quarter" : "half"),
        List.of(
            Figure.computed("amount", cubicMetre, Unit.CUBIC_METRE_LIQUID),
            Figure.of(measure.word(), measure.size, Unit.CUBIC_METRE_LIQUID, KITCHEN)),
        KITCHEN);
  }
}
