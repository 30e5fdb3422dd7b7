package benchlore.generator.site;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.Source;
import benchlore.generator.units.Display;
import benchlore.schedules.quantity.Provenance;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Turns a record's facts into rows, sections and tables for a page. */
final class FactViews {
  /**
   * A row of the table of figures.
   *
   * @param label what it is
   * @param value HTML
   * @param from HTML: where it comes from, empty for plain words
   * @param trust css class: source, practice, memory or words
   */
  public record Row(String label, String value, String from, String trust) {}

  /**
   * A section of prose.
   *
   * @param label heading
   * @param html content
   */
  public record Section(String label, String html) {}

  /**
   * A table made of a list of groups.
   *
   * @param label caption
   * @param heads column heads
   * @param rows cells, HTML
   */
  public record Table(String label, List<String> heads, List<List<String>> rows) {}

  private static final Set<String> OWN_PLACE = Set.of("steps", "causes", "needs");

  private final Library library;
  private final Markdown markdown;
  private final String root;

  FactViews(Library library, Markdown markdown, String root) {
    this.library = library;
    this.markdown = markdown;
    this.root = root;
  }

  /** Everything that fits a row: figures, words, yes or no. */
  List<Row> rows(Facts facts) {
    List<Row> rows = new ArrayList<>();
    facts.data().facts().forEach((key, fact) -> addRow(rows, key, fact));
    for (Fact.Group figure : facts.figures()) {
      String name = ((Fact.Words) figure.facts().get("name")).text();
      rows.add(measure(Labels.capital(name), (Fact.Measure) figure.facts().get("figure")));
    }
    return rows;
  }

  /** Every prose fact. */
  List<Section> sections(Facts facts) {
    List<Section> sections = new ArrayList<>();
    facts
        .data()
        .facts()
        .forEach(
            (key, fact) -> {
              if (fact instanceof Fact.Words words && prose(words.text())) {
                sections.add(new Section(Labels.of(key), markdown.block(words.text())));
              }
            });
    return sections;
  }

  /** Every list of groups that has no place of its own on the page. */
  List<Table> tables(Facts facts) {
    List<Table> tables = new ArrayList<>();
    facts
        .data()
        .facts()
        .forEach(
            (key, fact) -> {
              if (fact instanceof Fact.Items items
                  && !items.items().isEmpty()
                  && items.items().get(0) instanceof Fact.Group
                  && !OWN_PLACE.contains(key)) {
                tables.add(table(key, items));
              }
            });
    return tables;
  }

  private Table table(String key, Fact.Items items) {
    Set<String> heads = new LinkedHashSet<>();
    for (Fact item : items.items()) {
      heads.addAll(((Fact.Group) item).facts().keySet());
    }
    List<List<String>> rows = new ArrayList<>();
    for (Fact item : items.items()) {
      Map<String, Fact> facts = ((Fact.Group) item).facts();
      rows.add(heads.stream().map(h -> facts.containsKey(h) ? cell(facts.get(h)) : "").toList());
    }
    return new Table(Labels.of(key), heads.stream().map(Labels::of).toList(), rows);
  }

  private String cell(Fact fact) {
    if (fact instanceof Fact.Measure measure) {
      return Display.html(measure.datum()) + " " + mark(measure);
    }
    if (fact instanceof Fact.Words words) {
      return library
          .find(words.text())
          .map(e -> "<a href=\"" + root + e.url() + "\">" + Display.escape(e.title()) + "</a>")
          .orElse(Display.escape(words.text()));
    }
    return "";
  }

  private void addRow(List<Row> rows, String key, Fact fact) {
    if (fact instanceof Fact.Measure measure) {
      rows.add(key.endsWith("grade") ? grade(key, measure) : measure(Labels.of(key), measure));
    } else if (fact instanceof Fact.Flag flag) {
      rows.add(new Row(Labels.of(key), flag.yes() ? "yes" : "no", "", "words"));
    } else if (fact instanceof Fact.Words words && !prose(words.text())) {
      rows.add(new Row(Labels.of(key), Display.escape(Labels.word(words.text())), "", "words"));
    } else if (fact instanceof Fact.Group group) {
      group.facts().forEach((k, f) -> addRow(rows, key + "-" + k, f));
    } else if (fact instanceof Fact.Items items && plainWords(items) && !OWN_PLACE.contains(key)) {
      String list =
          String.join(
              ", ", items.items().stream().map(i -> Labels.word(((Fact.Words) i).text())).toList());
      rows.add(new Row(Labels.of(key), Display.escape(list), "", "words"));
    }
  }

  private static boolean plainWords(Fact.Items items) {
    return !items.items().isEmpty() && items.items().get(0) instanceof Fact.Words;
  }

  private Row measure(String label, Fact.Measure measure) {
    return new Row(label, Display.html(measure.datum()), from(measure), trust(measure));
  }

  private Row grade(String key, Fact.Measure measure) {
    String low = "P" + Display.number(measure.datum().low());
    String high = "P" + Display.number(measure.datum().high());
    String value = low.equals(high) ? low : low + "–" + high;
    return new Row(Labels.of(key), value.replace("\u202f", ""), from(measure), trust(measure));
  }

  private static String trust(Fact.Measure measure) {
    return switch (measure.datum().from().kind()) {
      case SOURCE -> "source";
      case FROM_MEMORY -> "memory";
      case COMMON_PRACTICE, INPUT, COMPUTED -> "practice";
    };
  }

  private String from(Fact.Measure measure) {
    String note = measure.note().isEmpty() ? "" : "; " + Display.escape(measure.note());
    if (measure.datum().from().kind() == Provenance.Kind.SOURCE) {
      Source source = library.sources().get(measure.sourceId());
      return "<a href=\""
          + root
          + "sources.html#"
          + source.id()
          + "\">"
          + Display.escape(source.title())
          + "</a>, "
          + Display.escape(measure.datum().from().where())
          + note;
    }
    return Labels.trust(measure.datum().from().kind()) + note;
  }

  private String mark(Fact.Measure measure) {
    return switch (measure.datum().from().kind()) {
      case SOURCE ->
          "<a class=\"mark\" href=\""
              + root
              + "sources.html#"
              + measure.sourceId()
              + "\">source</a>";
      case FROM_MEMORY -> "<span class=\"mark\">from memory</span>";
      case COMMON_PRACTICE, INPUT, COMPUTED -> "";
    };
  }

  private static boolean prose(String text) {
    return text.length() > 48 || text.strip().endsWith(".");
  }
}
