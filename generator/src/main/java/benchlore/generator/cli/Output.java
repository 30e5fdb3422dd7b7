package benchlore.generator.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Standard output, which tells when it can't be written: {@code System.out} keeps such a failure to
 * itself, and a full disk would leave half a plan and exit code 0.
 */
final class Output {
  private final OutputStream stream;
  private final Charset terminal;

  /**
   * Wraps a stream.
   *
   * @param stream where the bytes go, not buffered
   * @param terminal how words for reading are encoded
   */
  Output(OutputStream stream, Charset terminal) {
    this.stream = stream;
    this.terminal = terminal;
  }

  /** The process's own; words are UTF-8 unless they go to a terminal that asks for another. */
  static Output standard() {
    // Java 17 gives this only where standard output is a terminal.
    String asked = System.getProperty("sun.stdout.encoding");
    boolean known = asked != null && Charset.isSupported(asked);
    return new Output(
        new FileOutputStream(FileDescriptor.out),
        known ? Charset.forName(asked) : StandardCharsets.UTF_8);
  }

  /** Prints words for reading. */
  void words(String text) throws IOException {
    print(text.getBytes(terminal));
  }

  /** Prints a line of words. */
  void line(String text) throws IOException {
    words(text + System.lineSeparator());
  }

  /** Prints what a program reads: UTF-8 wherever it runs. */
  void data(String text) throws IOException {
    print(text.getBytes(StandardCharsets.UTF_8));
  }

  /** For the help; ask it whether it failed. */
  PrintWriter writer() {
    return new PrintWriter(new OutputStreamWriter(stream, terminal));
  }

  private void print(byte[] bytes) throws IOException {
    try {
      stream.write(bytes);
      stream.flush();
    } catch (IOException e) {
      throw new IOException("standard output can't be written: " + e.getMessage(), e);
    }
  }
}
