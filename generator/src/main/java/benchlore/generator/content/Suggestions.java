package benchlore.generator.content;

import java.util.Collection;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** "Did you mean": the nearest accepted word, if it is near. */
public final class Suggestions {
  private static final int MOST_LISTED = 12;

  private Suggestions() {}

  /** The accepted word fewest letters away, if no more than a quarter of the letters differ. */
  public static Optional<String> nearest(String word, Collection<String> accepted) {
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String candidate : accepted) {
      int limit = Math.max(1, Math.max(word.length(), candidate.length()) / 4);
      int distance = new LevenshteinDistance(limit).apply(word, candidate);
      if (distance >= 0 && distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * What to do: the suggestion where there is one, and what is accepted where the list is short.
   */
  public static String todo(String word, Collection<String> accepted) {
    String mean = nearest(word, accepted).map(w -> "Did you mean `" + w + "`? ").orElse("");
    if (accepted.size() > MOST_LISTED && !mean.isEmpty()) {
      return mean.strip();
    }
    return mean + "Accepted: " + String.join(", ", accepted) + ".";
  }
}
