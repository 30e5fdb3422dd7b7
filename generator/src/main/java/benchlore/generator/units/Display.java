package benchlore.generator.units;

import benchlore.schedules.answer.Message;
import benchlore.schedules.present.FigureText;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.math.BigDecimal;

/**
 * Shows the engine's SI numbers as people read them, in the units and the rounding of {@link
 * FigureText}. The SI number travels along in the page, so that a script can show other units.
 */
public final class Display {
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
    return FigureText.sentence(note, UnitSystem.METRIC);
  }

  /** Seconds of work as hours: {@code 12.5 h}. */
  public static String hours(double seconds) {
    return FigureText.hours(seconds);
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

  /** A figure or range as plain text: {@code 4–8 h}; both ends in {@code unit}. */
  public static String text(double low, double high, Unit unit) {
    return FigureText.text(low, high, unit, UnitSystem.METRIC);
  }

  /** Three figures, more for whole numbers, no trailing zeros, no exponent. */
  public static String number(double value) {
    return FigureText.number(value);
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
