package benchlore.generator.browser;

import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.planning.Content;
import benchlore.generator.search.FinderData;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;

/**
 * Measures the finder in Chromium: loading its data, then the first answer, then each key stroke,
 * at the real size and with copies of the records up to 10,000. Prints; asserts nothing.
 *
 * <p>Run after a build: {@code mvn -B -ntp -pl generator -am -Pfinder-bench verify -DskipTests}.
 */
public final class FinderBench {
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
      return [window.loading, first, at(0.5), at(0.95), strokes.length].map(String);
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
   * @param args the site's folder and the content's
   * @throws IOException if the copies can't be written
   */
  public static void main(String[] args) throws IOException {
    Path site = Path.of(args[0]).toAbsolutePath().normalize();
    Content content = Content.load(Path.of(args[1])).value().orElseThrow();
    Path scratch = Files.createTempDirectory("finder-bench");
    int real = content.library().entries().size();
    System.out.printf(
        "%8s %11s %10s %9s %10s %16s %16s %8s%n",
        "records",
        "script, kB",
        "gzip, kB",
        "load, ms",
        "first, ms",
        "stroke half, ms",
        "stroke 95 %, ms",
        "strokes");
    for (int size : List.of(real, 10_000)) {
      String data = FinderData.script(grown(content.library(), size), content.lexicon(), Set.of());
      page(site, scratch, data);
      try (Browser browser = Browser.start()) {
        browser.open(scratch.resolve("bench.html").toUri().toString());
        List<?> figures = (List<?>) browser.script(TIME, TYPED);
        System.out.printf(
            "%8d %11d %10d %9.1f %10.1f %16.2f %16.2f %8s%n",
            size,
            data.getBytes(StandardCharsets.UTF_8).length / 1000,
            gzipped(data) / 1000,
            number(figures.get(0)),
            number(figures.get(1)),
            number(figures.get(2)),
            number(figures.get(3)),
            figures.get(4));
      }
    }
  }

  private static double number(Object text) {
    return Double.parseDouble(text.toString());
  }

  private static int gzipped(String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.size();
  }

  /** The records with copies whose names carry a number, until there are so many. */
  private static Library grown(Library library, int size) {
    List<LibraryRecord> entries = List.copyOf(library.entries().values());
    Map<String, LibraryRecord> all = new HashMap<>(library.entries());
    for (int i = entries.size(); i < size; i++) {
      LibraryRecord e = entries.get(i % entries.size());
      String id = e.id() + "-" + i;
      all.put(
          id,
          new LibraryRecord(
              e.kind(),
              id,
              e.title() + " no" + i,
              e.names(),
              e.lay(),
              e.text(),
              e.mistaken(),
              e.related(),
              e.drawings(),
              e.drawn(),
              e.facts()));
    }
    return new Library(all, library.sources());
  }

  private static void page(Path site, Path scratch, String data) throws IOException {
    for (String file : List.of("vendor/stemmer.js", "js/finder.js")) {
      Files.writeString(
          scratch.resolve(Path.of(file).getFileName()), Files.readString(site.resolve(file)));
    }
    Files.writeString(scratch.resolve("data.js"), data);
    StringBuilder html = new StringBuilder("<!DOCTYPE html><html lang=\"en\"><title>bench</title>");
    html.append("<script src=\"stemmer.js\"></script><script src=\"clock.js\"></script>");
    Stream.of("data.js", "finder.js")
        .forEach(name -> html.append("<script src=\"").append(name).append("\"></script>"));
    Files.writeString(scratch.resolve("clock.js"), "window.began = performance.now();");
    Files.writeString(
        scratch.resolve("loaded.js"), "window.loading = performance.now() - window.began;");
    html.append("<script src=\"loaded.js\"></script>");
    Files.writeString(scratch.resolve("bench.html"), html);
  }
}
