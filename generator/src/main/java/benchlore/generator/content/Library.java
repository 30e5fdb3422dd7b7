package benchlore.generator.content;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Every record and source, checked, with all references resolved.
 *
 * @param entries by id, in order of id
 * @param sources by id, in order of id
 */
public record Library(Map<String, LibraryRecord> entries, Map<String, Source> sources) {
  /** Copies the maps in order of id. */
  public Library {
    entries = Collections.unmodifiableMap(new TreeMap<>(entries));
    sources = Collections.unmodifiableMap(new TreeMap<>(sources));
  }

  /** Records of one kind, by title. */
  public List<LibraryRecord> of(Kind kind) {
    List<LibraryRecord> found = new ArrayList<>();
    for (LibraryRecord entry : entries.values()) {
      if (entry.kind() == kind) {
        found.add(entry);
      }
    }
    found.sort((a, b) -> a.title().compareToIgnoreCase(b.title()));
    return List.copyOf(found);
  }

  /** The record with this id. */
  public Optional<LibraryRecord> find(String id) {
    return Optional.ofNullable(entries.get(id));
  }

  /** The record with this id in this kind. */
  public Optional<LibraryRecord> find(Kind kind, String id) {
    return find(id).filter(entry -> entry.kind() == kind);
  }
}
