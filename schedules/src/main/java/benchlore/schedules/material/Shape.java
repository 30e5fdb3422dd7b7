package benchlore.schedules.material;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.material.Field.Limits;
import benchlore.schedules.quantity.AsciiText;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** How one kind of value is read, written and checked. */
interface Shape<V> {
  /** Takes the value from a source. */
  V read(FieldSource source, String key);

  /** Puts the value into a sink. */
  void write(FieldSink sink, String key, V value);

  /** Why the value won't do, to follow its key; empty if it will. */
  default Optional<String> fault(V value) {
    return Optional.empty();
  }

  /** Adds a refusal for every figure in the value that is outside its limits. */
  default void check(Checks checks, String input, V value) {}

  /** A figure that is always stated. */
  record Figure(Limits limits) implements Shape<SourcedRange> {
    @Override
    public SourcedRange read(FieldSource source, String key) {
      return source.figure(key);
    }

    @Override
    public void write(FieldSink sink, String key, SourcedRange value) {
      sink.figure(key, value);
    }

    @Override
    public Optional<String> fault(SourcedRange value) {
      return limits.fault(value);
    }

    @Override
    public void check(Checks checks, String input, SourcedRange value) {
      limits.check(checks, input, value);
    }
  }

  /** A figure that may be left out. */
  record OptionalFigure(Limits limits) implements Shape<Optional<SourcedRange>> {
    @Override
    public Optional<SourcedRange> read(FieldSource source, String key) {
      return source.optionalFigure(key);
    }

    @Override
    public void write(FieldSink sink, String key, Optional<SourcedRange> value) {
      value.ifPresentOrElse(figure -> sink.figure(key, figure), () -> sink.nothing(key));
    }

    @Override
    public Optional<String> fault(Optional<SourcedRange> value) {
      return value.flatMap(limits::fault);
    }

    @Override
    public void check(Checks checks, String input, Optional<SourcedRange> value) {
      value.ifPresent(figure -> limits.check(checks, input, figure));
    }
  }

  /** True or false. */
  record Flag() implements Shape<Boolean> {
    @Override
    public Boolean read(FieldSource source, String key) {
      return source.flag(key);
    }

    @Override
    public void write(FieldSink sink, String key, Boolean value) {
      sink.flag(key, value);
    }
  }

  /** Any text. */
  record Text() implements Shape<String> {
    @Override
    public String read(FieldSource source, String key) {
      return source.text(key);
    }

    @Override
    public void write(FieldSink sink, String key, String value) {
      sink.text(key, value);
    }
  }

  /** Any text, or none. */
  record OptionalText() implements Shape<Optional<String>> {
    @Override
    public Optional<String> read(FieldSource source, String key) {
      return source.optionalText(key);
    }

    @Override
    public void write(FieldSink sink, String key, Optional<String> value) {
      value.ifPresentOrElse(text -> sink.text(key, text), () -> sink.nothing(key));
    }
  }

  /** One word of a closed list. */
  record Word<E extends Enum<E>>(List<E> values) implements Shape<E> {
    @Override
    public E read(FieldSource source, String key) {
      return value(values, source.word(key, words(values)));
    }

    @Override
    public void write(FieldSink sink, String key, E value) {
      sink.text(key, word(value));
    }
  }

  /** Some words of a closed list. */
  record Words<E extends Enum<E>>(List<E> values) implements Shape<List<E>> {
    @Override
    public List<E> read(FieldSource source, String key) {
      List<E> found = new ArrayList<>();
      for (String word : source.words(key, words(values))) {
        found.add(value(values, word));
      }
      return found;
    }

    @Override
    public void write(FieldSink sink, String key, List<E> value) {
      sink.texts(key, words(value));
    }
  }

  /** Groups of fields, each as its own table says. */
  record Groups<T>(FieldTable<T> table) implements Shape<List<T>> {
    @Override
    public List<T> read(FieldSource source, String key) {
      List<T> found = new ArrayList<>();
      for (FieldSource group : source.groups(key)) {
        found.add(table.read(group));
      }
      return found;
    }

    @Override
    public void write(FieldSink sink, String key, List<T> value) {
      List<Consumer<FieldSink>> groups = new ArrayList<>();
      for (T item : value) {
        groups.add(each -> table.write(item, each));
      }
      sink.groups(key, groups);
    }

    @Override
    public Optional<String> fault(List<T> value) {
      for (T item : value) {
        Optional<String> fault = table.fault(item);
        if (fault.isPresent()) {
          return fault;
        }
      }
      return Optional.empty();
    }

    @Override
    public void check(Checks checks, String input, List<T> value) {
      for (T item : value) {
        table.check(checks, input, item);
      }
    }
  }

  /** A constant as a file says it: {@code WITHIN_WINDOW} is {@code within-window}. */
  static String word(Enum<?> constant) {
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < constant.name().length(); i++) {
      char letter = constant.name().charAt(i);
      word.append(letter == '_' ? '-' : AsciiText.lower(letter));
    }
    return word.toString();
  }

  /** The words of some constants. */
  static List<String> words(List<? extends Enum<?>> constants) {
    List<String> words = new ArrayList<>();
    for (Enum<?> constant : constants) {
      words.add(word(constant));
    }
    return words;
  }

  private static <E extends Enum<E>> E value(List<E> values, String word) {
    for (E value : values) {
      if (word(value).equals(word)) {
        return value;
      }
    }
    throw new IllegalArgumentException("no such word: " + word);
  }
}
