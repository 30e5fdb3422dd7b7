package benchlore.generator.find;

import benchlore.generator.library.Entry;
import benchlore.generator.library.Facts;
import benchlore.generator.library.Library;
import benchlore.generator.library.Name;
import benchlore.generator.library.Prose;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes the script that carries the finder's documents and lexicon into a page. */
public final class FinderData {
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
      words.add(new TreeMap<>(Map.of("say", group.list("say"), "means", group.list("means"))));
    }
    return ScriptData.script(
        "benchloreFinder", new TreeMap<>(Map.of("documents", documents, "lexicon", words)));
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
}
