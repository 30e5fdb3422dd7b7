package benchlore.generator.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Measures the finder in Chromium: from a fresh page to the first answer, and each key stroke, at
 * the real size and with copies of the records up to 10,000. Prints; asserts nothing.
 *
 * <p>Run after a build: {@code mvn -B -ntp -pl generator -am -Pfinder-bench verify -DskipTests}.
 */
public final class FinderBench {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String TIME =
      """
      const typed = arguments[0], t0 = performance.now();
      benchlore.find(typed[0]);
      const first = performance.now() - t0, strokes = [];
      for (const words of typed) {
        for (let i = 1; i <= words.length; i++) {
          const t = performance.now();
          benchlore.find(words.slice(0, i));
          strokes.push(performance.now() - t);
        }
      }
      strokes.sort((a, b) => a - b);
      const at = share => strokes[Math.floor(share * (strokes.length - 1))];
      return [first, at(0.5), at(0.95), strokes.length].map(String);
      """;
  private static final List<String> TYPED =
      List.of(
          "bit with a wheel on the end",
          "milky lacquer",
          "sandpaper for varnish",
          "metal card that scrapes",
          "glue for a boat",
          "white haze after brushing",
          "mask for fumes");

  private FinderBench() {}

  /**
   * Measures.
   *
   * @param args the site's folder
   * @throws IOException if the copies can't be written
   */
  public static void main(String[] args) throws IOException {
    Path site = Path.of(args[0]).toAbsolutePath().normalize();
    Path scratch = Files.createTempDirectory("finder-bench");
    String script = Files.readString(site.resolve("js/finder-data.js"));
    int from = script.indexOf('(') + 1;
    JsonNode data =
        JSON.readTree(
            JSON.readValue(script.substring(from, script.lastIndexOf(')')), String.class));
    int real = data.path("documents").size();
    System.out.printf(
        "%8s %14s %16s %16s %9s%n",
        "records", "first, ms", "stroke half, ms", "stroke 95 %, ms", "strokes");
    for (int size : List.of(real, 10_000)) {
      page(site, scratch, grown((ObjectNode) data.deepCopy(), size));
      try (Browser browser = Browser.start()) {
        browser.open(scratch.resolve("bench.html").toUri().toString());
        List<?> figures = (List<?>) browser.script(TIME, TYPED);
        System.out.printf(
            "%8d %14.1f %16.2f %16.2f %9s%n",
            size,
            Double.parseDouble(figures.get(0).toString()),
            Double.parseDouble(figures.get(1).toString()),
            Double.parseDouble(figures.get(2).toString()),
            figures.get(3));
      }
    }
  }

  /** The records with copies whose names carry a number, until there are so many. */
  private static ObjectNode grown(ObjectNode data, int size) {
    ArrayNode documents = (ArrayNode) data.path("documents");
    int real = documents.size();
    for (int i = real; i < size; i++) {
      ObjectNode copy = documents.get(i % real).deepCopy();
      copy.put("id", copy.path("id").asText() + "-" + i);
      copy.put("title", copy.path("title").asText() + " no" + i);
      documents.add(copy);
    }
    return data;
  }

  private static void page(Path site, Path scratch, ObjectNode data) throws IOException {
    for (String file : List.of("vendor/minisearch.js", "vendor/stemmer.js", "js/rank.js")) {
      Files.writeString(
          scratch.resolve(Path.of(file).getFileName()), Files.readString(site.resolve(file)));
    }
    String literal = JSON.writeValueAsString(JSON.writeValueAsString(data));
    Files.writeString(
        scratch.resolve("data.js"), "window.benchloreFinder = JSON.parse(" + literal + ");");
    StringBuilder html = new StringBuilder("<!DOCTYPE html><html lang=\"en\"><title>bench</title>");
    Stream.of("minisearch.js", "stemmer.js", "data.js", "rank.js")
        .forEach(name -> html.append("<script src=\"").append(name).append("\"></script>"));
    Files.writeString(scratch.resolve("bench.html"), html);
  }
}
