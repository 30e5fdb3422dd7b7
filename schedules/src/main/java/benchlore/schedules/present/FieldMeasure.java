package benchlore.schedules.present;

import java.util.OptionalDouble;

/**
 * A measure in a form: the form keeps a number in the field's own metric unit, the reader types and
 * sees it in theirs.
 */
public final class FieldMeasure {
  private static final int TYPED_FIGURES = 12;
  private static final int SHOWN_FIGURES = 4;

  private FieldMeasure() {}

  /**
   * What was typed, in the field's unit: {@code 18}, {@code 18,5 mm}, {@code 1 1/2 in}, {@code 40
   * F}. A unit behind the number wins over the reader's system.
   *
   * @param typed as it was typed
   * @param field the field's metric unit
   * @param system what a number without a unit is in
   * @return empty if it is no number, or its unit is not of the field's kind
   */
  public static OptionalDouble parse(String typed, NamedUnit field, UnitSystem system) {
    Amount.Parts parts = Amount.split(typed.trim());
    OptionalDouble number = Amount.number(parts.number());
    NamedUnit unit =
        parts.unit().isEmpty() ? unit(field, system) : NamedUnit.find(parts.unit()).orElse(null);
    if (number.isEmpty() || unit == null || unit.unit() != field.unit()) {
      return OptionalDouble.empty();
    }
    if (unit == field) {
      return number;
    }
    // An inch is no whole number of binary fractions of a millimetre: without the dust.
    double value = field.fromEngine(unit.toEngine(number.getAsDouble()));
    return OptionalDouble.of(NumberText.trimmed(value, TYPED_FIGURES));
  }

  /**
   * A value of the field as the reader's rule, tape or thermometer would read it, without the unit.
   *
   * @param value in the field's unit
   */
  public static String text(double value, NamedUnit field, UnitSystem system) {
    NamedUnit unit = unit(field, system);
    double shown = unit.fromEngine(field.toEngine(value));
    if (unit == NamedUnit.INCH && Math.abs(shown) * 64 >= 1) {
      return NumberText.fraction(shown);
    }
    return NumberText.plain(unit == field ? value : shown, SHOWN_FIGURES);
  }

  /**
   * The unit of a field by what stands beside it; nothing stands beside a count.
   *
   * @throws IllegalArgumentException if no unit is called so
   */
  public static NamedUnit field(String symbol) {
    if (symbol.isEmpty()) {
      return NamedUnit.COUNT;
    }
    return NamedUnit.find(symbol)
        .orElseThrow(() -> new IllegalArgumentException("no unit is called " + symbol));
  }

  /** The unit a field is shown and typed in. */
  public static NamedUnit unit(NamedUnit field, UnitSystem system) {
    if (system == UnitSystem.METRIC) {
      return field;
    }
    return switch (field) {
      case MILLIMETRE -> NamedUnit.INCH;
      case METRE -> NamedUnit.FOOT;
      case SQUARE_METRE -> NamedUnit.SQUARE_FOOT;
      case CUBIC_METRE -> NamedUnit.CUBIC_FOOT;
      case CUBIC_METRE_PER_HOUR -> NamedUnit.CUBIC_FOOT_PER_MINUTE;
      case MILLIMETRE_PER_MINUTE -> NamedUnit.INCH_PER_MINUTE;
      case LITRE -> NamedUnit.QUART;
      case KILOGRAM -> NamedUnit.POUND;
      case NEWTON -> NamedUnit.POUND_FORCE;
      case MICRON -> NamedUnit.MIL;
      case CELSIUS -> NamedUnit.FAHRENHEIT;
      default -> field;
    };
  }
}
