package benchlore.generator.find;

import benchlore.generator.library.Entry;
import benchlore.generator.library.Facts;
import benchlore.generator.library.Library;
import benchlore.generator.library.Name;
import benchlore.generator.library.Prose;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes the script that carries the finder's documents and lexicon into a page.
 *
 * <p>The data is a string literal handed to {@code JSON.parse}, which a browser reads faster than a
 * literal object, and a classic script, since pages opened from a disk can't fetch.
 */
public final class FinderData {
  private static final ObjectMapper JSON = new ObjectMapper();

  private FinderData() {}

  /**
   * The script.
   *
   * @param library every record
   * @param lexicon lay words and the trade words they mean: groups of {@code say} and {@code means}
   * @return JavaScript that sets {@code window.benchloreFinder}
   */
  public static String script(Library library, List<Facts> lexicon) {
    List<Map<String, Object>> documents = new ArrayList<>();
    for (Entry entry : library.entries().values()) {
      documents.add(document(entry));
    }
    List<Map<String, Object>> words = new ArrayList<>();
    for (Facts group : lexicon) {
      words.add(Map.of("say", group.list("say"), "means", group.list("means")));
    }
    String data = json(new java.util.TreeMap<>(Map.of("documents", documents, "lexicon", words)));
    return "window.benchloreFinder = JSON.parse(" + json(data) + ");\n";
  }

  private static Map<String, Object> document(Entry entry) {
    Map<String, Object> fields = new LinkedHashMap<>();
    List<String> names = new ArrayList<>();
    List<String> misspelt = new ArrayList<>();
    for (Name name : entry.names()) {
      (name.misspelt() ? misspelt : names).add(name.text());
    }
    fields.put("id", entry.id());
    fields.put("kind", entry.kind().folder());
    fields.put("one", entry.kind().one());
    fields.put("title", entry.title());
    fields.put("names", names);
    fields.put("misspelt", misspelt);
    fields.put("lay", entry.lay());
    fields.put("does", Prose.plain(entry.text().does()));
    fields.put("looks", Prose.plain(entry.text().looks()));
    fields.put(
        "more", Prose.plain(entry.text().use() + " " + String.join(" ", entry.text().wrong())));
    fields.put("url", entry.url());
    return fields;
  }

  private static String json(Object value) {
    try {
      // A closing script tag or a line separator inside the literal must not end it.
      return JSON.writeValueAsString(value)
          .replace("<", "\\u003c")
          .replace("\u2028", "\\u2028")
          .replace("\u2029", "\\u2029");
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("plain maps always serialise", e);
    }
  }
}
