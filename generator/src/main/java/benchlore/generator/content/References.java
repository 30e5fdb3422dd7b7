package benchlore.generator.content;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Checks what no schema can: that ranges run upward, and that every reference points at something.
 * A broken reference is reported where it was written.
 */
final class References {
  private static final Set<String> TO_ANY = Set.of("related", "needs");

  /** Fields that hold the id of one kind of record. */
  private static final Map<String, Kind> TO_KIND =
      Map.of(
          "solvent", Kind.SOLVENTS,
          "species", Kind.SPECIES,
          "adhesive", Kind.ADHESIVES,
          "finish", Kind.FINISHES,
          "bit", Kind.ROUTER_BITS,
          "record", Kind.FINISHES);

  private static final Pattern LOOSE_LINK = Pattern.compile("\\[\\[([^\\]|]*)(\\|[^\\]]*)?\\]\\]");

  private final RecordIds ids;
  private final YamlFile yaml;
  private final List<Problem> problems = new ArrayList<>();

  private References(YamlFile yaml, RecordIds ids) {
    this.yaml = yaml;
    this.ids = ids;
  }

  /** Every problem in one file. */
  static List<Problem> check(YamlFile yaml, RecordIds ids) {
    References references = new References(yaml, ids);
    references.walk(yaml.root(), "", "");
    return List.copyOf(references.problems);
  }

  private void walk(JsonNode node, String pointer, String field) {
    if (node.isObject()) {
      checkRange(node, pointer);
      for (Map.Entry<String, JsonNode> inner : node.properties()) {
        // A list of exceptions holds the same as the list it stands for.
        String name = inner.getKey().equals("none-of") ? field : inner.getKey();
        walk(inner.getValue(), pointer + "/" + inner.getKey(), name);
      }
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        walk(node.get(i), pointer + "/" + i, field);
      }
    } else if (node.isTextual()) {
      checkText(node.asText(), pointer, field);
    }
  }

  private void checkText(String text, String pointer, String field) {
    Kind kind = TO_KIND.get(field);
    if (field.equals("source")) {
      if (!ids.sources().contains(text)) {
        dangling(yaml.spot(pointer), text, "source", ids.sources());
      }
    } else if (kind != null) {
      checkKind(text, pointer, kind);
    } else if (TO_ANY.contains(field) || (field.equals("for") && pointer.startsWith("/mistaken"))) {
      checkRecord(yaml.spot(pointer), text);
    } else {
      checkLinks(text, pointer);
    }
  }

  private void checkLinks(String text, String pointer) {
    Set<String> targets = new LinkedHashSet<>();
    Matcher links = LOOSE_LINK.matcher(text);
    while (links.find()) {
      targets.add(links.group(1));
    }
    for (String target : targets) {
      Pattern written = Pattern.compile("\\[\\[" + Pattern.quote(target) + "(\\||\\]\\])");
      checkRecord(yaml.spotWithin(pointer, written), target);
    }
  }

  private void checkRecord(SourceLocation spot, String id) {
    if (ids.kind(id).isEmpty()) {
      dangling(spot, id, "record", ids.records());
    }
  }

  private void checkKind(String id, String pointer, Kind wanted) {
    Optional<Kind> kind = ids.kind(id);
    if (kind.isEmpty()) {
      dangling(yaml.spot(pointer), id, wanted.one(), ids.of(wanted));
    } else if (kind.get() != wanted) {
      problems.add(
          yaml.spot(pointer)
              .problem(
                  "`" + id + "` is a record in " + kind.get().folder() + ", no " + wanted.one(),
                  "Write the id of a record in " + wanted.folder() + "."));
    }
  }

  private void dangling(SourceLocation spot, String id, String what, Set<String> accepted) {
    String todo =
        Suggestions.nearest(id, new TreeSet<>(accepted))
            .map(near -> "Did you mean `" + near + "`?")
            .orElse("Write that " + what + ", or leave the reference away.");
    problems.add(spot.problem("`" + id + "` points at no " + what, todo));
  }

  private void checkRange(JsonNode node, String pointer) {
    JsonNode range = node.path("range");
    if (range.size() == 2 && range.get(0).asDouble() > range.get(1).asDouble()) {
      problems.add(
          yaml.spot(pointer + "/range")
              .problem(
                  "the range runs downward",
                  "Write the smaller end first: [" + range.get(1) + ", " + range.get(0) + "]."));
    }
  }
}
