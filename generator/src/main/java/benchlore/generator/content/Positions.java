package benchlore.generator.content;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where each value of one YAML file was written, by JSON pointer.
 *
 * @param file path as shown to the author
 * @param lines the file's lines
 * @param values where each value starts
 * @param keys where each key starts
 */
record Positions(
    String file, List<String> lines, Map<String, Place> values, Map<String, Place> keys) {
  /** Copies the list and the maps. */
  Positions {
    lines = List.copyOf(lines);
    values = Map.copyOf(values);
    keys = Map.copyOf(keys);
  }

  /**
   * Where the value at a JSON pointer starts; for an unknown pointer the nearest value around it.
   */
  Place value(String pointer) {
    return nearest(values, pointer);
  }

  /** Where the key at a JSON pointer starts, else its value. */
  Place key(String pointer) {
    Place place = keys.get(pointer);
    return place == null ? value(pointer) : place;
  }

  /** Where a piece of the text at a JSON pointer is written, else where that text starts. */
  Place within(String pointer, Pattern piece) {
    Place start = value(pointer);
    for (int line = start.line(); line <= lines.size(); line++) {
      Matcher found = piece.matcher(lines.get(line - 1));
      if (found.find(line == start.line() ? start.column() - 1 : 0)) {
        return new Place(file, line, found.start() + 1);
      }
    }
    return start;
  }

  private Place nearest(Map<String, Place> places, String pointer) {
    String at = pointer;
    while (true) {
      Place place = places.get(at);
      if (place != null) {
        return place;
      }
      int slash = at.lastIndexOf('/');
      if (slash < 0) {
        return new Place(file, 1, 1);
      }
      at = at.substring(0, slash);
    }
  }

  /** A JSON pointer as a key path: {@code /data/names/0/use} is {@code data.names[0].use}. */
  static String dotted(String pointer) {
    StringBuilder text = new StringBuilder();
    for (String part : pointer.split("/", -1)) {
      if (part.isEmpty()) {
        continue;
      }
      if (part.chars().allMatch(Character::isDigit)) {
        text.append('[').append(part).append(']');
      } else {
        text.append(text.isEmpty() ? "" : ".").append(part.replace("~1", "/").replace("~0", "~"));
      }
    }
    return text.toString();
  }
}
