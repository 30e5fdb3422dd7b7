package benchlore.generator.planning;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.material.FieldSource;
import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Optional;

/**
 * The facts of a record file as the fields of a material. The schema has refused what is missing or
 * of the wrong kind already.
 *
 * @param id the record's id; empty within a group
 * @param facts what its file says
 */
record FactFields(String id, Facts facts) implements FieldSource {
  static FactFields of(LibraryRecord entry) {
    return new FactFields(entry.id(), entry.facts());
  }

  @Override
  public SourcedRange figure(String key) {
    return facts.datum(key);
  }

  @Override
  public Optional<SourcedRange> optionalFigure(String key) {
    return facts.optionalDatum(key);
  }

  @Override
  public boolean flag(String key) {
    return facts.flag(key);
  }

  /** A record's id is the name of its file and not among its facts. */
  @Override
  public String text(String key) {
    return facts.find(key).map(fact -> ((Fact.Words) fact).text()).orElse(id);
  }

  @Override
  public Optional<String> optionalText(String key) {
    return facts.find(key).map(fact -> ((Fact.Words) fact).text());
  }

  @Override
  public String word(String key, List<String> known) {
    return facts.words(key);
  }

  @Override
  public List<String> words(String key, List<String> known) {
    return facts.list(key);
  }

  @Override
  public List<FieldSource> groups(String key) {
    return facts.groups(key).stream().<FieldSource>map(group -> new FactFields("", group)).toList();
  }
}
