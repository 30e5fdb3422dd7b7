package benchlore.generator.library;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;

/**
 * Checks what no schema can: that ids are unique and match their file, that ranges run upward, and
 * that every reference points at something. A broken reference is reported where it was written.
 */
final class References {
  private static final Set<String> TO_ANY = Set.of("related", "needs");

  private final Map<String, YamlFile> entries;
  private final Map<String, String> solvents;
  private final Set<String> sources;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * Prepares to check.
   *
   * @param entries every record's file by id
   * @param solvents ids of solvents (value unused but for messages)
   * @param sources ids of sources
   */
  References(Map<String, YamlFile> entries, Map<String, String> solvents, Set<String> sources) {
    this.entries = entries;
    this.solvents = solvents;
    this.sources = sources;
  }

  /** Every problem in one file. */
  List<Problem> check(YamlFile yaml) {
    problems.clear();
    walk(yaml, yaml.root(), "", "");
    return List.copyOf(problems);
  }

  private void walk(YamlFile yaml, JsonNode node, String pointer, String field) {
    if (node.isObject()) {
      checkRange(yaml, node, pointer);
      node.properties()
          .forEach(f -> walk(yaml, f.getValue(), pointer + "/" + f.getKey(), f.getKey()));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        walk(yaml, node.get(i), pointer + "/" + i, field);
      }
    } else if (node.isTextual()) {
      checkText(yaml, node.asText(), pointer, field);
    }
  }

  private void checkText(YamlFile yaml, String text, String pointer, String field) {
    if (field.equals("source")) {
      checkId(yaml, text, pointer, "source", sources);
    } else if (field.equals("solvent")) {
      checkId(yaml, text, pointer, "solvent", solvents.keySet());
    } else if (TO_ANY.contains(field) || (field.equals("for") && pointer.startsWith("/mistaken"))) {
      checkId(yaml, text, pointer, "record", entries.keySet());
    } else {
      Matcher links = Prose.LINK.matcher(text);
      while (links.find()) {
        checkId(yaml, links.group(1), pointer, "record", entries.keySet());
      }
    }
  }

  private void checkId(
      YamlFile yaml, String id, String pointer, String what, Set<String> accepted) {
    if (accepted.contains(id)) {
      return;
    }
    String todo =
        Suggestions.nearest(id, new TreeSet<>(accepted))
            .map(near -> "Did you mean `" + near + "`?")
            .orElse("Write that record, or leave the reference away.");
    problems.add(
        new Problem(
            yaml.positions().value(pointer),
            Positions.dotted(pointer),
            "`" + id + "` points at no " + what,
            todo));
  }

  private void checkRange(YamlFile yaml, JsonNode node, String pointer) {
    JsonNode range = node.path("range");
    if (range.size() == 2 && range.get(0).asDouble() > range.get(1).asDouble()) {
      problems.add(
          new Problem(
              yaml.positions().value(pointer + "/range"),
              Positions.dotted(pointer + "/range"),
              "the range runs downward",
              "Write the smaller end first."));
    }
  }
}
