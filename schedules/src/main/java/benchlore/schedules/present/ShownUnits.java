package benchlore.schedules.present;

import benchlore.schedules.quantity.Unit;

/** Which of the named units a figure is shown in, by its size and the reader's system. */
final class ShownUnits {
  private static final double TWO_HOURS = 7_200;
  private static final double TWO_DAYS = 172_800;

  private ShownUnits() {}

  /**
   * The unit to show in.
   *
   * @param value in {@code unit}; of a range, its upper end
   * @param unit the engine's unit
   * @param system the reader's
   */
  static NamedUnit of(double value, Unit unit, UnitSystem system) {
    double size = Math.abs(value);
    return system == UnitSystem.IMPERIAL ? imperial(size, unit) : metric(size, unit);
  }

  private static NamedUnit metric(double size, Unit unit) {
    return switch (unit) {
      case SECOND -> time(size);
      case METRE -> size < 1 && size > 0 ? NamedUnit.MILLIMETRE : NamedUnit.METRE;
      case CUBIC_METRE_LIQUID -> size < 1e-3 ? NamedUnit.MILLILITRE : NamedUnit.LITRE;
      case KILOGRAM -> size < 1 ? NamedUnit.GRAM : NamedUnit.KILOGRAM;
      case PASCAL -> pressure(size);
      case NEWTON -> size < 10_000 ? NamedUnit.NEWTON : NamedUnit.KILONEWTON;
      case MICRON -> size < 1_000 ? NamedUnit.MICRON : NamedUnit.MILLIMETRE_OF_FILM;
      default -> only(unit);
    };
  }

  /** The unit of kinds that are shown in one alone. */
  private static NamedUnit only(Unit unit) {
    return switch (unit) {
      case KILOGRAM_PER_SQUARE_METRE -> NamedUnit.GRAM_PER_SQUARE_METRE;
      case AIRBORNE_KILOGRAM_PER_CUBIC_METRE -> NamedUnit.MILLIGRAM_PER_CUBIC_METRE;
      case KILOGRAM_PER_MOLE -> NamedUnit.GRAM_PER_MOLE;
      case JOULE_PER_MOLE -> NamedUnit.KILOJOULE_PER_MOLE;
      case CUBIC_METRE_PER_SECOND -> NamedUnit.CUBIC_METRE_PER_HOUR;
      case SQUARE_METRE_PER_CUBIC_METRE -> NamedUnit.SQUARE_METRE_PER_LITRE;
      case SECOND_PER_SQUARE_METRE -> NamedUnit.MINUTE_PER_SQUARE_METRE;
      case PER_PERCENT_MOISTURE -> NamedUnit.PERCENT_PER_POINT;
      default -> NamedUnit.valueOf(unit.name());
    };
  }

  private static NamedUnit time(double seconds) {
    if (seconds < 90) {
      return NamedUnit.SECOND;
    }
    if (seconds < TWO_HOURS) {
      return NamedUnit.MINUTE;
    }
    return seconds <= TWO_DAYS ? NamedUnit.HOUR : NamedUnit.DAY;
  }

  private static NamedUnit pressure(double pascal) {
    if (pascal < 1_000) {
      return NamedUnit.PASCAL;
    }
    return pascal < 1e6 ? NamedUnit.KILOPASCAL : NamedUnit.MEGAPASCAL;
  }

  private static NamedUnit imperial(double size, Unit unit) {
    return switch (unit) {
      case METRE -> size >= 8 * NamedUnit.FOOT.size() ? NamedUnit.FOOT : NamedUnit.INCH;
      case SQUARE_METRE -> NamedUnit.SQUARE_FOOT;
      case CUBIC_METRE -> NamedUnit.CUBIC_FOOT;
      case CUBIC_METRE_LIQUID -> liquid(size);
      case KILOGRAM -> size < NamedUnit.POUND.size() ? NamedUnit.OUNCE : NamedUnit.POUND;
      case KILOGRAM_PER_CUBIC_METRE -> NamedUnit.POUND_PER_CUBIC_FOOT;
      case KILOGRAM_PER_SQUARE_METRE -> NamedUnit.POUND_PER_1000_SQUARE_FEET;
      case CELSIUS -> NamedUnit.FAHRENHEIT;
      case CELSIUS_DIFFERENCE -> NamedUnit.FAHRENHEIT_DIFFERENCE;
      case PASCAL -> NamedUnit.PSI;
      case NEWTON -> NamedUnit.POUND_FORCE;
      case MICRON -> NamedUnit.MIL;
      case CUBIC_METRE_PER_SECOND -> NamedUnit.CUBIC_FOOT_PER_MINUTE;
      case METRE_PER_SECOND -> size < 1 ? NamedUnit.INCH_PER_MINUTE : NamedUnit.FOOT_PER_MINUTE;
      case SQUARE_METRE_PER_CUBIC_METRE -> NamedUnit.SQUARE_FOOT_PER_GALLON;
      case SECOND_PER_SQUARE_METRE -> NamedUnit.MINUTE_PER_SQUARE_FOOT;
      default -> metric(size, unit);
    };
  }

  private static NamedUnit liquid(double size) {
    if (size < NamedUnit.QUART.size()) {
      return NamedUnit.FLUID_OUNCE;
    }
    return size < NamedUnit.GALLON.size() ? NamedUnit.QUART : NamedUnit.GALLON;
  }
}
