package benchlore.generator.content;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * Where each value of one YAML file was written, by JSON pointer, found by a second reading of the
 * file that keeps line and column. The same reading finds repeated keys, and numbers that YAML
 * would read as something else than they look: {@code 0123} is octal, {@code 1_000} is 1000.
 */
final class Positions {
  private static final Pattern DISGUISED =
      Pattern.compile("[-+]?(0[0-9_]+|[0-9][0-9_]*_[0-9_.]*|0[xb].*|[0-9]+:.*|\\.inf|\\.nan)");
  private static final Pattern LEADING_ZERO = Pattern.compile("[-+]?0[0-9_]+");
  private static final int DEEPEST = 20;

  private final String file;
  private final List<String> lines;
  private final Map<String, Place> values = new HashMap<>();
  private final Map<String, Place> keys = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Set<Node> anchored = Collections.newSetFromMap(new IdentityHashMap<>());

  private Positions(String file, String text) {
    this.file = file;
    this.lines = text.lines().toList();
  }

  /** Reads the places; throws the parser's own exception where the text is not YAML. */
  static Positions of(String file, String text) {
    LoaderOptions options = new LoaderOptions();
    options.setNestingDepthLimit(DEEPEST);
    Positions positions = new Positions(file, text);
    Node root = new Yaml(options).compose(new StringReader(text));
    if (root != null) {
      positions.walk(root, "");
    }
    return positions;
  }

  /** Repeated keys and disguised numbers. */
  List<Problem> problems() {
    return List.copyOf(problems);
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

  private void walk(Node node, String pointer) {
    values.put(pointer, place(node.getStartMark()));
    if (node.getAnchor() != null) {
      anchor(node, pointer);
    } else if (node instanceof MappingNode mapping) {
      walkMapping(mapping, pointer);
    } else if (node instanceof SequenceNode sequence) {
      int i = 0;
      for (Node item : sequence.getValue()) {
        walk(item, pointer + "/" + i++);
      }
    } else if (node instanceof ScalarNode scalar) {
      checkNumber(scalar, pointer);
    }
  }

  /** An alias reads as the very node its anchor names, so both give one problem. */
  private void anchor(Node node, String pointer) {
    if (anchored.add(node)) {
      problems.add(
          new Problem(
              values.get(pointer),
              dotted(pointer),
              "the anchor `&" + node.getAnchor() + "` is not accepted: a record stands for itself",
              "Take `&"
                  + node.getAnchor()
                  + "` away and write the value out wherever it is used."));
    }
  }

  private void walkMapping(MappingNode mapping, String pointer) {
    Set<String> seen = new HashSet<>();
    for (NodeTuple tuple : mapping.getValue()) {
      String key = tuple.getKeyNode() instanceof ScalarNode s ? s.getValue() : "?";
      String child = pointer + "/" + key.replace("~", "~0").replace("/", "~1");
      Place place = place(tuple.getKeyNode().getStartMark());
      if (!seen.add(key)) {
        problems.add(
            new Problem(
                place,
                dotted(child),
                "the field `" + key + "` is written twice",
                "Keep one; the first is on line " + keys.get(child).line() + "."));
        continue;
      }
      keys.put(child, place);
      walk(tuple.getValueNode(), child);
    }
  }

  private void checkNumber(ScalarNode scalar, String pointer) {
    String text = scalar.getValue();
    boolean number = scalar.getTag().equals(Tag.INT) || scalar.getTag().equals(Tag.FLOAT);
    boolean disguised =
        number
            ? DISGUISED.matcher(text.toLowerCase(Locale.ROOT)).matches() || tooLarge(text)
            : LEADING_ZERO.matcher(text).matches();
    if (scalar.isPlain() && disguised) {
      problems.add(
          new Problem(
              values.get(pointer),
              dotted(pointer),
              "`" + text + "` is not the number it looks: YAML reads it otherwise",
              "Write a plain decimal number, or put quotes round it if it is text."));
    }
  }

  private static boolean tooLarge(String text) {
    return text.matches("[-+0-9.eE]+") && Double.isInfinite(Double.parseDouble(text));
  }

  private Place place(Mark mark) {
    return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
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
