package benchlore.generator.site;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Writes a site whole: into a sibling folder first, then swapped in, so that a failure leaves the
 * old site as it was.
 *
 * <p>Only a folder that is absent, empty or a site written before (it holds {@value #MARKER}) is
 * replaced: pointing {@code --out} at a folder of one's own can't wipe it.
 */
public final class SiteWriter {
  static final String MARKER = "benchlore-site.txt";

  private SiteWriter() {}

  /**
   * Writes and swaps in.
   *
   * @param files bytes by path with forward slashes, relative to the site
   * @param out the site's folder
   * @throws FileAlreadyExistsException if {@code out} holds something that is no site of ours
   * @throws IOException if a file can't be written; the old site is untouched
   */
  public static void write(Map<String, byte[]> files, Path out) throws IOException {
    Path target = out.toAbsolutePath().normalize();
    refuseForeign(target);
    Files.createDirectories(target.getParent());
    Path fresh = Files.createTempDirectory(target.getParent(), "." + target.getFileName() + "-new");
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path path = fresh.resolve(file.getKey()).normalize();
        if (!path.startsWith(fresh)) {
          throw new IOException("a page would leave the site's folder: " + file.getKey());
        }
        Files.createDirectories(path.getParent());
        Files.write(path, file.getValue());
      }
      String marker =
          "This folder is written whole by benchlore build. Don't edit it: it is replaced.\n";
      Files.writeString(fresh.resolve(MARKER), marker);
      openToReaders(fresh);
      swap(fresh, target);
    } finally {
      delete(fresh);
    }
  }

  private static void refuseForeign(Path target) throws IOException {
    if (!Files.exists(target)) {
      return;
    }
    if (!Files.isDirectory(target)) {
      throw new FileAlreadyExistsException(target + " is a file; give a folder");
    }
    try (Stream<Path> content = Files.list(target)) {
      if (content.findAny().isPresent() && !Files.exists(target.resolve(MARKER))) {
        throw new FileAlreadyExistsException(
            target + " holds files that are no site of ours; give an empty or new folder");
      }
    }
  }

  private static void swap(Path fresh, Path target) throws IOException {
    Path old = target.resolveSibling("." + target.getFileName() + "-old");
    delete(old);
    if (Files.exists(target)) {
      Files.move(target, old);
    }
    try {
      Files.move(fresh, target);
    } catch (IOException e) {
      if (Files.exists(old)) {
        Files.move(old, target);
      }
      throw e;
    }
    delete(old);
  }

  private static void openToReaders(Path folder) throws IOException {
    // A temporary folder is private; a site is read by others too where the system knows such
    // rights.
    if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(
          folder, java.nio.file.attribute.PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
