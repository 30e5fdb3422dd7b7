package benchlore.generator.search;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.MistakenFor;
import benchlore.generator.content.Name;
import benchlore.generator.content.Prose;
import benchlore.generator.pagedata.ScriptData;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Writes the script that carries the finder's documents and lexicon into a page. */
public final class FinderData {
  /**
   * What is searched of a record, what says most first; {@code finder/asked.js} gives the weights.
   */
  static final List<String> FIELDS =
      List.of("title", "names", "misspelt", "lay", "symptom", "does", "looks", "one", "more");

  private FinderData() {}

  /**
   * The script.
   *
   * @param library every record
   * @param lexicon lay words and the trade words they mean: groups of {@code say} with {@code
   *     means}, with the {@code kind} of record they hint at, or words of {@code elsewhere}
   * @param pictured ids of the records with a small picture
   * @return JavaScript that sets {@code window.benchloreFinder}
   */
  public static String script(Library library, List<Facts> lexicon, Set<String> pictured) {
    List<Map<String, Object>> documents = new ArrayList<>();
    WordIndex index = new WordIndex(FIELDS.size());
    for (LibraryRecord entry : library.entries().values()) {
      index.add(documents.size(), texts(entry));
      Map<String, Object> document = document(entry);
      if (pictured.contains(entry.id())) {
        document.put("picture", true);
      }
      documents.add(document);
    }
    List<Map<String, Object>> words = new ArrayList<>();
    List<Map<String, Object>> hints = new ArrayList<>();
    List<String> elsewhere = new ArrayList<>();
    for (Facts group : lexicon) {
      List<String> say = group.list("say");
      if (group.flag("elsewhere")) {
        elsewhere.addAll(say);
      } else if (group.words("kind").isEmpty()) {
        words.add(new TreeMap<>(Map.of("say", say, "means", group.list("means"))));
      } else {
        hints.add(new TreeMap<>(Map.of("say", say, "kind", group.words("kind"))));
      }
    }
    Map<String, Object> data = new TreeMap<>();
    data.put("fields", FIELDS);
    data.put("words", index.words());
    data.put("places", index.places());
    data.put("documents", documents);
    data.put("lexicon", words);
    data.put("hints", hints);
    data.put("elsewhere", elsewhere);
    return ScriptData.script("benchloreFinder", data);
  }

  /** The texts of a record that are searched, in the order of {@link #FIELDS}. */
  static List<String> texts(LibraryRecord entry) {
    return List.of(
        entry.title(),
        String.join(" / ", names(entry, false)),
        String.join(" / ", names(entry, true)),
        String.join(" / ", entry.lay()),
        Prose.plain(symptom(entry.facts())),
        Prose.plain(entry.text().does()),
        Prose.plain(entry.text().looks()),
        entry.kind().one(),
        Prose.plain(more(entry)));
  }

  private static List<String> names(LibraryRecord entry, boolean misspelt) {
    return entry.names().stream()
        .filter(name -> name.misspelt() == misspelt)
        .map(Name::text)
        .toList();
  }

  private static Map<String, Object> document(LibraryRecord entry) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", entry.id());
    fields.put("kind", entry.kind().folder());
    fields.put("one", entry.kind().one());
    fields.put("title", entry.title());
    fields.put("names", names(entry, false));
    fields.put("misspelt", names(entry, true));
    fields.put("lay", entry.lay());
    fields.put("does", Prose.plain(entry.text().does()));
    fields.put("looks", Prose.plain(entry.text().looks()));
    fields.put("near", near(entry));
    fields.put("url", entry.url());
    return fields;
  }

  /** The records it is taken for, each with how to tell. */
  private static List<List<String>> near(LibraryRecord entry) {
    List<List<String>> near = new ArrayList<>();
    for (MistakenFor mistaken : entry.mistaken()) {
      if (!mistaken.id().isEmpty()) {
        near.add(List.of(mistaken.id(), Prose.plain(mistaken.tell())));
      }
    }
    return near;
  }

  /** What a fault shows as, and how its causes show. */
  private static String symptom(Facts facts) {
    StringBuilder text = new StringBuilder(facts.words("symptom"));
    for (Facts cause : facts.groups("causes")) {
      text.append(' ').append(cause.words("cause")).append(' ').append(cause.words("sign"));
    }
    return text.toString();
  }

  private static String more(LibraryRecord entry) {
    StringBuilder text = new StringBuilder(entry.text().use());
    entry.text().wrong().forEach(line -> text.append(' ').append(line));
    text.append(' ').append(entry.text().body());
    for (Facts step : entry.facts().groups("steps")) {
      text.append(' ').append(step.words("do"));
    }
    for (String key : List.of("colour", "dissolves", "origin", "material", "mineral", "sizes")) {
      if (entry.facts().find(key).orElse(null) instanceof Fact.Words words) {
        text.append(' ').append(words.text());
      }
    }
    return text.toString();
  }
}
