package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.planning.Content;
import benchlore.generator.search.SearchedTexts;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The index that comes with the site is the one the page would make itself, with its own tokeniser
 * and stemmer, from the same texts of every record.
 */
class FinderIndexIT {
  private static final String COMPARE =
      """
      const texts = arguments[0], words = benchlore.words, made = new Map(), spelt = new Set();
      words.prepare();
      texts.forEach((record, number) => record.forEach((text, field) => {
        for (const word of words.tokens(text)) {
          const stem = words.stem(word);
          spelt.add(word);
          if (!made.has(stem)) { made.set(stem, new Map()); }
          if (!made.get(stem).has(number)) { made.get(stem).set(number, field); }
        }
      }));
      const wrong = [];
      for (const [stem, places] of made) {
        const held = words.holding(stem);
        if (held.size !== places.size) { wrong.push(stem + ': in ' + held.size + ', not ' + places.size); }
        for (const [number, field] of places) {
          if (held.get(number) !== field) { wrong.push(stem + ' of ' + number + ': ' + held.get(number) + ', not ' + field); }
        }
      }
      const own = [...spelt].sort().join(' '), given = words.all().join(' ');
      if (own !== given) { wrong.push('other words'); }
      return { records: String(texts.length), stems: String(made.size), wrong: wrong.slice(0, 20) };
      """;

  @Test
  void theIndexIsWhatThePageWouldMakeOfTheSameRecords() throws IOException {
    List<List<String>> texts =
        SearchedTexts.of(Content.library(Path.of("../content")).value().orElseThrow());
    SiteFolder site = SiteFolder.fromBuild();
    try (Browser browser = Browser.start()) {
      browser.open(site.address("index.html"));
      Map<?, ?> found = (Map<?, ?>) browser.script(COMPARE, texts);
      System.out.printf(
          "finder, index: %s records, %s stems compared%n",
          found.get("records"), found.get("stems"));
      assertEquals(List.of(), found.get("wrong"));
      assertTrue(Integer.parseInt(found.get("stems").toString()) > 1000, found.toString());
    }
  }
}
