package benchlore.generator.units;

import benchlore.schedules.answer.Message;
import benchlore.schedules.present.FigureText;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * Shows the engine's SI numbers as people read them, in the units and the rounding of {@link
 * FigureText}. What a reader of inches reads travels along in the page, so that a script only swaps
 * the two.
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

  /** A figure or range as an element that carries its other reading. */
  public static String html(SourcedRange datum) {
    return html(datum.low(), datum.high(), datum.unit());
  }

  /** A quantity as an element that carries its other reading. */
  public static String html(Quantity quantity) {
    return html(quantity.value(), quantity.value(), quantity.unit());
  }

  /** A sentence with its quantities as elements; the sentence itself is escaped. */
  public static String html(Message note) {
    StringBuilder text = new StringBuilder();
    for (FigureText.Part part : FigureText.Part.of(note)) {
      text.append(part.isFigure() ? html(part.metric(), part.imperial()) : escape(part.metric()));
    }
    return text.toString();
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
    return html(text(low, high, unit), FigureText.text(low, high, unit, UnitSystem.IMPERIAL));
  }

  private static String html(String metric, String imperial) {
    String other = imperial.equals(metric) ? "" : " data-imperial=\"" + imperial + "\"";
    return "<span class=\"q\"" + other + ">" + metric + "</span>";
  }

  /** A figure or range as plain text: {@code 4–8 h}; both ends in {@code unit}. */
  public static String text(double low, double high, Unit unit) {
    return FigureText.text(low, high, unit, UnitSystem.METRIC);
  }

  /** Three figures, more for whole numbers, no trailing zeros, no exponent. */
  public static String number(double value) {
    return FigureText.number(value);
  }
}
