package benchlore.generator.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * The program in a process of its own, for what only such a run shows: its exit code, its standard
 * streams as the system hands them over, and what differs from one run to the next.
 */
final class Program {
  private static final int LONGEST_S = 120;

  /**
   * A run that ended.
   *
   * @param code exit code
   * @param out what it printed, read as UTF-8
   * @param err what it said besides
   */
  record Done(int code, String out, String err) {}

  private final List<String> words = new ArrayList<>();
  private String shell = "\"$@\"";

  private Program(Object... args) {
    Collections.addAll(
        words,
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:TieredStopAtLevel=1",
        "-cp",
        System.getProperty("java.class.path"),
        Benchlore.class.getName());
    for (Object arg : args) {
      words.add(arg.toString());
    }
  }

  static Program started(Object... args) {
    return new Program(args);
  }

  /** With a redirection of the shell after it, such as {@code > /dev/full}. */
  Program redirected(String redirection) {
    shell = "\"$@\" " + redirection;
    return this;
  }

  /** Runs it with this on its standard input, in an environment without a language. */
  Done given(byte... input) throws IOException, InterruptedException {
    Path in = Files.createTempFile("benchlore", ".in");
    Path out = Files.createTempFile("benchlore", ".out");
    Path err = Files.createTempFile("benchlore", ".err");
    try {
      Files.write(in, input);
      List<String> command = new ArrayList<>(List.of("sh", "-c", "cat | " + shell, "sh"));
      command.addAll(words);
      ProcessBuilder builder = new ProcessBuilder(command);
      builder
          .environment()
          .keySet()
          .removeIf(name -> name.startsWith("LC_") || name.equals("LANG"));
      builder.redirectInput(in.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
      Process process = builder.start();
      if (!process.waitFor(LONGEST_S, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IOException("still running after " + LONGEST_S + " s: " + words);
      }
      return new Done(process.exitValue(), text(out), text(err));
    } finally {
      Files.delete(in);
      Files.delete(out);
      Files.delete(err);
    }
  }

  private static String text(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }
}
