package benchlore.generator.site;

import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Prose;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.util.List;

/** Renders a record's Markdown; HTML in it is shown as text, links to records are resolved. */
final class Markdown {
  private final Library library;
  private final String root;
  private final Parser parser;
  private final HtmlRenderer renderer;

  /**
   * Prepares for pages at one depth.
   *
   * @param library where links point
   * @param root path from the page to the site's root: empty or {@code ../}
   */
  Markdown(Library library, String root) {
    this.library = library;
    this.root = root;
    MutableDataSet options = new MutableDataSet();
    options.set(Parser.EXTENSIONS, List.of(TablesExtension.create()));
    options.set(HtmlRenderer.ESCAPE_HTML, true);
    this.parser = Parser.builder(options).build();
    this.renderer = HtmlRenderer.builder(options).build();
  }

  /** A block: paragraphs, lists, tables. */
  String block(String markdown) {
    return renderer.render(parser.parse(linked(markdown))).strip();
  }

  /** A line: no paragraph round it. */
  String line(String markdown) {
    String html = block(markdown.strip());
    boolean single = html.startsWith("<p>") && html.indexOf("<p>", 3) < 0 && html.endsWith("</p>");
    return single ? html.substring(3, html.length() - 4) : html;
  }

  private String linked(String markdown) {
    return Prose.LINK
        .matcher(markdown)
        .replaceAll(
            match -> {
              LibraryRecord entry = library.entries().get(match.group(1));
              String shown = match.group(2) == null ? lower(entry.title()) : match.group(2);
              return java.util.regex.Matcher.quoteReplacement(
                  "[" + shown + "](" + root + entry.url() + ")");
            });
  }

  private static String lower(String title) {
    boolean acronym = title.length() > 1 && Character.isUpperCase(title.charAt(1));
    return acronym ? title : Character.toLowerCase(title.charAt(0)) + title.substring(1);
  }
}
