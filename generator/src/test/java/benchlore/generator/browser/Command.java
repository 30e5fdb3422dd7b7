package benchlore.generator.browser;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** One outside command with a time limit; its output, errors included, goes line by line. */
record Command(List<String> words, Duration limit) {
  Command {
    words = List.copyOf(words);
    if (words.isEmpty() || limit.isNegative() || limit.isZero()) {
      throw new IllegalArgumentException("words or limit: " + words + ", " + limit);
    }
  }

  /** What came of it: the exit status, or none when it could not start or ran out of time. */
  enum Outcome {
    DONE,
    FAILED,
    OUT_OF_TIME,
    NOT_STARTED
  }

  Outcome run(Consumer<String> line) {
    Process process;
    try {
      ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
      builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
      process = builder.start();
      process.getOutputStream().close();
    } catch (IOException e) {
      line.accept(e.getMessage());
      return Outcome.NOT_STARTED;
    }
    Thread reader = new Thread(() -> pass(process, line), "output of " + words.get(0));
    reader.setDaemon(true);
    reader.start();
    return await(process, reader);
  }

  private Outcome await(Process process, Thread reader) {
    try {
      if (!process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS)) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        return Outcome.OUT_OF_TIME;
      }
      reader.join(Duration.ofSeconds(10).toMillis());
      return process.exitValue() == 0 ? Outcome.DONE : Outcome.FAILED;
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
      return Outcome.OUT_OF_TIME;
    }
  }

  private static void pass(Process process, Consumer<String> line) {
    try (BufferedReader output = process.inputReader(StandardCharsets.UTF_8)) {
      output.lines().forEach(line);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
