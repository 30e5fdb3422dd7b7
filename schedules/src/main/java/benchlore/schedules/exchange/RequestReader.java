package benchlore.schedules.exchange;

import benchlore.schedules.material.FieldSource;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One object of a request. A key that is missing or of the wrong kind is an {@link
 * IllegalArgumentException} that names it; one nobody asks for is left alone.
 */
final class RequestReader implements FieldSource {
  private static final int MOST_ITEMS = 10_000;
  private final Node object;
  private final String path;

  private RequestReader(Node object, String path) {
    this.object = object;
    this.path = path;
  }

  /** The object a request is. */
  static RequestReader of(Node request) {
    return of(request, "request");
  }

  private static RequestReader of(Node value, String path) {
    if (value.kind() != Node.Kind.OBJECT) {
      throw wrong(path, "an object");
    }
    return new RequestReader(value, path);
  }

  private static IllegalArgumentException wrong(String path, String kind) {
    return new IllegalArgumentException(path + " must be " + kind);
  }

  private Node value(String key, Node.Kind kind, String words) {
    return checked(object.field(key), path(key), kind, words);
  }

  private static Node checked(Node value, String path, Node.Kind kind, String words) {
    if (value.kind() != kind) {
      throw wrong(path, words);
    }
    return value;
  }

  private String path(String key) {
    return path + "." + key;
  }

  boolean has(String key) {
    return object.field(key).kind() != Node.Kind.ABSENT;
  }

  double number(String key) {
    return value(key, Node.Kind.NUMBER, "a number").number();
  }

  OptionalDouble optionalNumber(String key) {
    return has(key) ? OptionalDouble.of(number(key)) : OptionalDouble.empty();
  }

  int whole(String key) {
    double number = number(key);
    if (number != Math.floor(number) || Math.abs(number) > 2e9) {
      throw wrong(path(key), "a whole number");
    }
    return Numeric.round(number);
  }

  @Override
  public boolean flag(String key) {
    return value(key, Node.Kind.FLAG, "true or false").flag();
  }

  @Override
  public String text(String key) {
    return value(key, Node.Kind.TEXT, "a text").text();
  }

  <E extends Enum<E>> E word(String key, E[] values) {
    return word(text(key), path(key), values);
  }

  <E extends Enum<E>> Optional<E> optionalWord(String key, E[] values) {
    return has(key) ? Optional.of(word(key, values)) : Optional.empty();
  }

  private static <E extends Enum<E>> E word(String name, String path, E[] values) {
    StringBuilder known = new StringBuilder("one of");
    for (E value : values) {
      if (value.name().equals(name)) {
        return value;
      }
      known.append(' ').append(value.name());
    }
    throw wrong(path, known.toString());
  }

  /** Reads one item of a list. */
  private interface Item<T> {
    T read(Node item, String path);
  }

  private <T> List<T> items(String key, Item<T> reader) {
    return items(object.field(key), path(key), reader);
  }

  private static <T> List<T> items(Node node, String path, Item<T> reader) {
    Node list = checked(node, path, Node.Kind.LIST, "a list");
    if (list.size() > MOST_ITEMS) {
      throw wrong(path, "a list of at most " + MOST_ITEMS);
    }
    List<T> items = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      items.add(reader.read(list.item(i), path + "[" + i + "]"));
    }
    return items;
  }

  @Override
  public String word(String key, List<String> known) {
    return known(text(key), path(key), known);
  }

  @Override
  public List<String> words(String key, List<String> known) {
    return items(
        key, (item, at) -> known(checked(item, at, Node.Kind.TEXT, "a text").text(), at, known));
  }

  private static String known(String word, String path, List<String> known) {
    if (!known.contains(word)) {
      throw wrong(path, "one of " + String.join(" ", known));
    }
    return word;
  }

  @Override
  public List<FieldSource> groups(String key) {
    return has(key) ? items(key, RequestReader::of) : List.of();
  }

  <E extends Enum<E>> List<E> words(String key, E[] values) {
    return items(
        key, (item, at) -> word(checked(item, at, Node.Kind.TEXT, "a text").text(), at, values));
  }

  List<String> texts(String key) {
    return items(key, (item, at) -> checked(item, at, Node.Kind.TEXT, "a text").text());
  }

  List<Double> numbers(String key) {
    return items(key, (item, at) -> checked(item, at, Node.Kind.NUMBER, "a number").number());
  }

  <T> List<T> list(String key, Function<RequestReader, T> part) {
    return items(key, (item, at) -> part.apply(of(item, at)));
  }

  /** A list of lists. */
  <T> List<List<T>> lists(String key, Function<RequestReader, T> part) {
    return items(key, (list, at) -> items(list, at, (item, place) -> part.apply(of(item, place))));
  }

  RequestReader group(String key) {
    return of(object.field(key), path(key));
  }

  <T> Optional<T> optional(String key, Function<RequestReader, T> part) {
    return has(key) ? Optional.of(part.apply(group(key))) : Optional.empty();
  }

  @Override
  public SourcedRange figure(String key) {
    return datum(group(key));
  }

  @Override
  public Optional<String> optionalText(String key) {
    return has(key) ? Optional.of(text(key)) : Optional.empty();
  }

  @Override
  public Optional<SourcedRange> optionalFigure(String key) {
    return optional(key, RequestReader::datum);
  }

  private static SourcedRange datum(RequestReader f) {
    return new SourcedRange(
        f.number("low"), f.number("high"), f.word("unit", Unit.values()), f.provenance("from"));
  }

  Provenance provenance(String key) {
    RequestReader f = group(key);
    return new Provenance(
        f.word("kind", Provenance.Kind.values()), f.text("title"), f.text("where"));
  }

  /** {@code 2027-01-12T18:30} or with seconds. */
  Moment moment(String key) {
    return read(text(key), path(key), Moment::parse);
  }

  /** A day such as {@code 2027-01-12}. */
  Date day(String key) {
    return read(text(key), path(key), Date::parse);
  }

  /** Days such as {@code 2027-01-12}. */
  List<Date> days(String key) {
    return items(
        key,
        (item, at) -> read(checked(item, at, Node.Kind.TEXT, "a day").text(), at, Date::parse));
  }

  private static <T> T read(String text, String path, Function<String, T> reader) {
    try {
      return reader.apply(text);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(path + " " + e.getMessage(), e);
    }
  }
}
