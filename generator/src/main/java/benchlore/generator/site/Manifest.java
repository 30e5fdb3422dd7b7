package benchlore.generator.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The list of what a build wrote into a folder. Only what it names is ever deleted.
 *
 * @param files paths relative to the folder, with forward slashes, the list's own file among them
 */
record Manifest(SortedSet<String> files) {
  /** The file that holds the list, in the site. */
  static final String FILE = "benchlore-site.txt";

  private static final String TOP =
      "This folder is written whole by benchlore build. Don't edit it: it is replaced.";
  private static final String LISTED = "These files were written; any other stops the next build:";

  /** Files that a desktop leaves in every folder it shows; nobody's work. */
  private static final List<String> LITTER = List.of(".DS_Store", "Thumbs.db", "desktop.ini");

  /** Copies the set. */
  Manifest {
    files = new TreeSet<>(files);
    files.add(FILE);
  }

  static Manifest of(Collection<String> paths) {
    return new Manifest(new TreeSet<>(paths));
  }

  /** The list a folder holds; empty where it holds none, or one without names. */
  static Optional<Manifest> in(Path folder) throws IOException {
    Path file = folder.resolve(FILE);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    List<String> lines = text.lines().toList();
    if (lines.size() < 2 || !lines.get(0).equals(TOP) || !lines.get(1).equals(LISTED)) {
      return Optional.empty();
    }
    return Optional.of(of(lines.subList(2, lines.size())));
  }

  /** As it is kept. */
  String text() {
    return TOP + "\n" + LISTED + "\n" + String.join("\n", files) + "\n";
  }

  /** What lies in a folder that is not listed; a folder of which nothing is listed ends in /. */
  List<String> foreign(Path folder) throws IOException {
    List<String> foreign = new ArrayList<>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path path, BasicFileAttributes attributes) {
            String name = name(folder, path) + "/";
            if (path.equals(folder)
                || files.tailSet(name).stream().limit(1).anyMatch(f -> f.startsWith(name))) {
              return FileVisitResult.CONTINUE;
            }
            foreign.add(name);
            return FileVisitResult.SKIP_SUBTREE;
          }

          @Override
          public FileVisitResult visitFile(Path path, BasicFileAttributes attributes) {
            if (!files.contains(name(folder, path))
                && !LITTER.contains(path.getFileName().toString())) {
              foreign.add(name(folder, path));
            }
            return FileVisitResult.CONTINUE;
          }
        });
    return foreign.stream().sorted().toList();
  }

  /** Deletes what is listed, and the folder if nothing else is left in it. */
  void delete(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path path, BasicFileAttributes attributes)
              throws IOException {
            String name = name(folder, path);
            boolean ours = files.contains(name) || LITTER.contains(path.getFileName().toString());
            if (ours && !name.equals(FILE)) {
              Files.deleteIfExists(path);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path path, IOException failure)
              throws IOException {
            if (!path.equals(folder) && isEmpty(path)) {
              Files.deleteIfExists(path);
            }
            return FileVisitResult.CONTINUE;
          }
        });
    // The list goes last: until then a build that was cut short can be tidied by the next.
    try (var left = Files.list(folder)) {
      if (left.allMatch(path -> path.getFileName().toString().equals(FILE))) {
        Files.deleteIfExists(folder.resolve(FILE));
        Files.deleteIfExists(folder);
      }
    }
  }

  static boolean isEmpty(Path folder) throws IOException {
    try (var entries = Files.list(folder)) {
      return entries.findAny().isEmpty();
    }
  }

  private static String name(Path folder, Path path) {
    return folder.relativize(path).toString().replace('\\', '/');
  }
}
