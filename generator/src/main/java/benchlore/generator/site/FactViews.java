package benchlore.generator.site;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.Source;
import benchlore.generator.page.Cause;
import benchlore.generator.page.FactRow;
import benchlore.generator.page.RecordModel;
import benchlore.generator.units.Display;
import benchlore.schedules.quantity.Provenance;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns a record's facts into rows, sections and tables for a page. */
final class FactViews {
  private static final Set<String> OWN_PLACE = Set.of("steps", "causes", "needs");

  /** How a finish or glue is worked: one section, in this order. */
  private static final List<String> AT_THE_BENCH =
      List.of("begin", "put-on", "sprayed", "afterwards", "look-for");

  private final Library library;
  private final Markdown markdown;
  private final String root;

  FactViews(Library library, Markdown markdown, String root) {
    this.library = library;
    this.markdown = markdown;
    this.root = root;
  }

  /** All that is known, in its three shapes. */
  RecordModel.Facts facts(Facts facts) {
    return new RecordModel.Facts(rows(facts), sections(facts), tables(facts));
  }

  /** Everything that fits a row: figures, words, yes or no. */
  List<FactRow> rows(Facts facts) {
    List<FactRow> rows = new ArrayList<>();
    facts.data().facts().forEach((key, fact) -> addRow(rows, key, fact));
    for (Fact.Group figure : facts.figures()) {
      String name = ((Fact.Words) figure.facts().get("name")).text();
      rows.add(measure(Labels.capital(name), (Fact.Measure) figure.facts().get("figure")));
    }
    return rows;
  }

  /** Every prose fact. */
  List<RecordModel.Section> sections(Facts facts) {
    List<RecordModel.Section> sections = new ArrayList<>();
    atTheBench(facts).ifPresent(sections::add);
    facts
        .data()
        .facts()
        .forEach(
            (key, fact) -> {
              if (fact instanceof Fact.Words words
                  && prose(words.text())
                  && !AT_THE_BENCH.contains(key)) {
                sections.add(
                    new RecordModel.Section(Labels.label(key), markdown.block(words.text())));
              }
            });
    return sections;
  }

  private Optional<RecordModel.Section> atTheBench(Facts facts) {
    StringBuilder list = new StringBuilder();
    for (String key : AT_THE_BENCH) {
      String lead =
          switch (key) {
            case "sprayed" -> "From a gun: ";
            case "look-for" -> "Look for ";
            default -> "";
          };
      facts
          .find(key)
          .ifPresent(
              fact ->
                  list.append("- ").append(lead).append(((Fact.Words) fact).text()).append('\n'));
    }
    return list.isEmpty()
        ? Optional.empty()
        : Optional.of(new RecordModel.Section("At the bench", markdown.block(list.toString())));
  }

  /** Every list of groups that has no place of its own on the page. */
  private List<RecordModel.Table> tables(Facts facts) {
    List<RecordModel.Table> tables = new ArrayList<>();
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

  /** The causes of a fault; none for what is no fault. */
  static List<Cause> causes(Facts facts, Markdown markdown) {
    return facts.groups("causes").stream()
        .map(
            cause ->
                new Cause(
                    markdown.line(cause.words("cause")),
                    markdown.line(cause.words("sign")),
                    markdown.line(cause.words("cure")),
                    markdown.line(cause.words("prevention"))))
        .toList();
  }

  private RecordModel.Table table(String key, Fact.Items items) {
    Set<String> heads = new LinkedHashSet<>();
    for (Fact item : items.items()) {
      heads.addAll(((Fact.Group) item).facts().keySet());
    }
    List<List<String>> rows = new ArrayList<>();
    for (Fact item : items.items()) {
      Map<String, Fact> facts = ((Fact.Group) item).facts();
      rows.add(heads.stream().map(h -> facts.containsKey(h) ? cell(facts.get(h)) : "").toList());
    }
    return new RecordModel.Table(
        Labels.label(key), heads.stream().map(Labels::label).toList(), rows);
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

  private void addRow(List<FactRow> rows, String key, Fact fact) {
    if (fact instanceof Fact.Measure measure) {
      rows.add(key.endsWith("grade") ? grade(key, measure) : measure(Labels.label(key), measure));
    } else if (fact instanceof Fact.Flag flag) {
      rows.add(new FactRow(Labels.label(key), flag.yes() ? "yes" : "no", "", "words"));
    } else if (fact instanceof Fact.Words words
        && !prose(words.text())
        && !AT_THE_BENCH.contains(key)) {
      rows.add(
          new FactRow(Labels.label(key), Display.escape(Labels.word(words.text())), "", "words"));
    } else if (fact instanceof Fact.Group group) {
      group.facts().forEach((k, f) -> addRow(rows, key + "-" + k, f));
    } else if (fact instanceof Fact.Items items && plainWords(items) && !OWN_PLACE.contains(key)) {
      String list =
          String.join(
              ", ", items.items().stream().map(i -> Labels.word(((Fact.Words) i).text())).toList());
      rows.add(new FactRow(Labels.label(key), Display.escape(list), "", "words"));
    }
  }

  private static boolean plainWords(Fact.Items items) {
    return !items.items().isEmpty() && items.items().get(0) instanceof Fact.Words;
  }

  private FactRow measure(String label, Fact.Measure measure) {
    return new FactRow(label, Display.html(measure.datum()), from(measure), trust(measure));
  }

  private FactRow grade(String key, Fact.Measure measure) {
    String low = "P" + Display.number(measure.datum().low());
    String high = "P" + Display.number(measure.datum().high());
    String value = low.equals(high) ? low : low + "–" + high;
    return new FactRow(
        Labels.label(key), value.replace("\u202f", ""), from(measure), trust(measure));
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
