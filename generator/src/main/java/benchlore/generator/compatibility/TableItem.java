package benchlore.generator.compatibility;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.compatibility.Trait;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One row or column of a table: a record, or a job or place that a table's own file describes.
 *
 * @param id unique in its axis
 * @param title as shown
 * @param means what it is, a sentence or two of Markdown
 * @param url its page from the site's root; empty where it has none
 * @param facts what the rules may ask of it, by key; {@code place} of {@code bearing} is {@code
 *     bearing-place}
 */
public record TableItem(
    String id, String title, String means, String url, Map<String, Fact> facts) {
  /** Copies the facts, keeping their order. */
  public TableItem {
    facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
  }

  /** The facts as the rules ask for them. */
  Map<String, Trait> traits() {
    return RuleRows.traits(facts);
  }

  /** A record; its id is a fact under {@code idKey}, so that a rule may name it. */
  static TableItem from(LibraryRecord entry, String idKey) {
    Map<String, Fact> facts = new LinkedHashMap<>();
    flatten("", entry.facts().data(), facts);
    facts.put(idKey, new Fact.Words(entry.id(), entry.facts().data().spot()));
    return new TableItem(entry.id(), entry.title(), entry.text().does(), entry.url(), facts);
  }

  /** A job or place that a table describes itself. */
  static TableItem described(String id, Facts described, String idKey) {
    Fact own = new Fact.Words(id, described.data().spot());
    return new TableItem(
        id, described.words("title"), described.words("means"), "", Map.of(idKey, own));
  }

  private static void flatten(String before, Fact.Group group, Map<String, Fact> into) {
    group
        .facts()
        .forEach(
            (key, fact) -> {
              if (fact instanceof Fact.Group inner) {
                flatten(before + key + "-", inner, into);
              } else {
                into.put(before + key, fact);
              }
            });
  }
}
