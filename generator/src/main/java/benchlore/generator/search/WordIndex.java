package benchlore.generator.search;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which records hold each word, and the field that says most: made with the site, so that no page
 * has to read every record's text before it can answer.
 *
 * <p>The places of a word are one run of characters, a number each: the steps from the record
 * before, times the number of fields, plus the field. A number is written five bits a character,
 * lowest first, all but its last character from the alphabet's second half. A page reads a word's
 * places when someone asks for that word.
 */
final class WordIndex {
  private static final String ALPHABET =
      "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz-_";
  private static final int HALF = 32;

  private final int fields;
  private final Map<String, Places> words = new TreeMap<>();

  /** An index of records with so many fields, the one that says most first. */
  WordIndex(int fields) {
    this.fields = fields;
  }

  /**
   * Adds a record.
   *
   * @param at its place among the records, larger than any before
   * @param texts of its fields, the one that says most first
   */
  void add(int at, Collection<String> texts) {
    Map<String, Integer> best = new LinkedHashMap<>();
    int field = 0;
    for (String text : texts) {
      for (String word : Tokens.of(text)) {
        best.putIfAbsent(word, field);
      }
      field++;
    }
    best.forEach(
        (word, first) -> words.computeIfAbsent(word, w -> new Places()).add(at, first, fields));
  }

  boolean holds(String word) {
    return words.containsKey(word);
  }

  /** Every word, in order. */
  String words() {
    return String.join(" ", words.keySet());
  }

  /** The places of every word, in the order of the words. */
  String places() {
    List<String> runs = words.values().stream().map(Places::toString).toList();
    return String.join(" ", runs);
  }

  private static final class Places {
    private final StringBuilder run = new StringBuilder();
    private int last;

    void add(int at, int field, int fields) {
      int rest = (at - last) * fields + field;
      for (; rest >= HALF; rest /= HALF) {
        run.append(ALPHABET.charAt(HALF + rest % HALF));
      }
      run.append(ALPHABET.charAt(rest));
      last = at;
    }

    @Override
    public String toString() {
      return run.toString();
    }
  }
}
