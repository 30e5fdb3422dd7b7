package benchlore.generator.browser;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Unit;
import benchlore.schedules.numeric.Numeric;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One object of a request in JSON. A key that is missing or of the wrong kind is an {@link
 * IllegalArgumentException} that names it.
 */
final class Asked {
  private final Map<?, ?> object;
  private final String path;

  private Asked(Map<?, ?> object, String path) {
    this.object = object;
    this.path = path;
  }

  /** The object a text holds. */
  static Asked of(String json) {
    return of(JsonReader.read(json), "request");
  }

  private static Asked of(Object value, String path) {
    if (value instanceof Map<?, ?> map) {
      return new Asked(map, path);
    }
    throw new IllegalArgumentException(path + " must be an object");
  }

  private IllegalArgumentException wrong(String key, String kind) {
    return new IllegalArgumentException(path + "." + key + " must be " + kind);
  }

  boolean has(String key) {
    return object.get(key) != null;
  }

  double number(String key) {
    if (object.get(key) instanceof Double number) {
      return number;
    }
    throw wrong(key, "a number");
  }

  OptionalDouble optionalNumber(String key) {
    return has(key) ? OptionalDouble.of(number(key)) : OptionalDouble.empty();
  }

  int whole(String key) {
    double number = number(key);
    if (number == Math.floor(number) && Math.abs(number) < 2e9) {
      return Numeric.round(number);
    }
    throw wrong(key, "a whole number");
  }

  boolean flag(String key) {
    if (object.get(key) instanceof Boolean flag) {
      return flag;
    }
    throw wrong(key, "true or false");
  }

  String text(String key) {
    if (object.get(key) instanceof String text) {
      return text;
    }
    throw wrong(key, "a text");
  }

  <E extends Enum<E>> E word(String key, E[] values) {
    return word(key, text(key), values);
  }

  private <E extends Enum<E>> E word(String key, String name, E[] values) {
    for (E value : values) {
      if (value.name().equals(name)) {
        return value;
      }
    }
    throw wrong(key, "one of the words known there");
  }

  <E extends Enum<E>> List<E> words(String key, E[] values) {
    List<E> words = new ArrayList<>();
    for (Object item : items(key)) {
      words.add(word(key, item instanceof String name ? name : "", values));
    }
    return words;
  }

  List<Double> numbers(String key) {
    List<Double> numbers = new ArrayList<>();
    for (Object item : items(key)) {
      if (!(item instanceof Double number)) {
        throw wrong(key, "a list of numbers");
      }
      numbers.add(number);
    }
    return numbers;
  }

  private List<?> items(String key) {
    if (object.get(key) instanceof List<?> list) {
      return list;
    }
    throw wrong(key, "a list");
  }

  Asked group(String key) {
    return of(object.get(key), path + "." + key);
  }

  <T> Optional<T> optional(String key, Function<Asked, T> part) {
    return has(key) ? Optional.of(part.apply(group(key))) : Optional.empty();
  }

  <T> List<T> list(String key, Function<Asked, T> part) {
    List<T> list = new ArrayList<>();
    for (Object item : items(key)) {
      list.add(part.apply(of(item, path + "." + key)));
    }
    return list;
  }

  Datum datum(String key) {
    return datum(group(key));
  }

  Optional<Datum> optionalDatum(String key) {
    return optional(key, Asked::datum);
  }

  private static Datum datum(Asked f) {
    return new Datum(
        f.number("low"), f.number("high"), f.word("unit", Unit.values()), f.provenance("from"));
  }

  Provenance provenance(String key) {
    Asked f = group(key);
    return new Provenance(
        f.word("kind", Provenance.Kind.values()), f.text("title"), f.text("where"));
  }

  /** {@code 2027-01-12T18:30} or with seconds. */
  LocalDateTime moment(String key) {
    String text = text(key);
    boolean seconds = text.length() == 19;
    if (!seconds && text.length() != 16) {
      throw wrong(key, "a moment such as 2027-01-12T18:30");
    }
    try {
      return LocalDateTime.of(
          digits(key, text, 0, 4),
          digits(key, text, 5, 7),
          digits(key, text, 8, 10),
          digits(key, text, 11, 13),
          digits(key, text, 14, 16),
          seconds ? digits(key, text, 17, 19) : 0);
    } catch (java.time.DateTimeException e) {
      throw wrong(key, "a moment of the calendar");
    }
  }

  int digits(String key, String text, int from, int to) {
    int value = 0;
    for (int i = from; i < to; i++) {
      int digit = i < text.length() ? text.charAt(i) - '0' : -1;
      if (digit < 0 || digit > 9) {
        throw wrong(key, "made of digits there");
      }
      value = value * 10 + digit;
    }
    return value;
  }

  List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    for (Object item : items(key)) {
      if (!(item instanceof String text)) {
        throw wrong(key, "a list of texts");
      }
      texts.add(text);
    }
    return texts;
  }
}
