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
    subcommands = {BuildCommand.class, CheckCommand.class, PlanCommand.class, ReckonCommand.class},
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:the content has problems, all listed; or the plan is refused, with reasons; nothing written",
      "2:the command line is wrong",
      "3:a file can't be read or written",
      "4:this program failed; run it again with --trace and report what it prints"
    })
public final class Benchlore implements Runnable {
  /** Exit code: content has problems, or a plan is refused. */
  static final int PROBLEMS = 1;

  /** Exit code: a file can't be read or written. */
  static final int FILES = 3;

  /** Exit code: the program itself failed. */
  static final int FAILED = 4;

  @CommandLine.Option(
      names = "--trace",
      scope = CommandLine.ScopeType.INHERIT,
      description = "If this program fails, print where in it.")
  private boolean trace;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  private final Output output;

  /** Made by the command line. */
  private Benchlore(Output output) {
    this.output = output;
  }

  /**
   * Runs a command and exits with its code.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    System.exit(run(commandLine(Output.standard()), args));
  }

  /** The parsed command line, ready to execute; tests use it without exiting. */
  static CommandLine commandLine(Output output) {
    return new CommandLine(new Benchlore(output))
        .setOut(output.writer())
        .setExecutionExceptionHandler(Benchlore::explain);
  }

  /** Where the commands print. */
  Output output() {
    return output;
  }

  /**
   * Runs a command. Where the program itself fails it says so in one line with a code of its own,
   * so that a script can tell it from content with problems.
   *
   * @param line what {@link #commandLine} gives
   * @param args the command line
   * @return the exit code
   */
  static int run(CommandLine line, String... args) {
    try {
      int code = line.execute(args);
      if (line.getOut().checkError()) {
        line.getErr().println("benchlore: standard output can't be written");
        line.getErr().flush();
        return FILES;
      }
      return code;
    } catch (StackOverflowError | OutOfMemoryError | AssertionError | LinkageError e) {
      return failed(e, line);
    }
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int explain(Exception thrown, CommandLine line, CommandLine.ParseResult result) {
    Exception e = thrown instanceof UncheckedIOException wrapped ? wrapped.getCause() : thrown;
    if (e instanceof IOException) {
      String what = "";
      if (e instanceof NoSuchFileException) {
        what = "no such file: ";
      } else if (e instanceof AccessDeniedException) {
        what = "not allowed: ";
      }
      line.getErr().println("benchlore: " + what + e.getMessage());
      return FILES;
    }
    return failed(e, line);
  }

  private static int failed(Throwable e, CommandLine line) {
    String message =
        e.getMessage() == null ? "" : ": " + e.getMessage().lines().findFirst().orElse("");
    line.getErr()
        .println("benchlore: this program failed (" + e.getClass().getSimpleName() + message + ")");
    if (line.getCommandSpec().root().userObject() instanceof Benchlore asked && asked.trace) {
      e.printStackTrace(line.getErr());
    }
    line.getErr().flush();
    return FAILED;
  }
}
