package benchlore.generator.drawing.svg;

import benchlore.schedules.present.FigureText;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;

/**
 * A figure on a drawing, as both kinds of readers read it.
 *
 * @param text as it is drawn, metric
 * @param imperial what a script shows to a reader of inches; empty for words
 */
public record Measure(String text, String imperial) {
  /** A figure of the engine. */
  public static Measure of(Quantity figure) {
    return with(FigureText.text(figure, UnitSystem.METRIC), figure);
  }

  /** Millimetres. */
  public static Measure mm(double mm) {
    return with(Num.of(mm) + " mm", Quantity.of(Num.metres(mm), Unit.METRE));
  }

  /** Thousandths of a millimetre, of a film, a grain or a scratch. */
  public static Measure microns(double micron) {
    return with(Num.of(micron) + " µm", Quantity.of(micron, Unit.MICRON));
  }

  /** Degrees, the same for everyone. */
  public static Measure degrees(double degrees) {
    String text = Num.of(degrees) + "°";
    return new Measure(text, text);
  }

  /** Words where the bit does not decide the size. */
  public static Measure words(String text) {
    return new Measure(text, "");
  }

  private static Measure with(String text, Quantity figure) {
    return new Measure(text, FigureText.text(figure, UnitSystem.IMPERIAL));
  }

  /** Whether it is a figure, not words. */
  public boolean isFigure() {
    return !imperial.isEmpty();
  }
}
