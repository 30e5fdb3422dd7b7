package benchlore.generator.page;

import benchlore.generator.content.Kind;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Prose;
import benchlore.generator.key.Key;
import benchlore.generator.key.KeyQuestion;
import benchlore.generator.key.KeyQuestions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A key of questions that leads to one record of a kind.
 *
 * @param kind which
 * @param node the first question, with all that follow from it
 * @param most the most questions one is asked
 * @param plain what each record does, by id
 * @param pictures ids of the records with a small picture
 */
public record KeyModel(
    Kind kind, Key.Node node, int most, Map<String, String> plain, Set<String> pictures)
    implements PageModel {
  /** Copies the collections. */
  public KeyModel {
    plain = Map.copyOf(plain);
    pictures = Set.copyOf(pictures);
  }

  /**
   * Grows the key of a kind.
   *
   * @param kind which
   * @param entries its records
   * @param pictures ids of the records with a small picture
   * @return the key; empty where there is no record or no question
   */
  public static Optional<KeyModel> of(
      Kind kind, List<LibraryRecord> entries, Set<String> pictures) {
    List<KeyQuestion> questions = KeyQuestions.of(kind);
    if (questions.isEmpty() || entries.isEmpty()) {
      return Optional.empty();
    }
    Map<String, String> plain = new LinkedHashMap<>();
    entries.forEach(entry -> plain.put(entry.id(), Prose.plain(entry.text().does())));
    Key.Node node = Key.grow(entries, questions);
    return Optional.of(new KeyModel(kind, node, Key.MOST_QUESTIONS, plain, pictures));
  }

  /** Where a kind's key stands, from the site's root. */
  public static String url(Kind kind) {
    return "key/" + kind.folder() + ".html";
  }

  @Override
  public String template() {
    return "key";
  }
}
