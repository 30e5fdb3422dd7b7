package benchlore.generator.content;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;

/**
 * One parsed YAML file with the place of every value.
 *
 * @param file path as shown to the author
 * @param text the file as it was written
 * @param root the parsed tree
 * @param positions where each value was written
 */
record YamlFile(String file, String text, JsonNode root, Positions positions) {
  /** Parses a file; gives problems for what is not YAML, repeated keys and disguised numbers. */
  static LoadResult<YamlFile> parse(String file, byte[] bytes) {
    Place top = new Place(file, 1, 1);
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return failed(top, "the file is not UTF-8 text", "Save it as UTF-8 in your editor.");
    }
    try {
      return parse(file, text);
    } catch (MarkedYAMLException e) {
      return failed(
          place(file, text, e),
          "this is not YAML: " + e.getProblem(),
          "Look at this line and the one above: indent with spaces, close every quote and bracket,"
              + " quote text that holds `: ` or starts with a special sign.");
    } catch (YAMLException e) {
      return failed(top, "this is not YAML: " + e.getMessage(), "Write it plainer.");
    }
  }

  /**
   * Where the parser gave up; at the end of the file, rather where it started on what it missed.
   */
  private static Place place(String file, String text, MarkedYAMLException e) {
    Mark mark = e.getProblemMark();
    boolean atEnd = mark == null || mark.getIndex() >= text.strip().length();
    Mark shown = atEnd && e.getContextMark() != null ? e.getContextMark() : mark;
    return shown == null
        ? new Place(file, 1, 1)
        : new Place(file, shown.getLine() + 1, shown.getColumn() + 1);
  }

  private static LoadResult<YamlFile> parse(String file, String text) {
    YamlTree tree = YamlTree.parse(file, text);
    if (!tree.problems().isEmpty()) {
      return LoadResult.failed(tree.problems());
    }
    if (!tree.root().isObject()) {
      return failed(
          new Place(file, 1, 1),
          "the file holds no record",
          "Write the record's fields, one a line: id, title, names and so on.");
    }
    return LoadResult.of(new YamlFile(file, text, tree.root(), tree.positions()));
  }

  private static LoadResult<YamlFile> failed(Place place, String what, String todo) {
    return LoadResult.failed(List.of(new Problem(place, "", what, todo)));
  }

  /** Where the value at a JSON pointer was written. */
  SourceLocation spot(String pointer) {
    return new SourceLocation(positions.value(pointer), Positions.dotted(pointer));
  }

  /** Where the key at a JSON pointer was written. */
  SourceLocation keySpot(String pointer) {
    return new SourceLocation(positions.key(pointer), Positions.dotted(pointer));
  }

  /** Where a piece of the text at a JSON pointer was written, else where the text starts. */
  SourceLocation spotWithin(String pointer, Pattern piece) {
    return new SourceLocation(positions.within(pointer, piece), Positions.dotted(pointer));
  }
}
