package benchlore.generator.library;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads a content folder into a {@link Library}, or into every problem found in it.
 *
 * <p>Order: parse each file, check it against its schema, check ids and references over all files,
 * then make the records. An author's mistake is never an exception; only a folder that can't be
 * read is.
 */
public final class LibraryLoader {
  private final Path content;
  private final SchemaSet schemas;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, YamlFile> entryFiles = new LinkedHashMap<>();
  private final Map<String, Kind> kinds = new HashMap<>();
  private final Map<String, Source> sources = new LinkedHashMap<>();

  private LibraryLoader(Path content) throws IOException {
    this.content = content;
    this.schemas = SchemaSet.read(content.resolve("schema"));
  }

  /**
   * Loads and checks.
   *
   * @param content a folder laid out like {@code content/}
   * @return the library, or every problem
   * @throws IOException if the folder or its schemas can't be read
   */
  public static Loaded<Library> load(Path content) throws IOException {
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
  public static Loaded<Map<String, Facts>> loadFacts(
      Path content, List<Path> files, String schema, Library library) throws IOException {
    LibraryLoader loader = new LibraryLoader(content);
    Map<String, Facts> facts = new LinkedHashMap<>();
    EntryReader reader = new EntryReader(library.sources());
    for (Path file : files) {
      Optional<YamlFile> yaml = loader.readChecked(file, schema);
      if (yaml.isPresent()) {
        loader.checkPointers(yaml.get(), library);
        JsonNode root = yaml.get().root();
        facts.put(root.path("id").asText(), reader.facts(root));
      }
    }
    return loader.problems.isEmpty() ? Loaded.of(facts) : Loaded.failed(loader.problems);
  }

  private Loaded<Library> load() throws IOException {
    readSources();
    for (Kind kind : Kind.values()) {
      readKind(kind);
    }
    checkFolders();
    checkReferences();
    if (!problems.isEmpty()) {
      return Loaded.failed(problems);
    }
    EntryReader reader = new EntryReader(sources);
    Map<String, Entry> entries = new LinkedHashMap<>();
    entryFiles.forEach((id, yaml) -> entries.put(id, reader.entry(kinds.get(id), yaml.root())));
    return Loaded.of(new Library(entries, sources));
  }

  private void readSources() throws IOException {
    for (Path file : yamlFiles("sources")) {
      Optional<YamlFile> yaml = readChecked(file, "sources");
      if (yaml.isPresent()) {
        Source source = EntryReader.source(yaml.get().root());
        checkName(yaml.get(), file, source.id());
        sources.put(source.id(), source);
      }
    }
  }

  private void readKind(Kind kind) throws IOException {
    for (Path file : yamlFiles(kind.folder())) {
      Optional<YamlFile> read = readChecked(file, kind.folder());
      if (read.isEmpty()) {
        continue;
      }
      YamlFile yaml = read.get();
      String id = yaml.root().path("id").asText();
      checkName(yaml, file, id);
      YamlFile other = entryFiles.putIfAbsent(id, yaml);
      if (other != null) {
        problems.add(
            new Problem(
                yaml.positions().value("/id"),
                "id",
                "the id `" + id + "` is taken",
                "It is also in " + other.positions().value("/id") + "; give one of them another."));
      }
      kinds.putIfAbsent(id, kind);
    }
  }

  private void checkName(YamlFile yaml, Path file, String id) {
    String expected = file.getFileName().toString().replaceAll("\\.yaml$", "");
    if (!id.equals(expected)) {
      problems.add(
          new Problem(
              yaml.positions().value("/id"),
              "id",
              "the id `" + id + "` differs from the file name",
              "Write `id: " + expected + "`, or rename the file to " + id + ".yaml."));
    }
  }

  private Optional<YamlFile> readChecked(Path file, String schema) throws IOException {
    String shown = shown(file);
    Loaded<YamlFile> parsed = YamlFile.parse(shown, Files.readString(file));
    problems.addAll(parsed.problems());
    if (parsed.value().isEmpty()) {
      return Optional.empty();
    }
    YamlFile yaml = parsed.value().get();
    List<Problem> found = schemas.check(schema, yaml);
    problems.addAll(found);
    // A file that fails its schema still has an id others may point at, so references stay quiet.
    if (found.isEmpty()) {
      return Optional.of(yaml);
    }
    remember(yaml, schema);
    return Optional.empty();
  }

  private void remember(YamlFile yaml, String schema) {
    String id = yaml.root().path("id").asText("");
    if (schema.equals("sources")) {
      sources.putIfAbsent(id, new Source(id, id, "", 0, "", ""));
    } else if (Kind.of(schema).isPresent()) {
      entryFiles.putIfAbsent(id, yaml);
      kinds.putIfAbsent(id, Kind.of(schema).get());
    }
  }

  private void checkReferences() {
    Map<String, String> solvents = new HashMap<>();
    kinds.forEach(
        (id, kind) -> solvents.computeIfAbsent(id, i -> kind == Kind.SOLVENTS ? i : null));
    References references = new References(entryFiles, solvents, sources.keySet());
    for (YamlFile yaml : entryFiles.values()) {
      problems.addAll(references.check(yaml));
    }
  }

  private void checkPointers(YamlFile yaml, Library library) {
    Map<String, YamlFile> entries = new HashMap<>();
    Map<String, String> solvents = new HashMap<>();
    for (Entry entry : library.entries().values()) {
      entries.put(entry.id(), yaml);
      if (entry.kind() == Kind.SOLVENTS) {
        solvents.put(entry.id(), entry.id());
      }
    }
    problems.addAll(new References(entries, solvents, library.sources().keySet()).check(yaml));
  }

  private void checkFolders() throws IOException {
    try (Stream<Path> folders = Files.list(content)) {
      for (Path folder : folders.filter(Files::isDirectory).sorted().toList()) {
        String name = folder.getFileName().toString().replace("/", "");
        boolean known =
            Kind.of(name).isPresent() || List.of("schema", "sources", "plans").contains(name);
        if (!known) {
          problems.add(
              new Problem(
                  new Place(shown(folder), 1, 1),
                  "",
                  "no kind of record is kept in a folder `" + name + "`",
                  Suggestions.todo(name, Stream.of(Kind.values()).map(Kind::folder).toList())));
        }
      }
    }
  }

  private List<Path> yamlFiles(String folder) throws IOException {
    Path path = content.resolve(folder);
    if (!Files.isDirectory(path)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(path)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private String shown(Path file) {
    Path root = content.toAbsolutePath().getParent();
    Path full = file.toAbsolutePath();
    String text =
        root != null && full.startsWith(root) ? root.relativize(full).toString() : full.toString();
    return text.replace('\\', '/');
  }
}
