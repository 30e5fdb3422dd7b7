package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Name;
import benchlore.generator.key.KeyQuestions;
import benchlore.generator.page.FaultsModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Fills the page of every fault, by when it showed and where, with its causes and what to do. */
final class FaultsPage {
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

  FaultsModel model() {
    return new FaultsModel(
        pictured,
        index(),
        List.of(row("when", WHEN), row("where", WHERE), row("see", SEEN)),
        library.of(Kind.DEFECTS).stream().map(this::fault).toList());
  }

  /** Faults by when they showed, then by where. */
  private List<FaultsModel.Group> index() {
    List<FaultsModel.Group> groups = new ArrayList<>();
    for (Map.Entry<String, String> when : used(WHEN).entrySet()) {
      List<FaultsModel.Place> places = new ArrayList<>();
      for (Map.Entry<String, String> where : KeyQuestions.ofFault(WHERE).entrySet()) {
        List<LibraryRecord> faults =
            library.of(Kind.DEFECTS).stream()
                .filter(f -> has(f, WHEN, when.getKey()) && has(f, WHERE, where.getKey()))
                .toList();
        if (!faults.isEmpty()) {
          places.add(new FaultsModel.Place(Labels.capital(where.getValue()), faults));
        }
      }
      groups.add(new FaultsModel.Group(Labels.capital(when.getValue()), places));
    }
    return groups;
  }

  /** A row of toggles: the name in the address, the question, and what can be pressed. */
  private FaultsModel.Question row(String name, String fact) {
    String question =
        switch (name) {
          case "when" -> "When did it show?";
          case "where" -> "Where is it?";
          default -> "What do you see?";
        };
    List<FaultsModel.Toggle> answers = new ArrayList<>();
    used(fact)
        .forEach(
            (word, words) -> {
              String picture = fact.equals(SEEN) ? picture(word) : "";
              answers.add(new FaultsModel.Toggle(word, words, picture));
            });
    return new FaultsModel.Question(name, question, answers);
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
    Map<String, String> used = new LinkedHashMap<>(KeyQuestions.ofFault(fact));
    used.keySet().removeIf(w -> library.of(Kind.DEFECTS).stream().noneMatch(f -> has(f, fact, w)));
    return used;
  }

  private static boolean has(LibraryRecord fault, String fact, String word) {
    return fault.facts().list(fact).contains(word);
  }

  private FaultsModel.Fault fault(LibraryRecord entry) {
    FaultsModel.Found found =
        new FaultsModel.Found(
            String.join(" ", entry.facts().list(WHEN)),
            String.join(" ", entry.facts().list(WHERE)),
            String.join(" ", entry.facts().list(SEEN)),
            entry.names().stream().map(Name::text).collect(Collectors.joining(", ")),
            String.join(", ", entry.lay()));
    return new FaultsModel.Fault(
        entry,
        found,
        Labels.capital(shown(entry, WHEN) + "; " + shown(entry, WHERE)),
        markdown.line(entry.facts().words("symptom")),
        markdown.line(entry.text().looks()),
        FactViews.causes(entry.facts(), markdown));
  }

  private static String shown(LibraryRecord entry, String fact) {
    Map<String, String> words = KeyQuestions.ofFault(fact);
    return String.join(", ", entry.facts().list(fact).stream().map(words::get).toList());
  }
}
