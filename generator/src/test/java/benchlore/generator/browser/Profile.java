package benchlore.generator.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A browser's own folder: fresh and empty at the start, gone after {@link #close}. */
record Profile(Path folder) implements AutoCloseable {
  private static final int TRIES = 20;
  private static final long BETWEEN_TRIES_MILLIS = 100;

  static Profile fresh() {
    try {
      return new Profile(Files.createTempDirectory("benchlore-browser-"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Deletes the folder; a browser that is just ending may still write, so it is tried again. */
  @Override
  public void close() {
    for (int tries = 1; Files.exists(folder); tries++) {
      try {
        deleteOnce();
      } catch (IOException | UncheckedIOException e) {
        if (tries == TRIES) {
          throw new IllegalStateException("Cannot delete " + folder, e);
        }
        pause();
      }
    }
  }

  private void deleteOnce() throws IOException {
    List<Path> deepestFirst;
    try (Stream<Path> files = Files.walk(folder)) {
      deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : deepestFirst) {
      Files.deleteIfExists(file);
    }
  }

  private static void pause() {
    try {
      Thread.sleep(BETWEEN_TRIES_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
