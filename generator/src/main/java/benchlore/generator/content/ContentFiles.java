package benchlore.generator.content;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The files of a content folder, in order of name, and what lies there that nobody would read. */
public final class ContentFiles {
  private static final String YAML = ".yaml";
  private static final String SVG = ".svg";
  private static final String DRAWINGS = "drawings";
  private static final List<String> OTHER_FOLDERS = List.of("schema", "sources", "plans");

  /** The folder of pictures of how a thing is done, within {@code drawings}. */
  public static final String SKETCHES = "sketches";

  /** The folder of pictures of faults. */
  public static final String FAULTS = "faults";

  /** The folder of pictures of tools. */
  public static final String TOOLS = "tools";

  private static final List<String> PICTURES = List.of(FAULTS, SKETCHES, TOOLS);

  /** Files beside the folders, each with a schema of its own name. */
  static final List<String> SINGLE =
      List.of(
          "lexicon",
          "shop",
          "finish-over-finish",
          "adhesive-by-species",
          "adhesive-by-use",
          "finish-by-place",
          "bit-by-job",
          "joints",
          "edge-profiles");

  private final Path content;

  /** The files of a folder laid out like {@code content/}. */
  public ContentFiles(Path content) {
    this.content = content;
  }

  /** The record files of a folder; none where there is no such folder. */
  List<Path> in(String folder) throws IOException {
    return in(content.resolve(folder), YAML);
  }

  /**
   * The pictures of one folder of {@code drawings}; none where there is no such folder.
   *
   * @throws IOException if the folder can't be read
   */
  public List<Path> pictures(String folder) throws IOException {
    return in(content.resolve(DRAWINGS).resolve(folder), SVG);
  }

  private static List<Path> in(Path path, String ending) throws IOException {
    return Files.isDirectory(path)
        ? list(path).stream().filter(f -> name(f).endsWith(ending)).toList()
        : List.of();
  }

  /** A file beside the folders, by its schema's name, if it is there. */
  Optional<Path> single(String schema) {
    return Optional.of(content.resolve(schema + YAML)).filter(Files::isRegularFile);
  }

  /** The id a file's name asks for. */
  public static String id(Path file) {
    return name(file).replaceAll("(\\" + YAML + "|\\" + SVG + ")$", "");
  }

  /** Whether a file lies in the content folder. */
  boolean contains(Path file) {
    return file.toAbsolutePath().normalize().startsWith(content.toAbsolutePath().normalize());
  }

  /** A path as the author knows it: from the content folder's parent, else in full. */
  public String shown(Path file) {
    Path root = content.toAbsolutePath().normalize().getParent();
    Path full = file.toAbsolutePath().normalize();
    return (root != null && contains(file) ? root.relativize(full) : full)
        .toString()
        .replace('\\', '/');
  }

  /** Folders and files that would be passed over in silence. */
  List<Problem> strays() throws IOException {
    List<Problem> problems = new ArrayList<>();
    for (Path path : list(content)) {
      String name = name(path);
      if (!Files.isDirectory(path)) {
        strayFile(path, SINGLE.contains(id(path)) && name.endsWith(YAML), problems);
      } else if (name.equals(DRAWINGS)) {
        strayDrawings(path, problems);
      } else if (Kind.of(name).isPresent() || OTHER_FOLDERS.contains(name)) {
        for (Path file : list(path)) {
          strayFile(file, name.equals("schema") || name(file).endsWith(YAML), problems);
        }
      } else {
        problems.add(strayFolder(path, name));
      }
    }
    return problems;
  }

  private void strayDrawings(Path drawings, List<Problem> problems) throws IOException {
    for (Path path : list(drawings)) {
      boolean pictures = Files.isDirectory(path) && PICTURES.contains(name(path));
      for (Path file : pictures ? list(path) : List.of(path)) {
        if (!pictures || !name(file).endsWith(SVG) || Files.isDirectory(file)) {
          String todo =
              "A picture is a file `name.svg` in drawings/tools, drawings/sketches or drawings/faults.";
          problems.add(stray(file, todo));
        }
      }
    }
  }

  private Problem stray(Path file, String todo) {
    return new Problem(new Place(shown(file), 1, 1), "", "this is not read", todo);
  }

  private Problem strayFolder(Path path, String name) {
    List<String> known =
        Stream.concat(
                Stream.of(Kind.values()).map(Kind::folder),
                Stream.concat(OTHER_FOLDERS.stream(), Stream.of(DRAWINGS)))
            .toList();
    String todo =
        Suggestions.nearest(name, known)
            .map(near -> "Did you mean `" + near + "`?")
            .orElse("Accepted: " + String.join(", ", known) + ".");
    return new Problem(
        new Place(shown(path), 1, 1), "", "no record is kept in a folder `" + name + "`", todo);
  }

  private void strayFile(Path file, boolean read, List<Problem> problems) {
    if ((read && !Files.isDirectory(file)) || name(file).endsWith(".md")) {
      return;
    }
    problems.add(
        stray(
            file,
            "A record is a file `id.yaml` in the folder of its kind; rename it or move it away."));
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.filter(p -> !name(p).startsWith(".")).sorted().toList();
    }
  }

  private static String name(Path path) {
    // A folder inside a jar is listed with a slash at its end.
    return path.getFileName().toString().replace("/", "");
  }
}
