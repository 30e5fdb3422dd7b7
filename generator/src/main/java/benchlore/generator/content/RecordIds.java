package benchlore.generator.content;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The ids that may be referred to. A file with other problems still counts, by its id and by its
 * name, so that one mistake isn't reported again wherever the record is mentioned.
 */
final class RecordIds {
  private final Map<String, Kind> kinds = new HashMap<>();
  private final Map<String, Place> taken = new HashMap<>();
  private final Set<String> sources = new HashSet<>();
  private final List<Problem> problems = new ArrayList<>();

  /** The ids of a library that is already checked. */
  static RecordIds of(Library library) {
    RecordIds ids = new RecordIds();
    library.entries().values().forEach(entry -> ids.kinds.put(entry.id(), entry.kind()));
    ids.sources.addAll(library.sources().keySet());
    return ids;
  }

  /** A file is there, whatever it holds. */
  void addFile(Path file, String schema) {
    add(ContentFiles.id(file), schema);
  }

  /** A record is there; its id must be its file's name and nobody else's. */
  void addRecord(Path file, String schema, YamlFile yaml) {
    String id = yaml.root().path("id").asText("");
    String expected = ContentFiles.id(file);
    Place place = yaml.positions().value("/id");
    if (id.isEmpty()) {
      return;
    }
    if (!id.equals(expected)) {
      problems.add(
          new Problem(
              place,
              "id",
              "the id `" + id + "` differs from the file name",
              "Write `id: " + expected + "`, or rename the file to " + id + ".yaml."));
    } else if (Kind.of(schema).isPresent()) {
      Place other = taken.putIfAbsent(id, place);
      if (other != null) {
        problems.add(
            new Problem(
                place,
                "id",
                "the id `" + id + "` is taken",
                "It is also in " + other + "; give one of them another id and file name."));
      }
    }
    add(id, schema);
  }

  private void add(String id, String schema) {
    if (schema.equals("sources")) {
      sources.add(id);
    }
    Kind.of(schema).ifPresent(kind -> kinds.putIfAbsent(id, kind));
  }

  /** Ids that are taken or differ from their file's name. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  Optional<Kind> kind(String id) {
    return Optional.ofNullable(kinds.get(id));
  }

  /** Every id of a kind. */
  Set<String> of(Kind kind) {
    Set<String> ids = new HashSet<>(kinds.keySet());
    ids.removeIf(id -> kinds.get(id) != kind);
    return ids;
  }

  /** Every id of a record. */
  Set<String> records() {
    return Set.copyOf(kinds.keySet());
  }

  /** Every id of a source. */
  Set<String> sources() {
    return Set.copyOf(sources);
  }
}
