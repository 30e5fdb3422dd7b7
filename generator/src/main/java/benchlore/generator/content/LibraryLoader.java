package benchlore.generator.content;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a content folder into a {@link Library}, or into every problem found in it.
 *
 * <p>Order: parse each file and check it against its schema, check ids and references over all
 * files, then make the records. An author's mistake is never an exception; only a folder that can't
 * be read is.
 *
 * <p>A loader opens, parses and checks each file once, however often its facts are asked for, and
 * compiles each schema once. What it has read it does not read again: make a new one for a folder
 * that may have changed. Not for several threads at once.
 */
public final class LibraryLoader {
  private final Path content;
  private final ContentFiles files;
  private final FileReading reading;
  private final SchemaSet schemas;
  private final Map<Path, CheckedFile> read = new LinkedHashMap<>();
  private final Set<Path> followed = new HashSet<>();

  private LibraryLoader(Path content, FileReading reading) throws IOException {
    this.content = content;
    this.files = new ContentFiles(content);
    this.reading = reading;
    this.schemas = SchemaSet.read(content.resolve("schema"), reading);
  }

  /**
   * Opens a folder and reads its schemas, but no record yet.
   *
   * @param content a folder laid out like {@code content/}
   * @throws IOException if the schemas can't be read
   */
  public static LibraryLoader open(Path content) throws IOException {
    return open(content, FileReading.FROM_DISK);
  }

  /** Opens a folder whose files are read so. */
  static LibraryLoader open(Path content, FileReading reading) throws IOException {
    return new LibraryLoader(content, reading);
  }

  /**
   * Loads the records of a folder that nothing else is asked of.
   *
   * @param content a folder laid out like {@code content/}
   * @return the library, or every problem
   * @throws IOException if the folder or its schemas can't be read
   */
  public static LoadResult<Library> load(Path content) throws IOException {
    return open(content).library();
  }

  /** The folder. */
  public Path content() {
    return content;
  }

  /**
   * Loads the records and checks every file of the folder, the plans, the shop and the lay words
   * too.
   *
   * @return the library, or every problem
   * @throws IOException if the folder can't be read
   */
  public LoadResult<Library> library() throws IOException {
    RecordIds ids = new RecordIds();
    List<Problem> problems = new ArrayList<>();
    Map<String, Source> sources = new LinkedHashMap<>();
    for (CheckedFile file : folder("sources", "sources", ids, problems)) {
      Source source = RecordReader.source(file.yaml().root());
      sources.put(source.id(), source);
    }
    Map<Kind, List<CheckedFile>> records = new LinkedHashMap<>();
    for (Kind kind : Kind.values()) {
      records.put(kind, folder(kind.folder(), kind.folder(), ids, problems));
    }
    folder("plans", "plans", ids, problems);
    for (String single : ContentFiles.SINGLE) {
      Optional<Path> file = files.single(single);
      if (file.isPresent()) {
        problems.addAll(counted(file.get(), single, ids).problems());
      }
    }
    problems.addAll(ids.problems());
    problems.addAll(files.strays());
    PictureNames pictures = PictureNames.of(files);
    problems.addAll(pictures.ofNoTool(ids));
    addUnlessReported(pictures.check(parsed()), problems);
    follow(List.copyOf(read.keySet()), ids, problems);
    if (problems.isEmpty()) {
      problems.addAll(pictures.unused());
    }
    if (!problems.isEmpty()) {
      return LoadResult.failed(problems);
    }
    return LoadResult.of(new Library(entries(records, new RecordReader(sources)), sources));
  }

  /**
   * Gives the facts of files that are no records of the library, such as plans and the shop,
   * checked against their own schema.
   *
   * @param wanted files to read
   * @param schema name of the schema
   * @param library what their references point at
   * @return the facts of each file by its {@code id}, or every problem
   * @throws IOException if a file can't be read
   */
  public LoadResult<Map<String, Facts>> facts(List<Path> wanted, String schema, Library library)
      throws IOException {
    LoadResult<List<FactFile>> loaded = files(wanted, schema, library);
    if (loaded.value().isEmpty()) {
      return LoadResult.failed(loaded.problems());
    }
    Map<String, Facts> facts = new LinkedHashMap<>();
    loaded.value().get().forEach(file -> facts.put(file.id(), file.facts()));
    return LoadResult.of(facts);
  }

