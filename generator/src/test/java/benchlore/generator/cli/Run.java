package benchlore.generator.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
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
    return of(Benchlore.commandLine(), args);
  }

  static Run of(CommandLine line, Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    String[] words = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      words[i] = args[i].toString();
    }
    int code = Benchlore.run(line, words);
    return new Run(code, out.toString(), err.toString());
  }
}
