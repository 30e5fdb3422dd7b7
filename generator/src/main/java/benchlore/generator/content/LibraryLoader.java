package benchlore.generator.content;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a content folder into a {@link Library}, or into every problem found in it.
 *
 * <p>Order: parse each file and check it against its schema, check ids and references over all
 * files, then make the records. An author's mistake is never an exception; only a folder that can't
 * be read is.
 */
public final class LibraryLoader {
  private final ContentFiles files;
  private final SchemaSet schemas;
  private final List<Problem> problems = new ArrayList<>();
  private final List<YamlFile> parsed = new ArrayList<>();

  private LibraryLoader(Path content) throws IOException {
    this.files = new ContentFiles(content);
    this.schemas = SchemaSet.read(content.resolve("schema"));
  }

  /**
   * Loads the records and checks every file of the folder, the plans, the shop and the lay words
   * too.
   *
   * @param content a folder laid out like {@code content/}
   * @return the library, or every problem
   * @throws IOException if the folder or its schemas can't be read
   */
  public static LoadResult<Library> load(Path content) throws IOException {
    return new LibraryLoader(content).load();
  }

  /**
   * Loads files that are no records of the library, such as plans and the shop, checked against
   * their own schema.
   *
   * @param content the content folder
   * @param files files to read
   * @param schema name of the schema
   * @param library what their references point at
   * @return the facts of each file by its {@code id}, or every problem
   * @throws IOException if a file can't be read
   */
  public static LoadResult<Map<String, Facts>> loadFacts(
      Path content, List<Path> files, String schema, Library library) throws IOException {
    LoadResult<List<FactFile>> read = loadFiles(content, files, schema, library);
    if (read.value().isEmpty()) {
      return LoadResult.failed(read.problems());
    }
    Map<String, Facts> facts = new LinkedHashMap<>();
    read.value().get().forEach(file -> facts.put(file.id(), file.facts()));
    return LoadResult.of(facts);
  }

  /**
   * Loads files as {@link #loadFacts} does, each with its text. Every file is opened once, so that
   * a pipe can be read too.
   *
   * @param content the content folder
   * @param files files to read
   * @param schema name of the schema
   * @param library what their references point at
   * @return each file in the order given, or every problem
   * @throws IOException if a file can't be read
   */
  public static LoadResult<List<FactFile>> loadFiles(
      Path content, List<Path> files, String schema, Library library) throws IOException {
    LibraryLoader loader = new LibraryLoader(content);
    RecordIds ids = RecordIds.of(library);
    List<FactFile> read = new ArrayList<>();
    for (Path file : files) {
      Optional<YamlFile> yaml = loader.read(file, schema, ids);
      loader.checkReferences(ids);
      if (yaml.isPresent() && loader.problems.isEmpty()) {
        String id = yaml.get().root().path("id").asText();
        Facts facts = new FactReader(yaml.get(), library.sources()).facts();
        read.add(new FactFile(file, id, facts, yaml.get().text()));
      }
    }
    return loader.problems.isEmpty() ? LoadResult.of(read) : LoadResult.failed(loader.problems);
  }

  /**
   * What a kind of file may hold, for a reader that can't read the schema's own file.
   *
   * @param content the content folder
   * @param name name of the schema
   * @return the schema, each reference replaced by what it refers to; empty if there is none
   * @throws IOException if the schemas can't be read
   */
  public static Map<String, Object> schema(Path content, String name) throws IOException {
    return SchemaSet.read(content.resolve("schema")).whole(name);
  }

  private LoadResult<Library> load() throws IOException {
    RecordIds ids = new RecordIds();
    Map<String, Source> sources = new LinkedHashMap<>();
    for (YamlFile yaml : readFolder("sources", ids)) {
      Source source = RecordReader.source(yaml.root());
      sources.put(source.id(), source);
    }
    Map<Kind, List<YamlFile>> records = new LinkedHashMap<>();
    for (Kind kind : Kind.values()) {
      records.put(kind, readFolder(kind.folder(), ids));
    }
    readFolder("plans", ids);
    for (String single : ContentFiles.SINGLE) {
      Optional<Path> file = files.single(single);
      if (file.isPresent()) {
        read(file.get(), single, ids);
      }
    }
    problems.addAll(ids.problems());
    problems.addAll(files.strays());
    PictureNames pictures = PictureNames.of(files);
    problems.addAll(pictures.ofNoTool(ids));
    pictures.check(parsed).forEach(this::addUnlessReported);
    checkReferences(ids);
    if (problems.isEmpty()) {
      problems.addAll(pictures.unused());
    }
    if (!problems.isEmpty()) {
      return LoadResult.failed(problems);
    }
    return LoadResult.of(new Library(entries(records, new RecordReader(sources)), sources));
  }

  private static Map<String, LibraryRecord> entries(
      Map<Kind, List<YamlFile>> records, RecordReader reader) {
    Map<String, LibraryRecord> entries = new LinkedHashMap<>();
    records.forEach(
        (kind, yamls) -> {
          for (YamlFile yaml : yamls) {
            LibraryRecord entry = reader.entry(kind, yaml);
            entries.put(entry.id(), entry);
          }
        });
    return entries;
  }

  private List<YamlFile> readFolder(String folder, RecordIds ids) throws IOException {
    List<YamlFile> sound = new ArrayList<>();
    for (Path file : files.in(folder)) {
      ids.addFile(file, folder);
      Optional<YamlFile> yaml = read(file, folder, ids);
      yaml.ifPresent(sound::add);
    }
    return sound;
  }

  /** A file that can be parsed and fits its schema; of any other, the problems are kept. */
  private Optional<YamlFile> read(Path file, String schema, RecordIds ids) throws IOException {
    LoadResult<YamlFile> loaded = YamlFile.parse(files.shown(file), Files.readAllBytes(file));
    problems.addAll(loaded.problems());
    if (loaded.value().isEmpty()) {
      return Optional.empty();
    }
    YamlFile yaml = loaded.value().get();
    parsed.add(yaml);
    List<Problem> found = schemas.check(schema, yaml);
    problems.addAll(found);
    boolean named = found.stream().noneMatch(problem -> problem.key().equals("id"));
    if (named && files.contains(file)) {
      ids.addRecord(file, schema, yaml);
    }
    return found.isEmpty() ? Optional.of(yaml) : Optional.empty();
  }

  private void checkReferences(RecordIds ids) {
    List<Problem> found = new ArrayList<>();
    parsed.forEach(yaml -> found.addAll(References.check(yaml, ids)));
    found.forEach(this::addUnlessReported);
    parsed.clear();
  }

  /** Where the schema already objects to a word, its pointing nowhere is no second mistake. */
  private void addUnlessReported(Problem problem) {
    if (problems.stream().noneMatch(known -> known.place().equals(problem.place()))) {
      problems.add(problem);
    }
  }
}
