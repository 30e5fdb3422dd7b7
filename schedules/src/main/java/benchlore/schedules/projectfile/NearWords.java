package benchlore.schedules.projectfile;

import java.util.List;

/** What to do about a word that is not known: the nearest one, and all that are. */
final class NearWords {
  private static final int MOST_LISTED = 12;
  private static final int LONGEST = 80;

  private NearWords() {}

  static String todo(String word, List<String> accepted) {
    String near = nearest(word.substring(0, Math.min(word.length(), LONGEST)), accepted);
    String all = "Accepted: " + String.join(", ", accepted) + ".";
    if (near.isEmpty()) {
      return all;
    }
    String mean = "Did you mean `" + near + "`?";
    return accepted.size() > MOST_LISTED ? mean : mean + " " + all;
  }

  /** The word fewest letters away, if no more than a quarter of them differ; else nothing. */
  private static String nearest(String word, List<String> accepted) {
    String best = "";
    int least = Integer.MAX_VALUE;
    for (String candidate : accepted) {
      int limit = Math.max(1, Math.max(word.length(), candidate.length()) / 4);
      int far = distance(word, candidate);
      if (far <= limit && far < least) {
        least = far;
        best = candidate;
      }
    }
    return best;
  }

  /** Letters to change, add or take away to make one word of another. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int corner = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int above = row[j];
        int changed = corner + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(Math.min(above, row[j - 1]) + 1, changed);
        corner = above;
      }
    }
    return row[b.length()];
  }
}
