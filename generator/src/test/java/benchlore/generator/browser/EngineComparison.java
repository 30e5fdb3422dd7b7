package benchlore.generator.browser;

import benchlore.generator.export.RequestJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Compares two builds of the engine's script in Chromium: how long a page with nothing else takes
 * to load it, and how many whole plans a second it answers. Both run turn by turn in one browser,
 * so that whatever else the machine does falls on both. Prints the median of each and, as ratio,
 * the median over the rounds of the second by the first; asserts nothing.
 *
 * <p>Run after a build, with another build's site kept elsewhere: {@code mvn -B -ntp -pl generator
 * -am -Pcompare-engines -Dbefore=FOLDER verify -DskipTests}.
 */
public final class EngineComparison {
  private static final int ROUNDS = 9;
  private static final int PLANS = 10;
  private static final int SEED = 3;
  private static final String LOAD =
      """
      const load = performance.getEntriesByType('navigation')[0];
      return String(load.loadEventEnd - load.responseEnd);
      """;
  private static final String SPEED =
      """
      const requests = arguments[0].map(text => JSON.parse(text));
      let given = 0;
      const all = () => requests.forEach(request => { given += EngineEntry.plan(request).given; });
      all();
      given = 0;
      const start = performance.now();
      all();
      const took = performance.now() - start;
      return [String(requests.length / took * 1000), String(given)];
      """;

  private EngineComparison() {}

  /**
   * Compares.
   *
   * @param args the folder of the site before, that of the site after, and the content's
   * @throws IOException if a script can't be read
   */
  public static void main(String[] args) throws IOException {
    List<String> asked = new ArrayList<>();
    RandomRequests requests = new RandomRequests(Path.of(args[2]), SEED);
    for (int i = 0; i < PLANS; i++) {
      asked.add(RequestJson.write(requests.plan()));
    }
    Side before = Side.of(Path.of(args[0]));
    Side after = Side.of(Path.of(args[1]));
    try (Browser browser = Browser.start()) {
      for (int round = -1; round < ROUNDS; round++) {
        // The first round warms the browser and the disk's cache.
        before.measure(browser, asked, round >= 0);
        after.measure(browser, asked, round >= 0);
      }
    }
    System.out.printf("%-16s %10s %10s %7s%n", "", "before", "after", "ratio");
    row("bytes", List.of(before.bytes), List.of(after.bytes));
    row("load, ms", before.loads, after.loads);
    row("plans a second", before.speeds, after.speeds);
    System.out.printf(
        "%d rounds; of %d plans a round %s and %s were given%n",
        ROUNDS, PLANS, before.given, after.given);
  }

  private static void row(String what, List<Double> before, List<Double> after) {
    List<Double> ratios = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      ratios.add(after.get(i) / before.get(i));
    }
    System.out.printf(
        "%-16s %10.1f %10.1f %7.2f%n", what, median(before), median(after), median(ratios));
  }

  private static double median(List<Double> figures) {
    return figures.stream().sorted().toList().get(figures.size() / 2);
  }

  /** One build: a page that loads its script, and what was measured of it. */
  private static final class Side {
    private final String page;
    private final double bytes;
    private final List<Double> loads = new ArrayList<>();
    private final List<Double> speeds = new ArrayList<>();
    private String given = "none";

    private Side(String page, double bytes) {
      this.page = page;
      this.bytes = bytes;
    }

    static Side of(Path site) throws IOException {
      Path folder = Files.createTempDirectory("engine");
      Path script = Files.copy(site.resolve("js/engine.js"), folder.resolve("engine.js"));
      Path page = folder.resolve("page.html");
      Files.writeString(
          page, "<!doctype html><html lang=en><title>t</title><script src=engine.js></script>");
      return new Side(page.toUri().toString(), Files.size(script));
    }

    void measure(Browser browser, List<String> asked, boolean keep) {
      browser.open(page);
      double load = Double.parseDouble((String) browser.script(LOAD));
      List<?> speed = (List<?>) browser.script(SPEED, asked);
      given = (String) speed.get(1);
      if (keep) {
        loads.add(load);
        speeds.add(Double.parseDouble((String) speed.get(0)));
      }
    }
  }
}
