package benchlore.generator.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Whole folders: copied, read and kept as expected output. */
final class Folders {
  /** The repository's own content and test resources; tests run in the module's folder. */
  static final Path CONTENT = Path.of("..", "content");

  static final Path RESOURCES = Path.of("src", "test", "resources");

  /** {@code -Dgolden.update=true} rewrites expected files instead of comparing them. */
  static final boolean UPDATE = Boolean.getBoolean("golden.update");

  private Folders() {}

  static void copy(Path from, Path to) throws IOException {
    for (Path file : files(from)) {
      Path target = to.resolve(from.relativize(file).toString());
      Files.createDirectories(target.getParent());
      Files.copy(file, target);
    }
  }

  static SortedMap<String, byte[]> read(Path folder) throws IOException {
    SortedMap<String, byte[]> bytes = new TreeMap<>();
    for (Path file : files(folder)) {
      bytes.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
    }
    return bytes;
  }

  static String text(Path file) throws IOException {
    return Files.exists(file) ? Files.readString(file) : "(no file " + file.getFileName() + ")";
  }

  static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder())
          .forEach(
              path -> {
                try {
                  Files.delete(path);
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              });
    }
  }

  private static Iterable<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
