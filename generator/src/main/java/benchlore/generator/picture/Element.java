package benchlore.generator.picture;

import benchlore.generator.content.Place;
import benchlore.generator.content.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One element of a picture's file.
 *
 * @param name its tag, such as {@code path}
 * @param attributes by name
 * @param children the elements within it, in order
 * @param text the words within it, white space pressed
 * @param place where its tag begins
 */
record Element(
    String name,
    Map<String, Attribute> attributes,
    List<Element> children,
    String text,
    Place place) {
  /**
   * An attribute.
   *
   * @param value as written
   * @param place where it begins
   */
  record Attribute(String value, Place place) {}

  Element {
    attributes = Map.copyOf(attributes);
    children = List.copyOf(children);
  }

  /** An attribute's value; empty text where there is none. */
  String value(String attribute) {
    return Optional.ofNullable(attributes.get(attribute)).map(Attribute::value).orElse("");
  }

  /** A plain number; 0 where there is none, empty for anything else. */
  OptionalDouble number(String attribute) {
    String value = value(attribute).strip();
    if (value.isEmpty()) {
      return OptionalDouble.of(0);
    }
    return value.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?")
        ? OptionalDouble.of(Double.parseDouble(value))
        : OptionalDouble.empty();
  }

  /** Its classes. */
  List<String> looks() {
    String classes = value("class").strip();
    return classes.isEmpty() ? List.of() : List.of(classes.split("\\s+", -1));
  }

  /** Children of a name. */
  List<Element> children(String of) {
    return children.stream().filter(child -> child.name.equals(of)).toList();
  }

  /** A problem of the whole element. */
  Problem problem(String what, String todo) {
    return new Problem(place, name, what, todo);
  }

  /** A problem of one attribute, or of the element that lacks it. */
  Problem problem(String attribute, String what, String todo) {
    Attribute found = attributes.get(attribute);
    Place where = found == null ? place : found.place();
    return new Problem(where, name + "." + attribute, what, todo);
  }
}
