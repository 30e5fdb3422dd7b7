package benchlore.generator.library;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.util.ArrayList;
import java.util.List;

/**
 * One parsed YAML file with the place of every value.
 *
 * @param file path as shown to the author
 * @param root the parsed tree
 * @param positions where each value was written
 */
record YamlFile(String file, JsonNode root, Positions positions) {
  private static final YAMLMapper MAPPER =
      new YAMLMapper(
          YAMLFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build());

  /** Parses a file; gives problems for what is not YAML, repeated keys and disguised numbers. */
  static Loaded<YamlFile> parse(String file, String text) {
    Positions positions;
    try {
      positions = Positions.of(file, text);
      List<Problem> problems = new ArrayList<>(positions.problems());
      if (!problems.isEmpty()) {
        return Loaded.failed(problems);
      }
      JsonNode root = MAPPER.readTree(text);
      if (!root.isObject()) {
        return Loaded.failed(
            List.of(
                new Problem(
                    new Place(file, 1, 1),
                    "",
                    "the file holds no record",
                    "Write the record's fields, one a line: id, title, names …")));
      }
      return Loaded.of(new YamlFile(file, root, positions));
    } catch (org.yaml.snakeyaml.error.MarkedYAMLException e) {
      var mark = e.getProblemMark();
      Place place =
          mark == null
              ? new Place(file, 1, 1)
              : new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
      return Loaded.failed(
          List.of(
              new Problem(
                  place,
                  "",
                  "this is not YAML: " + e.getProblem(),
                  "Look at this line and the one above: indent with spaces, quote text that holds ': '"
                      + " or starts with a special character.")));
    } catch (JacksonException e) {
      JsonLocation at = e.getLocation();
      Place place =
          new Place(file, at == null ? 1 : at.getLineNr(), at == null ? 1 : at.getColumnNr());
      return Loaded.failed(
          List.of(
              new Problem(place, "", "this can't be read: " + e.getOriginalMessage(), "Mend it.")));
    }
  }
}
