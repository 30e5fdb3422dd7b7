package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.page.Link;
import benchlore.generator.page.SheensModel;
import benchlore.generator.units.Display;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Fills the page of every sheen, dullest first. */
final class SheensPage {
  private final Library library;
  private final Markdown markdown;

  SheensPage(Library library) {
    this.library = library;
    this.markdown = new Markdown(library, "../");
  }

  SheensModel model() {
    List<LibraryRecord> sheens = new ArrayList<>(library.of(Kind.SHEENS));
    sheens.sort(
        Comparator.comparingDouble((LibraryRecord s) -> s.facts().datum("gloss-60").mid())
            .thenComparing(s -> s.facts().words("look")));
    return new SheensModel(sheens.stream().map(this::level).toList());
  }

  private SheensModel.Level level(LibraryRecord sheen) {
    return new SheensModel.Level(
        new Link(sheen.url(), sheen.title()),
        SheenDrawings.patch(sheen),
        Display.html(sheen.facts().datum("gloss-60")),
        markdown.line(sheen.facts().words("reflection")),
        made(sheen),
        sheen.facts().optionalDatum("last-paper").map(SheensPage::grades).orElse(""));
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
