package benchlore.generator.search;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Cuts text into words exactly as {@code finder/words.js} does: a browser test holds the two
 * together.
 */
final class Tokens {
  private static final Pattern DROPPED = Pattern.compile("[\\u0300-\\u036f'\\u2019]");
  private static final Pattern BETWEEN = Pattern.compile("[^a-z0-9]+");

  private Tokens() {}

  /** The words of a text, small letters without accents, in order. */
  static List<String> of(String text) {
    String flat = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
    List<String> words = new ArrayList<>();
    for (String word : BETWEEN.split(DROPPED.matcher(flat).replaceAll(""), -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return words;
  }
}
