package benchlore.generator.site;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The hidden folders a build makes beside the site, and what a build that was cut short left. */
final class Leftovers {
  private static final String RANDOM = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final Path target;

  /**
   * Looks beside a site.
   *
   * @param target the site's folder, in full
   */
  Leftovers(Path target) {
    this.target = target;
  }

  /** A new name for the folder to fill. */
  Path fresh() {
    return target.resolveSibling(prefix("-new-") + UUID.randomUUID());
  }

  /** A new name for the site that is replaced. */
  Path old() {
    return target.resolveSibling(prefix("-old-") + UUID.randomUUID());
  }

  /** Puts an old site back where a build was cut short between its two moves; sweeps the rest. */
  void tidy() throws IOException {
    if (target.getParent() == null || !Files.isDirectory(target.getParent())) {
      return;
    }
    for (Path old : left("-old-")) {
      if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
        delete(old);
      } else {
        Files.move(old, target);
      }
    }
    for (Path fresh : left("-new-")) {
      if (!isHeld(fresh)) {
        delete(fresh);
      }
    }
  }

  /** Deletes what the list in a folder names; a folder without a list is not ours. */
  static void delete(Path folder) throws IOException {
    Optional<Manifest> manifest = Manifest.in(folder);
    if (manifest.isPresent()) {
      manifest.get().delete(folder);
    }
  }

  private String prefix(String kind) {
    return "." + target.getFileName() + kind;
  }

  private List<Path> left(String kind) throws IOException {
    Pattern name = Pattern.compile(Pattern.quote(prefix(kind)) + RANDOM);
    try (Stream<Path> beside = Files.list(target.getParent())) {
      return beside
          .filter(path -> name.matcher(path.getFileName().toString()).matches())
          .filter(path -> Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
          .filter(path -> Files.isRegularFile(path.resolve(Manifest.FILE)))
          .sorted()
          .toList();
    }
  }

  /** Whether another build is filling it at this moment. */
  private static boolean isHeld(Path fresh) throws IOException {
    try (FileChannel list =
            FileChannel.open(fresh.resolve(Manifest.FILE), StandardOpenOption.WRITE);
        FileLock lock = list.tryLock()) {
      return lock == null;
    } catch (OverlappingFileLockException e) {
      return true;
    }
  }
}
