package benchlore.generator.cli;

import benchlore.generator.content.Problem;
import java.io.PrintWriter;
import java.util.List;

/** Prints problems, numbered, each with its place and what to do. */
final class Report {
  private Report() {}

  /** Prints every problem and a closing line. */
  static void problems(PrintWriter err, List<Problem> problems, String consequence) {
    int number = 1;
    for (Problem problem : problems) {
      String key = problem.key().isEmpty() ? "" : "  (" + problem.key() + ")";
      err.println(number++ + ". " + problem.place() + ": " + problem.what() + key);
      err.println("   " + problem.todo());
    }
    String count = problems.size() == 1 ? "1 problem" : problems.size() + " problems";
    err.println(count + ". " + consequence);
    err.flush();
  }
}
