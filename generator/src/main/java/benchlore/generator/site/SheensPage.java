package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.units.Display;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Every sheen on one page, dullest first. */
final class SheensPage {
  static final String URL = "tables/sheens.html";
  private static final String ROOT = "../";

  private final Library library;
  private final Markdown markdown;

  SheensPage(Library library) {
    this.library = library;
    this.markdown = new Markdown(library, ROOT);
  }

  /** Values for the template {@code sheens}. */
  Map<String, Object> values() {
    List<LibraryRecord> sheens = new ArrayList<>(library.of(Kind.SHEENS));
    sheens.sort(
        Comparator.comparingDouble((LibraryRecord s) -> s.facts().datum("gloss-60").mid())
            .thenComparing(s -> s.facts().words("look")));
    List<Map<String, String>> levels = new ArrayList<>();
    for (LibraryRecord sheen : sheens) {
      levels.add(level(sheen));
    }
    Map<String, Object> values = new HashMap<>();
    values.put("root", ROOT);
    values.put("levels", levels);
    return values;
  }

  private Map<String, String> level(LibraryRecord sheen) {
    Map<String, String> level = new HashMap<>();
    level.put("title", sheen.title());
    level.put("url", ROOT + sheen.url());
    level.put("svg", SheenDrawings.patch(sheen));
    level.put("gloss", Display.html(sheen.facts().datum("gloss-60")));
    level.put("reflection", markdown.line(sheen.facts().words("reflection")));
    level.put("made", made(sheen));
    level.put(
        "paper", sheen.facts().optionalDatum("last-paper").map(SheensPage::grades).orElse(""));
    return level;
  }

  private static String made(LibraryRecord sheen) {
    return String.join(", or ", sheen.facts().list("made-by").stream().map(Labels::word).toList());
  }

  private static String grades(SourcedRange paper) {
    String low = "P" + (int) paper.low();
    String high = "P" + (int) paper.high();
    return low.equals(high) ? low : low + " to " + high;
  }
}
