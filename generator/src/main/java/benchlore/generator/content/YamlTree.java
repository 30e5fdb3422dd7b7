package benchlore.generator.content;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringReader;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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
 * One YAML text, parsed once: the values as a JSON tree, which the schemas check, and where each
 * was written. On the way it finds repeated keys, anchors, and numbers that YAML would read as
 * something else than they look: {@code 0123} is octal, {@code 1_000} is 1000.
 */
final class YamlTree {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final Pattern DISGUISED =
      Pattern.compile("[-+]?(0[0-9_]+|[0-9][0-9_]*_[0-9_.]*|0[xb].*|[0-9]+:.*|\\.inf|\\.nan)");
  private static final Pattern LEADING_ZERO = Pattern.compile("[-+]?0[0-9_]+");
  private static final Pattern INTEGER = Pattern.compile("[-+]?[0-9]+");
  private static final Pattern DECIMAL =
      Pattern.compile("[-+]?([0-9]+[.]?[0-9]*|[.][0-9]+)([eE][-+]?[0-9]+)?");
  private static final Set<String> TRUE = Set.of("true", "yes", "on");
  private static final int DEEPEST = 20;

  private final String file;
  private final Map<String, Place> values = new HashMap<>();
  private final Map<String, Place> keys = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Set<Node> anchored = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<String> lines;
  private final JsonNode root;

  private YamlTree(String file, String text) {
    this.file = file;
    this.lines = text.lines().toList();
    LoaderOptions options = new LoaderOptions();
    options.setNestingDepthLimit(DEEPEST);
    Node composed = new Yaml(options).compose(new StringReader(text));
    this.root = composed == null ? MissingNode.getInstance() : walk(composed, "");
  }

  /** Parses a text; throws the parser's own exception where it is not YAML. */
  static YamlTree parse(String file, String text) {
    return new YamlTree(file, text);
  }

  /** The values; missing where the text holds none. Means nothing where there are problems. */
  JsonNode root() {
    return root;
  }

  /** Where each value was written. */
  Positions positions() {
    return new Positions(file, lines, values, keys);
  }

  /** Repeated keys, anchors and disguised numbers. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  private JsonNode walk(Node node, String pointer) {
    values.put(pointer, place(node.getStartMark()));
    if (node.getAnchor() != null) {
      anchor(node, pointer);
    } else if (node instanceof MappingNode mapping) {
      return object(mapping, pointer);
    } else if (node instanceof SequenceNode sequence) {
      ArrayNode array = JSON.arrayNode(sequence.getValue().size());
      for (Node item : sequence.getValue()) {
        array.add(walk(item, pointer + "/" + array.size()));
      }
      return array;
    } else if (node instanceof ScalarNode scalar) {
      checkNumber(scalar, pointer);
      return value(scalar);
    }
    return MissingNode.getInstance();
  }

  /** An alias reads as the very node its anchor names, so both give one problem. */
  private void anchor(Node node, String pointer) {
    if (anchored.add(node)) {
      problems.add(
          new Problem(
              values.get(pointer),
              Positions.dotted(pointer),
              "the anchor `&" + node.getAnchor() + "` is not accepted: a record stands for itself",
              "Take `&"
                  + node.getAnchor()
                  + "` away and write the value out wherever it is used."));
    }
  }

  private ObjectNode object(MappingNode mapping, String pointer) {
    ObjectNode object = JSON.objectNode();
    for (NodeTuple tuple : mapping.getValue()) {
      Place place = place(tuple.getKeyNode().getStartMark());
      if (!(tuple.getKeyNode() instanceof ScalarNode scalar)) {
        problems.add(
            new Problem(
                place,
                Positions.dotted(pointer),
                "the name of a field is one word, and this is a list or a group",
                "Put quotes round it if it is text."));
        continue;
      }
      String key = scalar.getValue();
      String child = pointer + "/" + key.replace("~", "~0").replace("/", "~1");
      if (object.has(key)) {
        problems.add(
            new Problem(
                place,
                Positions.dotted(child),
                "the field `" + key + "` is written twice",
                "Keep one; the first is on line " + keys.get(child).line() + "."));
        continue;
      }
      keys.put(child, place);
      object.set(key, walk(tuple.getValueNode(), child));
    }
    return object;
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
              Positions.dotted(pointer),
              "`" + text + "` is not the number it looks: YAML reads it otherwise",
              "Write a plain decimal number, or put quotes round it if it is text."));
    }
  }

  private static boolean tooLarge(String text) {
    return text.matches("[-+0-9.eE]+") && Double.isInfinite(Double.parseDouble(text));
  }

  /** A scalar as its tag says; what does not look like its tag stays text, for the schema. */
  private static JsonNode value(ScalarNode scalar) {
    String text = scalar.getValue();
    Tag tag = scalar.getTag();
    if (tag.equals(Tag.INT) && INTEGER.matcher(text).matches()) {
      return integer(new BigInteger(text));
    } else if (tag.equals(Tag.FLOAT) && DECIMAL.matcher(text).matches()) {
      return JSON.numberNode(Double.parseDouble(text));
    } else if (tag.equals(Tag.BOOL)) {
      return JSON.booleanNode(TRUE.contains(text.toLowerCase(Locale.ROOT)));
    }
    return tag.equals(Tag.NULL) ? JSON.nullNode() : JSON.textNode(text);
  }

  private static JsonNode integer(BigInteger number) {
    if (number.bitLength() < Integer.SIZE) {
      return JSON.numberNode(number.intValue());
    }
    return number.bitLength() < Long.SIZE
        ? JSON.numberNode(number.longValue())
        : JSON.numberNode(number);
  }

  private Place place(Mark mark) {
    return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
  }
}
