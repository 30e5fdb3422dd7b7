package benchlore.schedules.material;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.AsciiText;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One field of a material: its key, what may stand there, and where the material keeps it.
 *
 * <p>The key is the same word everywhere: {@code wet-film} in a record file, in a request and in a
 * refusal, {@code wetFilm} as the component of a Java record.
 *
 * @param <M> the material
 * @param <V> its value in Java
 */
public final class Field<M, V> {
  /**
   * The unit of a figure and the range the rules hold for.
   *
   * @param unit of both ends
   * @param low lowest figure, inclusive
   * @param high highest figure, inclusive
   */
  public record Limits(Unit unit, double low, double high) {
    /** Refuses a null unit. */
    public Limits {
      if (unit == null) {
        throw new NullPointerException("unit");
      }
    }

    private boolean hold(double figure) {
      return figure >= low && figure <= high;
    }

    /** Why a figure won't do, to follow its key; empty if it will. */
    Optional<String> fault(SourcedRange figure) {
      if (figure.unit() != unit) {
        return Optional.of("must be in " + words(unit) + ": " + words(figure.unit()));
      }
      if (hold(figure.low()) && hold(figure.high())) {
        return Optional.empty();
      }
      String range = Numeric.text(low) + " to " + Numeric.text(high);
      String given = Numeric.text(figure.low()) + ", " + Numeric.text(figure.high());
      return Optional.of("must be " + range + ": " + given);
    }

    private static String words(Unit unit) {
      return AsciiText.lower(unit.name()).replace('_', ' ');
    }

    /** Adds a refusal for each end outside the limits, or for the wrong unit. */
    void check(Checks checks, String input, SourcedRange figure) {
      if (figure.unit() != unit) {
        checks.require(
            false, input, "The figure is in the wrong unit.", "Give it in " + words(unit) + ".");
        return;
      }
      checks.within(input, figure.low(), low, high, unit);
      if (figure.high() != figure.low()) {
        checks.within(input, figure.high(), low, high, unit);
      }
    }
  }

  private final String key;
  private final boolean required;
  private final Shape<V> shape;
  private final Function<M, V> getter;

  private Field(String key, boolean required, Shape<V> shape, Function<M, V> getter) {
    this.key = key;
    this.required = required;
    this.shape = shape;
    this.getter = getter;
  }

  static <M> Field<M, SourcedRange> figure(
      String key, Limits limits, Function<M, SourcedRange> getter) {
    return new Field<>(key, true, new Shape.Figure(limits), getter);
  }

  static <M> Field<M, Optional<SourcedRange>> optional(
      String key, Limits limits, Function<M, Optional<SourcedRange>> getter) {
    return new Field<>(key, false, new Shape.OptionalFigure(limits), getter);
  }

  static <M> Field<M, Boolean> flag(String key, Function<M, Boolean> getter) {
    return new Field<>(key, true, new Shape.Flag(), getter);
  }

  static <M> Field<M, String> text(String key, Function<M, String> getter) {
    return new Field<>(key, true, new Shape.Text(), getter);
  }

  static <M> Field<M, Optional<String>> optionalText(
      String key, Function<M, Optional<String>> getter) {
    return new Field<>(key, false, new Shape.OptionalText(), getter);
  }

  static <M, E extends Enum<E>> Field<M, E> word(String key, E[] values, Function<M, E> getter) {
    return new Field<>(key, true, new Shape.Word<>(List.of(values)), getter);
  }

  static <M, E extends Enum<E>> Field<M, List<E>> words(
      String key, E[] values, Function<M, List<E>> getter) {
    return new Field<>(key, true, new Shape.Words<>(List.of(values)), getter);
  }

  static <M, T> Field<M, List<T>> groups(
      String key, FieldTable<T> table, Function<M, List<T>> getter) {
    return new Field<>(key, false, new Shape.Groups<>(table), getter);
  }

  /** The key, small letters with hyphens. */
  public String key() {
    return key;
  }

  /** Whether every such material states it. */
  public boolean required() {
    return required;
  }

  /** What a figure must keep to; empty for what is no figure. */
  public Optional<Limits> limits() {
    if (shape instanceof Shape.Figure figure) {
      return Optional.of(figure.limits());
    }
    return shape instanceof Shape.OptionalFigure figure
        ? Optional.of(figure.limits())
        : Optional.empty();
  }

  /** The words that may stand here; empty where any text, a figure or a flag stands. */
  public List<String> words() {
    if (shape instanceof Shape.Word<?> word) {
      return Shape.words(word.values());
    }
    return shape instanceof Shape.Words<?> words ? Shape.words(words.values()) : List.of();
  }

  /** What a material says here. */
  public V of(M material) {
    return getter.apply(material);
  }

  /** Takes the value from a source; refuses as the source does. */
  V read(FieldSource source) {
    return shape.read(source, key);
  }

  void write(M material, FieldSink sink) {
    shape.write(sink, key, of(material));
  }

  /** Refuses a value that is null or outside its limits; names the key. */
  void require(V value) {
    if (value == null) {
      throw new NullPointerException(key);
    }
    Optional<String> fault = shape.fault(value);
    if (fault.isPresent()) {
      throw new IllegalArgumentException(key + " " + fault.get());
    }
  }

  /** Why what a source says here won't do; empty if it will. */
  Optional<String> fault(FieldSource source) {
    return shape.fault(read(source));
  }

  /** Why what a material says here won't do; empty if it will. */
  Optional<String> faultOf(M material) {
    return shape.fault(of(material));
  }

  void check(Checks checks, String input, M material) {
    shape.check(checks, input + "." + key, of(material));
  }
}