  /**
   * Gives files as {@link #facts} does, each with its text. Every file is opened once, so that a
   * pipe can be read too.
   *
   * @param wanted files to read
   * @param schema name of the schema
   * @param library what their references point at
   * @return each file in the order given, or every problem
   * @throws IOException if a file can't be read
   */
  public LoadResult<List<FactFile>> files(List<Path> wanted, String schema, Library library)
      throws IOException {
    RecordIds ids = RecordIds.of(library);
    List<Problem> problems = new ArrayList<>();
    List<FactFile> found = new ArrayList<>();
    for (Path path : wanted) {
      CheckedFile file = checked(path, schema);
      problems.addAll(file.problems());
      follow(List.of(key(path)), ids, problems);
      if (file.sound() && problems.isEmpty()) {
        String id = file.yaml().root().path("id").asText();
        Facts facts = new FactReader(file.yaml(), library.sources()).facts();
        found.add(new FactFile(path, id, facts, file.yaml().text()));
      }
    }
    return problems.isEmpty() ? LoadResult.of(found) : LoadResult.failed(problems);
  }

  private List<YamlFile> parsed() {
    return read.values().stream().filter(CheckedFile::parsed).map(CheckedFile::yaml).toList();
  }

  private static Map<String, LibraryRecord> entries(
      Map<Kind, List<CheckedFile>> records, RecordReader reader) {
    Map<String, LibraryRecord> entries = new LinkedHashMap<>();
    records.forEach(
        (kind, files) -> {
          for (CheckedFile file : files) {
            LibraryRecord entry = reader.entry(kind, file.yaml());
            entries.put(entry.id(), entry);
          }
        });
    return entries;
  }

  /** The sound files of a folder; of any other, the problems are kept. */
  private List<CheckedFile> folder(
      String folder, String schema, RecordIds ids, List<Problem> problems) throws IOException {
    List<CheckedFile> sound = new ArrayList<>();
    for (Path path : files.in(folder)) {
      ids.addFile(path, schema);
      CheckedFile file = counted(path, schema, ids);
      problems.addAll(file.problems());
      if (file.sound()) {
        sound.add(file);
      }
    }
    return sound;
  }

  /** A file of the folder, whose id counts unless the schema objects to it. */
  private CheckedFile counted(Path path, String schema, RecordIds ids) throws IOException {
    CheckedFile file = checked(path, schema);
    if (file.parsed() && file.problems().stream().noneMatch(p -> p.key().equals("id"))) {
      ids.addRecord(path, schema, file.yaml());
    }
    return file;
  }

  private CheckedFile checked(Path path, String schema) throws IOException {
    CheckedFile known = read.get(key(path));
    if (known != null && known.schema().equals(schema)) {
      return known;
    }
    LoadResult<YamlFile> loaded = reading.yaml(files.shown(path), reading.bytes(path));
    CheckedFile file =
        loaded.value().isEmpty()
            ? new CheckedFile(schema, Optional.empty(), loaded.problems())
            : new CheckedFile(schema, loaded.value(), schemas.check(schema, loaded.value().get()));
    read.put(key(path), file);
    return file;
  }

  private static Path key(Path path) {
    return path.toAbsolutePath().normalize();
  }

  /** Follows the references of files, each file's once. */
  private void follow(Collection<Path> keys, RecordIds ids, List<Problem> problems) {
    for (Path path : keys) {
      CheckedFile file = read.get(path);
      if (file.parsed() && followed.add(path)) {
        addUnlessReported(References.check(file.yaml(), ids), problems);
      }
    }
  }

  /** Where the schema already objects to a word, its pointing nowhere is no second mistake. */
  private static void addUnlessReported(List<Problem> found, List<Problem> problems) {
    Set<Place> reported = new HashSet<>();
    problems.forEach(problem -> reported.add(problem.place()));
    found.stream().filter(problem -> !reported.contains(problem.place())).forEach(problems::add);
  }
}
