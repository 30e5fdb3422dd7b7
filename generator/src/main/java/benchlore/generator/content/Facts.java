package benchlore.generator.content;

import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * Typed reading of a record's checked data. The schema has already decided what must be there, so a
 * missing required value is a programming error.
 *
 * @param data the facts of the kind, by key
 * @param figures further named figures, in order
 */
public record Facts(Fact.Group data, List<Fact.Group> figures) {
  /** Copies the list. */
  public Facts {
    figures = List.copyOf(figures);
  }

  /** Facts of a nested group, such as {@code bearing}. */
  public Facts of(Fact.Group group) {
    return new Facts(group, List.of());
  }

  /** A fact, if written. */
  public Optional<Fact> find(String key) {
    return Optional.ofNullable(data.facts().get(key));
  }

  /** Where a fact was written; where it is absent, its group. */
  public SourceLocation spot(String key) {
    return find(key).map(Fact::spot).orElse(data.spot());
  }

  /** A figure that may be absent. */
  public Optional<SourcedRange> optionalDatum(String key) {
    return find(key).map(fact -> ((Fact.Measure) fact).datum());
  }

  /** A figure the schema requires. */
  public SourcedRange datum(String key) {
    return optionalDatum(key).orElseThrow(() -> new NoSuchElementException(key));
  }

  /** A word or text; empty where absent. */
  public String words(String key) {
    return find(key).map(fact -> ((Fact.Words) fact).text()).orElse("");
  }

  /** Yes or no; no where absent. */
  public boolean flag(String key) {
    return find(key).map(fact -> ((Fact.Flag) fact).yes()).orElse(false);
  }

  /** A list of words; empty where absent. */
  public List<String> list(String key) {
    return wordItems(key).stream().map(Fact.Words::text).toList();
  }

  /** A list of words, each with its place; empty where absent. */
  public List<Fact.Words> wordItems(String key) {
    return items(key).stream().map(item -> (Fact.Words) item).toList();
  }

  /** A list of groups; empty where absent. */
  public List<Facts> groups(String key) {
    List<Facts> groups = new ArrayList<>();
    for (Fact item : items(key)) {
      groups.add(of((Fact.Group) item));
    }
    return List.copyOf(groups);
  }

  /** A nested group; empty where absent. */
  public Facts group(String key) {
    return of(
        find(key).map(fact -> (Fact.Group) fact).orElse(new Fact.Group(Map.of(), data.spot())));
  }

  /** An enum constant from its YAML word: {@code within-window} is {@code WITHIN_WINDOW}. */
  public <E extends Enum<E>> E word(String key, Class<E> type) {
    return Enum.valueOf(type, words(key).replace('-', '_').toUpperCase(java.util.Locale.ROOT));
  }

  /** A list of enum constants from their YAML words. */
  public <E extends Enum<E>> List<E> wordList(String key, Class<E> type) {
    List<E> constants = new ArrayList<>();
    for (String word : list(key)) {
      String name = word.replace('-', '_').toUpperCase(java.util.Locale.ROOT);
      constants.add(Enum.valueOf(type, name));
    }
    return List.copyOf(constants);
  }

  private List<Fact> items(String key) {
    return find(key).map(fact -> ((Fact.Items) fact).items()).orElse(List.of());
  }
}
