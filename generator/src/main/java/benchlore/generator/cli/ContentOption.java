package benchlore.generator.cli;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Map;
import picocli.CommandLine.Option;

/** The {@code --content} option, and the content and template the jar carries. */
final class ContentOption {
  @Option(
      names = "--content",
      paramLabel = "DIR",
      description = "Content folder. Default: the content built into this program.")
  private Path folder;

  /** What to do with an opened folder. */
  @FunctionalInterface
  interface Use<T> {
    /** Uses the folders; they are only open until this returns. */
    T with(Path content, Path template) throws IOException;
  }

  /** Opens the content and the built-in template, and closes what it opened. */
  <T> T open(Use<T> use) throws IOException {
    if (folder != null && !Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder + " is no folder");
    }
    Path code = codeLocation();
    if (Files.isDirectory(code)) {
      Path root = code.resolve("benchlore");
      return use.with(folder == null ? root.resolve("content") : folder, root.resolve("template"));
    }
    try (FileSystem jar = FileSystems.newFileSystem(code, Map.of())) {
      Path root = jar.getPath("benchlore");
      return use.with(folder == null ? root.resolve("content") : folder, root.resolve("template"));
    }
  }

  private static Path codeLocation() throws IOException {
    URI uri;
    try {
      uri = ContentOption.class.getProtectionDomain().getCodeSource().getLocation().toURI();
    } catch (URISyntaxException e) {
      throw new IOException("this program's own place can't be read", e);
    }
    return Path.of(uri);
  }
}
