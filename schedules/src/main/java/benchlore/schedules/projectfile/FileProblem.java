package benchlore.schedules.projectfile;

import java.util.List;

/**
 * Something wrong in a plan file or the shop's file, for its author.
 *
 * @param file which of the two
 * @param path the keys that lead there, items of a list by their number from 0; empty for the whole
 * @param what what is wrong, words of the file between backticks
 * @param todo what to do about it: what is accepted, the nearest suggestion
 * @param isOutOfBounds whether it is a number in form, but too small or too large
 */
public record FileProblem(
    Source file, List<String> path, String what, String todo, boolean isOutOfBounds) {
  /** Where something was written. */
  public enum Source {
    /** The plan's own file. */
    PLAN,
    /** The shop's, which says what a plan leaves out. */
    SHOP
  }

  /** A problem of another sort than a number too small or too large. */
  FileProblem(Source file, List<String> path, String what, String todo) {
    this(file, path, what, todo, false);
  }

  /** Copies the path; refuses a problem without words. */
  public FileProblem {
    path = List.copyOf(path);
    if (what.isEmpty() || todo.isEmpty()) {
      throw new IllegalArgumentException("what and todo must not be empty");
    }
  }
}
