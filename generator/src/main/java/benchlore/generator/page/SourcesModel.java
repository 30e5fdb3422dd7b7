package benchlore.generator.page;

import benchlore.generator.content.Source;
import benchlore.generator.planning.Content;
import benchlore.schedules.quantity.Provenance;
import java.util.List;

/**
 * Where the figures come from.
 *
 * @param sources every source, with how much rests on it
 * @param all figures in the records
 * @param published those that rest on a source
 * @param practice those that are common practice
 * @param memory those from memory
 */
public record SourcesModel(List<Cited> sources, int all, int published, int practice, int memory)
    implements PageModel {
  /**
   * A source.
   *
   * @param source which
   * @param count figures and rules that rest on it
   */
  public record Cited(Source source, int count) {}

  /** Copies the list. */
  public SourcesModel {
    sources = List.copyOf(sources);
  }

  /** Counts the figures and the rules of a site. */
  public static SourcesModel of(Content content) {
    SourceCounts counts = new SourceCounts(content);
    return new SourcesModel(
        content.library().sources().values().stream()
            .map(source -> new Cited(source, counts.of(source.id())))
            .toList(),
        counts.all(),
        counts.of(Provenance.Kind.SOURCE),
        counts.of(Provenance.Kind.COMMON_PRACTICE),
        counts.of(Provenance.Kind.FROM_MEMORY));
  }

  @Override
  public String template() {
    return "sources";
  }
}
