package benchlore.generator.site;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Name;
import benchlore.generator.key.KeyQuestions;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Every fault on one page, by when it showed and where, with its causes and what to do. */
final class FaultsPage {
  static final String URL = "faults.html";

  private static final String WHEN = "appeared";
  private static final String WHERE = "on";
  private static final String SEEN = "look";

  private final Library library;
  private final Set<String> pictured;
  private final Markdown markdown;

  FaultsPage(Library library, Set<String> pictured) {
    this.library = library;
    this.pictured = pictured;
    this.markdown = new Markdown(library, "");
  }

  /** Values for the template {@code faults}. */
  Map<String, Object> values() {
    Map<String, Object> values = new HashMap<>();
    values.put("here", "faults");
    values.put("pictures", pictured);
    values.put("index", index());
    values.put("rows", List.of(row("when", WHEN), row("where", WHERE), row("see", SEEN)));
    values.put("faults", library.of(Kind.DEFECTS).stream().map(this::fault).toList());
    return values;
  }

  /** Faults by when they showed, then by where. */
  private List<Map<String, Object>> index() {
    List<Map<String, Object>> groups = new ArrayList<>();
    for (Map.Entry<String, String> when : used(WHEN).entrySet()) {
      List<Map<String, Object>> places = new ArrayList<>();
      for (Map.Entry<String, String> where : KeyQuestions.ofFault(WHERE).entrySet()) {
        List<LibraryRecord> faults =
            library.of(Kind.DEFECTS).stream()
                .filter(f -> has(f, WHEN, when.getKey()) && has(f, WHERE, where.getKey()))
                .toList();
        if (!faults.isEmpty()) {
          places.add(Map.of("words", Labels.capital(where.getValue()), "faults", faults));
        }
      }
      groups.add(Map.of("words", Labels.capital(when.getValue()), "places", places));
    }
    return groups;
  }

  /** A row of toggles: the name in the address, the question, and what can be pressed. */
  private Map<String, Object> row(String name, String fact) {
    String question =
        switch (name) {
          case "when" -> "When did it show?";
          case "where" -> "Where is it?";
          default -> "What do you see?";
        };
    List<Map<String, String>> answers = new ArrayList<>();
    used(fact)
        .forEach(
            (word, words) ->
                answers.add(
                    Map.of(
                        "word",
                        word,
                        "words",
                        words,
                        "picture",
                        fact.equals(SEEN) ? picture(word) : "")));
    return Map.of("name", name, "question", question, "answers", answers);
  }

  /** The picture for what is seen: of the first fault that looks so above all. */
  private String picture(String look) {
    return library.of(Kind.DEFECTS).stream()
        .filter(f -> f.facts().list(SEEN).get(0).equals(look) && pictured.contains(f.id()))
        .map(f -> "drawings/" + f.id() + ".svg")
        .findFirst()
        .orElse("");
  }

  /** The words of a fact that some fault has, in the order asked. */
  private Map<String, String> used(String fact) {
    Map<String, String> used = new java.util.LinkedHashMap<>(KeyQuestions.ofFault(fact));
    used.keySet().removeIf(w -> library.of(Kind.DEFECTS).stream().noneMatch(f -> has(f, fact, w)));
    return used;
  }

  private static boolean has(LibraryRecord fault, String fact, String word) {
    return fault.facts().list(fact).contains(word);
  }

  private Map<String, Object> fault(LibraryRecord entry) {
    Map<String, Object> fault = new HashMap<>();
    fault.put("entry", entry);
    fault.put("when", String.join(" ", entry.facts().list(WHEN)));
    fault.put("where", String.join(" ", entry.facts().list(WHERE)));
    fault.put("see", String.join(" ", entry.facts().list(SEEN)));
    fault.put("shown", Labels.capital(shown(entry, WHEN) + "; " + shown(entry, WHERE)));
    fault.put("names", entry.names().stream().map(Name::text).collect(Collectors.joining(", ")));
    fault.put("lay", String.join(", ", entry.lay()));
    fault.put("symptom", markdown.line(entry.facts().words("symptom")));
    fault.put("looks", markdown.line(entry.text().looks()));
    fault.put("causes", entry.facts().groups("causes").stream().map(this::cause).toList());
    return fault;
  }

  private static String shown(LibraryRecord entry, String fact) {
    Map<String, String> words = KeyQuestions.ofFault(fact);
    return String.join(", ", entry.facts().list(fact).stream().map(words::get).toList());
  }

  private Map<String, String> cause(Facts cause) {
    Map<String, String> texts = new HashMap<>();
    for (String key : List.of("cause", "sign", "cure", "prevention")) {
      texts.put(key, markdown.line(cause.words(key)));
    }
    return texts;
  }
}
