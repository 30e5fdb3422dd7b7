package benchlore.generator.cli;

import java.io.PrintWriter;

/** Says on a terminal what is being done; silent in a pipe. */
final class Progress {
  private final PrintWriter err;
  private final boolean terminal = picocli.CommandLine.Help.Ansi.AUTO.enabled();

  Progress(PrintWriter err) {
    this.err = err;
  }

  /** Starts a stage. */
  void stage(String name) {
    if (terminal) {
      err.print("\r\u001b[K" + name + " …");
      err.flush();
    }
  }

  /** Clears the line. */
  void done() {
    if (terminal) {
      err.print("\r\u001b[K");
      err.flush();
    }
  }
}
