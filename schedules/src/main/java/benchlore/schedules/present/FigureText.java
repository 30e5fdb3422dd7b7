package benchlore.schedules.present;

import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Figures, and sentences with figures in them, in the reader's units. */
public final class FigureText {
  /** A length below this is thousandths of an inch: no rule has such a fraction. */
  private static final double FINEST_FRACTION_METRE = 0.0254 / 64;

  private static final String GAP = "\u00a0";

  private FigureText() {}

  /** A quantity: {@code 31 h}. */
  public static String text(Quantity quantity, UnitSystem system) {
    return text(quantity.value(), quantity.value(), quantity.unit(), system);
  }

  /** A figure or range: {@code 4–8 h}. */
  public static String text(SourcedRange range, UnitSystem system) {
    return text(range.low(), range.high(), range.unit(), system);
  }

  /**
   * A figure or range: {@code 3/4 in}, {@code 4–8 h}; one number where both ends read alike.
   *
   * @param low lower end, in {@code unit}
   * @param high upper end, which decides the unit shown
   * @param unit the engine's unit
   * @param system the reader's
   */
  public static String text(double low, double high, Unit unit, UnitSystem system) {
    NamedUnit shown = ShownUnits.of(high, unit, system);
    boolean fine = shown == NamedUnit.INCH && Math.abs(high) < FINEST_FRACTION_METRE;
    String from = number(shown.fromEngine(low), shown, fine);
    String to = number(shown.fromEngine(high), shown, fine);
    String symbol = shown.symbol();
    String gap = symbol.isEmpty() || symbol.equals("%") || symbol.equals("°") ? "" : GAP;
    return (from.equals(to) ? to : from + "–" + to) + gap + symbol;
  }

  private static String number(double value, NamedUnit shown, boolean fine) {
    if (shown == NamedUnit.INCH && !fine) {
      return NumberText.fraction(value);
    }
    return shown.unit() == Unit.SECOND ? NumberText.duration(value) : NumberText.of(value);
  }

  /**
   * A quantity as a sentence tells it, no finer than it can be measured in a shop: what was worked
   * out in two figures, hours by the quarter, days by the half. A figure that has no more than
   * three to begin with, such as a limit or what somebody gave, stays as it is.
   */
  public static String told(Quantity quantity, UnitSystem system) {
    NamedUnit shown = ShownUnits.of(quantity.value(), quantity.unit(), system);
    double value = shown.fromEngine(quantity.value());
    if (shown == NamedUnit.HOUR && Math.abs(value) < 10) {
      return NumberText.quarters(value);
    }
    if (shown.unit() == Unit.SECOND) {
      return NumberText.of(NumberText.halves(value)) + GAP + shown.symbol();
    }
    boolean kept = shown == NamedUnit.INCH || NumberText.isShort(quantity.value(), value);
    double measured = kept ? quantity.value() : shown.toEngine(NumberText.trimmed(value, 2));
    return text(Quantity.of(measured, quantity.unit()), system);
  }

  /** A number without a unit: three figures, more for whole numbers, no exponent. */
  public static String number(double value) {
    return NumberText.of(value);
  }

  /**
   * What a machine is set to, in whole numbers of a form field's unit: {@code 1200–1500 mm/min}.
   *
   * @param low lower end, in the engine's unit
   * @param high upper end, in the engine's unit
   * @param field the field's metric unit
   * @param system the reader's
   */
  public static String setting(double low, double high, NamedUnit field, UnitSystem system) {
    NamedUnit shown = FieldMeasure.unit(field, system);
    String from = whole(shown.fromEngine(low));
    String to = whole(shown.fromEngine(high));
    return (from.equals(to) ? to : from + "–" + to) + GAP + shown.symbol();
  }

  private static String whole(double value) {
    return NumberText.of(Math.floor(value + 0.5));
  }

  /** Seconds of work as hours: {@code 12.5 h}. */
  public static String hours(double seconds) {
    return NumberText.of(seconds / 3_600) + GAP + NamedUnit.HOUR.symbol();
  }

  /** A sentence with its quantities in the reader's units. */
  public static String sentence(Message message, UnitSystem system) {
    StringBuilder text = new StringBuilder();
    for (Part part : Part.of(message)) {
      text.append(system == UnitSystem.METRIC ? part.metric() : part.imperial());
    }
    return text.toString();
  }

  /**
   * A piece of a sentence: words, or a figure that reads one way by millimetres and another by
   * inches.
   *
   * @param metric as a reader of millimetres reads it
   * @param imperial as a reader of inches reads it; for words the same
   * @param isFigure whether it is a figure
   */
  public record Part(String metric, String imperial, boolean isFigure) {
    /** Refuses nulls. */
    public Part {
      if (metric == null || imperial == null) {
        throw new NullPointerException("metric and imperial");
      }
    }

    /** A sentence in its pieces, in order; none of the words is empty. */
    public static List<Part> of(Message message) {
      List<Part> parts = new ArrayList<>();
      String pattern = message.pattern();
      int begin = 0;
      while (begin < pattern.length()) {
        int place = nextPlace(message, begin);
        if (place > begin) {
          String words = pattern.substring(begin, place);
          parts.add(new Part(words, words, false));
        }
        begin = place;
        if (place < pattern.length()) {
          int end = pattern.indexOf('}', place) + 1;
          parts.add(figure(quantity(message, pattern.substring(place, end))));
          begin = end;
        }
      }
      return parts;
    }

    private static Part figure(Quantity quantity) {
      return new Part(
          FigureText.told(quantity, UnitSystem.METRIC),
          FigureText.told(quantity, UnitSystem.IMPERIAL),
          true);
    }

    /** Where the next place of a quantity begins; the pattern's length if there is none. */
    private static int nextPlace(Message message, int begin) {
      int next = message.pattern().length();
      for (int i = 0; i < message.quantities().size(); i++) {
        int at = message.pattern().indexOf(place(i), begin);
        next = at < 0 ? next : Math.min(next, at);
      }
      return next;
    }

    private static Quantity quantity(Message message, String place) {
      int i = 0;
      while (!place(i).equals(place)) {
        i++;
      }
      return message.quantities().get(i);
    }

    private static String place(int i) {
      return "{" + i + "}";
    }
  }
}
