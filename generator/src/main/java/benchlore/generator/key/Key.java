package benchlore.generator.key;

import benchlore.generator.content.LibraryRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A key of simple questions that narrows a kind down to one record, grown from the records
 * themselves.
 *
 * <p>At each node the question is asked that leaves the smallest groups; where no question parts
 * the rest, or few are left, the answer is to pick from a list. A record that answers a question in
 * two ways stands under both, so that no honest answer misses it.
 */
public final class Key {
  /** Questions in a row at most, the picking from a list counted. */
  public static final int MOST_QUESTIONS = 6;

  /** Answers to choose from at most; a question with more among the records left is not asked. */
  public static final int MOST_ANSWERS = 12;

  private static final int FEW = 4;

  /**
   * A node: a question with its answers, or a list to pick from.
   *
   * @param question what is asked; empty for a list
   * @param answers what can be answered
   * @param entries the records left here, by title
   */
  public record Node(String question, List<Answer> answers, List<LibraryRecord> entries) {
    /** Copies the lists. */
    public Node {
      answers = List.copyOf(answers);
      entries = List.copyOf(entries);
    }

    /** True for a list to pick from. */
    public boolean leaf() {
      return answers.isEmpty();
    }

    /** Questions to the farthest record, the picking from a list of several counted. */
    public int depth() {
      int deepest = entries.size() > 1 ? 1 : 0;
      for (Answer answer : answers) {
        deepest = Math.max(deepest, 1 + answer.then().depth());
      }
      return deepest;
    }
  }

  /**
   * An answer.
   *
   * @param words what is answered
   * @param then what comes next
   */
  public record Answer(String words, Node then) {}

  private Key() {}

  /**
   * Grows a key.
   *
   * @param entries the records of one kind
   * @param questions questions that may be asked
   * @return the first node
   */
  public static Node grow(List<LibraryRecord> entries, List<KeyQuestion> questions) {
    return grow(entries, questions, MOST_QUESTIONS - 1);
  }

  private static Node grow(List<LibraryRecord> entries, List<KeyQuestion> questions, int left) {
    KeyQuestion best = null;
    double least = entries.size();
    for (KeyQuestion question : questions) {
      double rest = rest(entries, question);
      if (rest < least * 0.85) {
        least = rest;
        best = question;
      }
    }
    if (entries.size() <= FEW || left == 0 || best == null) {
      return new Node("", List.of(), entries);
    }
    List<KeyQuestion> others = new ArrayList<>(questions);
    others.remove(best);
    List<Answer> answers = new ArrayList<>();
    for (Map.Entry<String, List<LibraryRecord>> group : groups(entries, best).entrySet()) {
      answers.add(new Answer(group.getKey(), grow(group.getValue(), others, left - 1)));
    }
    return new Node(best.words(), answers, entries);
  }

  /** How many records are left on average after the question. */
  private static double rest(List<LibraryRecord> entries, KeyQuestion question) {
    double sum = 0;
    int count = 0;
    Map<String, List<LibraryRecord>> groups = groups(entries, question);
    if (groups.size() > MOST_ANSWERS) {
      return Double.MAX_VALUE;
    }
    for (List<LibraryRecord> group : groups.values()) {
      sum += (double) group.size() * group.size();
      count += group.size();
    }
    return count == 0 ? Double.MAX_VALUE : sum / count;
  }

  /** The records under each answer, in the question's own order. */
  private static Map<String, List<LibraryRecord>> groups(
      List<LibraryRecord> entries, KeyQuestion question) {
    Map<String, List<LibraryRecord>> groups = new LinkedHashMap<>();
    for (String answer : question.answers()) {
      List<LibraryRecord> group = new ArrayList<>();
      for (LibraryRecord entry : entries) {
        if (question.of(entry).contains(answer)) {
          group.add(entry);
        }
      }
      if (!group.isEmpty()) {
        groups.put(answer, group);
      }
    }
    return groups;
  }
}
