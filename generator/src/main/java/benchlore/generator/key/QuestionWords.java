package benchlore.generator.key;

import benchlore.generator.content.LibraryRecord;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Makes questions from a record's closed-list words and what a reader is shown for each. */
final class QuestionWords {
  private QuestionWords() {}

  /** Pairs of a record's word and what is shown for it, in the order asked. */
  static Map<String, String> words(String... pairs) {
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      words.put(pairs[i], pairs[i + 1]);
    }
    return Collections.unmodifiableMap(words);
  }

  /** A question that a record answers in one way. */
  static KeyQuestion one(String question, Map<String, String> words, String key) {
    return of(question, words, entry -> List.of(entry.facts().words(key)));
  }

  /** A question that a record may answer in several ways. */
  static KeyQuestion many(String question, Map<String, String> words, String key) {
    return of(question, words, entry -> entry.facts().list(key));
  }

  /** A question whose answers are the words for what {@code facts} finds in a record. */
  static KeyQuestion of(
      String question, Map<String, String> words, Function<LibraryRecord, List<String>> facts) {
    return new KeyQuestion(
        question,
        words.values().stream().distinct().toList(),
        entry -> {
          Set<String> fitting = new LinkedHashSet<>();
          facts.apply(entry).forEach(word -> fitting.add(words.getOrDefault(word, word)));
          return fitting;
        });
  }
}
