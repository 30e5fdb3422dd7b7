package benchlore.generator.units;

import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Shows the engine's SI numbers as people read them: seconds as hours or days, metres as
 * millimetres. The SI number travels along in the page, so that a script can show other units.
 */
public final class Display {
  /**
   * A unit to show in.
   *
   * @param size engine units in one of it
   * @param label what stands behind the number
   */
  private record Shown(double size, String label) {}

  private Display() {}

  /** A quantity as plain text: {@code 31 h}. */
  public static String text(Quantity quantity) {
    return text(quantity.value(), quantity.value(), quantity.unit());
  }

  /** A figure or range as plain text: {@code 4–8 h}. */
  public static String text(SourcedRange datum) {
    return text(datum.low(), datum.high(), datum.unit());
  }

  /** A figure or range as an element that carries its SI value. */
  public static String html(SourcedRange datum) {
    return html(datum.low(), datum.high(), datum.unit());
  }

  /** A quantity as an element that carries its SI value. */
  public static String html(Quantity quantity) {
    return html(quantity.value(), quantity.value(), quantity.unit());
  }

  /** A sentence with its quantities as elements; the sentence itself is escaped. */
  public static String html(Message note) {
    String text = escape(note.pattern());
    for (int i = 0; i < note.quantities().size(); i++) {
      text = text.replace("{" + i + "}", html(note.quantities().get(i)));
    }
    return text;
  }

  /** A sentence with its quantities as plain text. */
  public static String text(Message note) {
    String text = note.pattern();
    for (int i = 0; i < note.quantities().size(); i++) {
      text = text.replace("{" + i + "}", text(note.quantities().get(i)));
    }
    return text;
  }

  /** Seconds of work as hours: {@code 12.5 h}. */
  public static String hours(double seconds) {
    return number(seconds / 3_600.0) + "\u00a0h";
  }

  /** Escapes text for an HTML element or a quoted attribute. */
  public static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  private static String html(double low, double high, Unit unit) {
    String end = low == high ? "" : " data-h=\"" + plain(high) + "\"";
    return "<span class=\"q\" data-q=\""
        + plain(low)
        + "\""
        + end
        + " data-u=\""
        + unit.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')
        + "\">"
        + text(low, high, unit)
        + "</span>";
  }

  public static String text(double low, double high, Unit unit) {
    Shown shown = shown(high, unit);
    String label = shown.label();
    String gap = label.isEmpty() || label.equals("%") || label.equals("°") ? "" : "\u00a0";
    String from = unit == Unit.SECOND ? duration(low / shown.size()) : number(low / shown.size());
    String to = unit == Unit.SECOND ? duration(high / shown.size()) : number(high / shown.size());
    String range = from.equals(to) ? to : from + "–" + to;
    return range + gap + label;
  }

  /** A tenth below ten, whole from there: nobody waits to the second. */
  private static String duration(double value) {
    double grain = Math.abs(value) < 9.95 ? 10 : 1;
    return number(Math.floor(value * grain + 0.5) / grain);
  }

  /** Three figures, more for whole numbers, no trailing zeros, no exponent. */
  public static String number(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    double size = Math.abs(value);
    BigDecimal rounded =
        size >= 100
            ? exact.setScale(0, RoundingMode.HALF_UP)
            : exact.round(new MathContext(3, RoundingMode.HALF_UP));
    String text = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    return group(text).replace('-', '\u2212');
  }

  private static String group(String text) {
    int point = text.indexOf('.') < 0 ? text.length() : text.indexOf('.');
    StringBuilder grouped = new StringBuilder(text);
    for (int i = point - 3; i > (text.startsWith("-") ? 1 : 0); i -= 3) {
      if (point > 4) {
        grouped.insert(i, '\u202f');
      }
    }
    return grouped.toString();
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  private static Shown shown(double value, Unit unit) {
    double size = Math.abs(value);
    return switch (unit) {
      case RATIO, COUNT -> new Shown(1, "");
      case PERCENT -> new Shown(1, "%");
      case SECOND -> time(size);
      case METRE -> size < 1 && size > 0 ? new Shown(1e-3, "mm") : new Shown(1, "m");
      case SQUARE_METRE -> new Shown(1, "m²");
      case CUBIC_METRE -> new Shown(1, "m³");
      case CUBIC_METRE_LIQUID -> size < 1e-3 ? new Shown(1e-6, "mL") : new Shown(1e-3, "L");
      case KILOGRAM -> size < 1 ? new Shown(1e-3, "g") : new Shown(1, "kg");
      case KILOGRAM_PER_CUBIC_METRE -> new Shown(1, "kg/m³");
      case KILOGRAM_PER_SQUARE_METRE -> new Shown(1e-3, "g/m²");
      case AIRBORNE_KILOGRAM_PER_CUBIC_METRE -> new Shown(1e-6, "mg/m³");
      case KILOGRAM_PER_MOLE -> new Shown(1e-3, "g/mol");
      case CELSIUS, CELSIUS_DIFFERENCE -> new Shown(1, "°C");
      case PASCAL -> size < 1_000 ? new Shown(1, "Pa") : pressure(size);
      case NEWTON -> size < 10_000 ? new Shown(1, "N") : new Shown(1e3, "kN");
      case MICRON -> size < 1_000 ? new Shown(1, "µm") : new Shown(1e3, "mm");
      case PPM -> new Shown(1, "ppm");
      case CUBIC_METRE_PER_SECOND -> new Shown(1 / 3_600.0, "m³/h");
      case METRE_PER_SECOND -> new Shown(1, "m/s");
      case RPM -> new Shown(1, "rpm");
      case PER_HOUR -> new Shown(1, "per hour");
      case SQUARE_METRE_PER_CUBIC_METRE -> new Shown(1e3, "m²/L");
      case SECOND_PER_SQUARE_METRE -> new Shown(60, "min/m²");
      case PER_PERCENT_MOISTURE -> new Shown(1e-2, "% per point of moisture");
      case DEGREE -> new Shown(1, "°");
      case GLOSS_UNIT -> new Shown(1, "gloss units");
    };
  }

  private static Shown pressure(double pascal) {
    return pascal < 1e6 ? new Shown(1e3, "kPa") : new Shown(1e6, "MPa");
  }

  private static Shown time(double seconds) {
    if (seconds < 90) {
      return new Shown(1, "s");
    }
    if (seconds < 2 * 3_600) {
      return new Shown(60, "min");
    }
    if (seconds <= 48 * 3_600) {
      return new Shown(3_600, "h");
    }
    return new Shown(86_400, "days");
  }
}
