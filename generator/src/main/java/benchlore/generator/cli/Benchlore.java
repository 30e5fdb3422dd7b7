package benchlore.generator.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The {@code benchlore} command with its subcommands. */
@Command(
    name = "benchlore",
    version = "benchlore 0.1.0",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    description = {
      "A shop knowledge base and finishing-schedule tool.",
      "Turns records of woods, finishes, glues, bits and tools into an offline site, and plans the"
          + " work: sanding, glue-up, coats, air."
    },
    subcommands = {BuildCommand.class, CheckCommand.class, PlanCommand.class},
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:the content has problems, all listed; or the plan is refused, with reasons; nothing written",
      "2:the command line is wrong",
      "3:a file can't be read or written"
    })
public final class Benchlore implements Runnable {
  /** Exit code: content has problems, or a plan is refused. */
  static final int PROBLEMS = 1;

  /** Exit code: a file can't be read or written. */
  static final int FILES = 3;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  /** Made by the command line. */
  public Benchlore() {}

  /**
   * Runs a command and exits with its code.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    System.exit(commandLine().execute(args));
  }

  /** The parsed command line, ready to execute; tests use it without exiting. */
  static CommandLine commandLine() {
    return new CommandLine(new Benchlore()).setExecutionExceptionHandler(Benchlore::explain);
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int explain(Exception e, CommandLine line, CommandLine.ParseResult result)
      throws Exception {
    if (e instanceof IOException || e instanceof UncheckedIOException) {
      String what = "";
      if (e instanceof NoSuchFileException) {
        what = "no such file: ";
      } else if (e instanceof AccessDeniedException) {
        what = "not allowed: ";
      }
      line.getErr().println("benchlore: " + what + e.getMessage());
      return FILES;
    }
    throw e;
  }
}
