package benchlore.schedules.present;

import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The one table of units: what people call a unit, what may be written for it, and what one of it
 * is in the engine's unit.
 *
 * <p>Content files, plan files, fields of a form and every figure shown go by these rows. Exact by
 * definition: inch, pound, US gallon, pound-force (0.45359237 x 9.80665 N), psi (that over 0.0254 m
 * squared); the millimetre of mercury is the conventional one.
 */
public enum NamedUnit {
  /** A plain ratio. */
  RATIO(Unit.RATIO, 1, "", "ratio"),
  /** A count of things. */
  COUNT(Unit.COUNT, 1, "", "count|P"),
  /** A percentage. */
  PERCENT(Unit.PERCENT, 1, "%"),
  /** Seconds. */
  SECOND(Unit.SECOND, 1, "s"),
  /** Minutes. */
  MINUTE(Unit.SECOND, 60, "min"),
  /** Hours. */
  HOUR(Unit.SECOND, 3_600, "h", "h|hour|hours"),
  /** Days. */
  DAY(Unit.SECOND, 86_400, "days", "d|day|days"),
  /** Weeks. */
  WEEK(Unit.SECOND, 604_800, "weeks", "weeks|week"),
  /** Metres. */
  METRE(Unit.METRE, 1, "m"),
  /** Millimetres. */
  MILLIMETRE(Unit.METRE, 1e-3, "mm"),
  /** Inches. */
  INCH(Unit.METRE, 0.0254, "in", "in|inch|inches|\"|''"),
  /** Feet. */
  FOOT(Unit.METRE, 0.3048, "ft", "ft|foot|feet|'"),
  /** Square metres. */
  SQUARE_METRE(Unit.SQUARE_METRE, 1, "m²", "m2|m²"),
  /** Square feet. */
  SQUARE_FOOT(Unit.SQUARE_METRE, 0.09290304, "ft²", "ft2|ft²"),
  /** Cubic metres of air. */
  CUBIC_METRE(Unit.CUBIC_METRE, 1, "m³", "m3|m³"),
  /** Cubic feet of air. */
  CUBIC_FOOT(Unit.CUBIC_METRE, 0.028316846592, "ft³", "ft3|ft³"),
  /** Litres. */
  LITRE(Unit.CUBIC_METRE_LIQUID, 1e-3, "L"),
  /** Millilitres. */
  MILLILITRE(Unit.CUBIC_METRE_LIQUID, 1e-6, "mL"),
  /** Fluid ounces of the United States. */
  FLUID_OUNCE(Unit.CUBIC_METRE_LIQUID, 29.5735295625e-6, "US fl oz"),
  /** Quarts of the United States. */
  QUART(Unit.CUBIC_METRE_LIQUID, 946.352946e-6, "US qt"),
  /** Gallons of the United States. */
  GALLON(Unit.CUBIC_METRE_LIQUID, 3.785411784e-3, "US gal"),
  /** Kilograms. */
  KILOGRAM(Unit.KILOGRAM, 1, "kg"),
  /** Grams. */
  GRAM(Unit.KILOGRAM, 1e-3, "g"),
  /** Pounds. */
  POUND(Unit.KILOGRAM, 0.45359237, "lb"),
  /** Ounces. */
  OUNCE(Unit.KILOGRAM, 0.028349523125, "oz"),
  /** Density. */
  KILOGRAM_PER_CUBIC_METRE(Unit.KILOGRAM_PER_CUBIC_METRE, 1, "kg/m³", "kg/m3|g/L"),
  /** Density of liquids. */
  KILOGRAM_PER_LITRE(Unit.KILOGRAM_PER_CUBIC_METRE, 1e3, "kg/L", "kg/L|g/mL"),
  /** Density by the pound. */
  POUND_PER_CUBIC_FOOT(Unit.KILOGRAM_PER_CUBIC_METRE, 0.45359237 / 0.028316846592, "lb/ft³"),
  /** Glue spread. */
  GRAM_PER_SQUARE_METRE(Unit.KILOGRAM_PER_SQUARE_METRE, 1e-3, "g/m²", "g/m2|g/m²"),
  /** Glue spread by the pound. */
  POUND_PER_1000_SQUARE_FEET(
      Unit.KILOGRAM_PER_SQUARE_METRE, 0.45359237 / 92.90304, "lb per 1000 ft²"),
  /** Dust and vapour in air. */
  MILLIGRAM_PER_CUBIC_METRE(Unit.AIRBORNE_KILOGRAM_PER_CUBIC_METRE, 1e-6, "mg/m³", "mg/m3|mg/m³"),
  /** Molar mass. */
  GRAM_PER_MOLE(Unit.KILOGRAM_PER_MOLE, 1e-3, "g/mol"),
  /** Activation energy. */
  KILOJOULE_PER_MOLE(Unit.JOULE_PER_MOLE, 1e3, "kJ/mol"),
  /** A reading in degrees Celsius. */
  CELSIUS(Unit.CELSIUS, 1, "°C", "°C|C"),
  /** A reading in degrees Fahrenheit. */
  FAHRENHEIT(Unit.CELSIUS, 5.0 / 9, "°F", "°F|F"),
  /** A difference in degrees Celsius; as a word it would be a reading. */
  CELSIUS_DIFFERENCE(Unit.CELSIUS_DIFFERENCE, 1, "°C", ""),
  /** A difference in degrees Fahrenheit; as a word it would be a reading. */
  FAHRENHEIT_DIFFERENCE(Unit.CELSIUS_DIFFERENCE, 5.0 / 9, "°F", ""),
  /** Pascals. */
  PASCAL(Unit.PASCAL, 1, "Pa"),
  /** Kilopascals. */
  KILOPASCAL(Unit.PASCAL, 1e3, "kPa"),
  /** Megapascals. */
  MEGAPASCAL(Unit.PASCAL, 1e6, "MPa"),
  /** Pounds a square inch. */
  PSI(Unit.PASCAL, 6_894.757293168361, "psi"),
  /** Millimetres of mercury. */
  MILLIMETRE_OF_MERCURY(Unit.PASCAL, 133.322387415, "mmHg"),
  /** Newtons. */
  NEWTON(Unit.NEWTON, 1, "N"),
  /** Kilonewtons. */
  KILONEWTON(Unit.NEWTON, 1e3, "kN"),
  /** Pounds of force. */
  POUND_FORCE(Unit.NEWTON, 4.4482216152605, "lbf"),
  /** Micrometres. */
  MICRON(Unit.MICRON, 1, "µm", "µm|um"),
  /** Thousandths of an inch of film. */
  MIL(Unit.MICRON, 25.4, "mil"),
  /** A film or grain of a millimetre and more; as a word it would be a length. */
  MILLIMETRE_OF_FILM(Unit.MICRON, 1e3, "mm", ""),
  /** Parts per million. */
  PPM(Unit.PPM, 1, "ppm"),
  /** Air by the hour. */
  CUBIC_METRE_PER_HOUR(Unit.CUBIC_METRE_PER_SECOND, 1 / 3_600.0, "m³/h", "m3/h|m³/h"),
  /** Cubic feet of air a minute. */
  CUBIC_FOOT_PER_MINUTE(Unit.CUBIC_METRE_PER_SECOND, 0.028316846592 / 60, "cfm"),
  /** Speed. */
  METRE_PER_SECOND(Unit.METRE_PER_SECOND, 1, "m/s"),
  /** Feed. */
  MILLIMETRE_PER_MINUTE(Unit.METRE_PER_SECOND, 1e-3 / 60, "mm/min"),
  /** Feed by the inch. */
  INCH_PER_MINUTE(Unit.METRE_PER_SECOND, 0.0254 / 60, "in/min"),
  /** Rim speed by the foot. */
  FOOT_PER_MINUTE(Unit.METRE_PER_SECOND, 0.3048 / 60, "ft/min"),
  /** Revolutions a minute. */
  RPM(Unit.RPM, 1, "rpm"),
  /** Air changes an hour. */
  PER_HOUR(Unit.PER_HOUR, 1, "per hour", "per-hour|per hour"),
  /** What a liquid covers. */
  SQUARE_METRE_PER_LITRE(Unit.SQUARE_METRE_PER_CUBIC_METRE, 1e3, "m²/L"),
  /** What a liquid covers, by the gallon. */
  SQUARE_FOOT_PER_GALLON(
      Unit.SQUARE_METRE_PER_CUBIC_METRE, 0.09290304 / 3.785411784e-3, "ft²/US gal"),
  /** Pace. */
  MINUTE_PER_SQUARE_METRE(Unit.SECOND_PER_SQUARE_METRE, 60, "min/m²"),
  /** Pace by the foot. */
  MINUTE_PER_SQUARE_FOOT(Unit.SECOND_PER_SQUARE_METRE, 60 / 0.09290304, "min/ft²"),
  /** Movement as a fraction of the width. */
  PER_POINT(Unit.PER_PERCENT_MOISTURE, 1, "per point of moisture", "per-%"),
  /** Movement in percent of the width. */
  PERCENT_PER_POINT(Unit.PER_PERCENT_MOISTURE, 1e-2, "% per point of moisture"),
  /** Angle. */
  DEGREE(Unit.DEGREE, 1, "°"),
  /** Gloss. */
  GLOSS_UNIT(Unit.GLOSS_UNIT, 1, "gloss units", "GU|gloss units");

