package benchlore.generator.drawing.svg;

import benchlore.schedules.present.FigureText;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.quantity.Quantity;
import java.util.Locale;

/**
 * A figure on a drawing: how it reads, and the SI value a script needs to show it in other units.
 *
 * @param text as shown without a script
 * @param value plain decimal, in {@code unit}; empty for words
 * @param unit {@code metre} or {@code degree}; empty for words
 */
public record Measure(String text, String value, String unit) {
  /** A figure of the engine, metric. */
  public static Measure of(Quantity figure) {
    String unit = figure.unit().name().toLowerCase(Locale.ROOT).replace('_', '-');
    String text = FigureText.text(figure, UnitSystem.METRIC);
    return new Measure(text, Num.of(figure.value()), unit);
  }

  /** Millimetres. */
  public static Measure mm(double mm) {
    return new Measure(Num.of(mm) + " mm", Num.metres(mm), "metre");
  }

  /** Degrees. */
  public static Measure degrees(double degrees) {
    return new Measure(Num.of(degrees) + "°", Num.of(degrees), "degree");
  }

  /** Words where the bit does not decide the size. */
  public static Measure words(String text) {
    return new Measure(text, "", "");
  }

  /** Whether a script may show it in other units. */
  public boolean isFigure() {
    return !unit.isEmpty();
  }
}
