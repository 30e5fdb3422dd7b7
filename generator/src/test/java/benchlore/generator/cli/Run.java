package benchlore.generator.cli;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import picocli.CommandLine;

/**
 * One run of the real command line.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it said besides
 */
record Run(int code, String out, String err) {
  static Run of(Object... args) {
    return with(UnaryOperator.identity(), args);
  }

  /** A run that prints elsewhere. */
  static Run to(OutputStream out, Object... args) {
    StringWriter err = new StringWriter();
    CommandLine line =
        Benchlore.commandLine(new Output(out, StandardCharsets.UTF_8)).setErr(new PrintWriter(err));
    return new Run(Benchlore.run(line, words(args)), "", err.toString());
  }

  /** A run of a command line with something added. */
  static Run with(UnaryOperator<CommandLine> added, Object... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StringWriter err = new StringWriter();
    CommandLine line =
        added
            .apply(Benchlore.commandLine(new Output(out, StandardCharsets.UTF_8)))
            .setErr(new PrintWriter(err));
    int code = Benchlore.run(line, words(args));
    return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString());
  }

  private static String[] words(Object... args) {
    return Stream.of(args).map(Object::toString).toArray(String[]::new);
  }
}