  private static final NamedUnit[] ALL = values();
  private static final String SEPARATOR = "|";
  private static final double FREEZING_FAHRENHEIT = 32;

  private final Unit unit;
  private final double size;
  private final String symbol;
  private final String words;

  NamedUnit(Unit unit, double size, String symbol) {
    this(unit, size, symbol, symbol);
  }

  NamedUnit(Unit unit, double size, String symbol, String words) {
    this.unit = unit;
    this.size = size;
    this.symbol = symbol;
    this.words = words;
  }

  /** The unit a word stands for, as it is written in a file or typed: {@code mm}, {@code in}. */
  public static Optional<NamedUnit> find(String word) {
    String part = SEPARATOR + word + SEPARATOR;
    for (NamedUnit named : ALL) {
      if (!word.isEmpty() && (SEPARATOR + named.words + SEPARATOR).contains(part)) {
        return Optional.of(named);
      }
    }
    return Optional.empty();
  }

  /** The engine's unit. */
  public Unit unit() {
    return unit;
  }

  /** Engine units in one of it. */
  public double size() {
    return size;
  }

  /** What stands behind a number shown: {@code m²}; empty where nothing does. */
  public String symbol() {
    return symbol;
  }

  /** What may be written for it, the usual first; none for what is shown alone. */
  public List<String> words() {
    List<String> list = new ArrayList<>();
    int from = 0;
    while (from < words.length()) {
      int next = words.indexOf(SEPARATOR, from);
      int to = next < 0 ? words.length() : next;
      list.add(words.substring(from, to));
      from = to + 1;
    }
    return list;
  }

  /** A number of these in the engine's unit. */
  public double toEngine(double number) {
    return (number - shift()) * size;
  }

  /** A number of the engine's units in these. */
  public double fromEngine(double value) {
    return value / size + shift();
  }

  /** The reading where the engine's scale has its zero. */
  private double shift() {
    return this == FAHRENHEIT ? FREEZING_FAHRENHEIT : 0;
  }
}
