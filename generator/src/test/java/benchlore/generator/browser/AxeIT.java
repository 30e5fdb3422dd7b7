package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.browser.Browser.Scheme;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The accessibility rules of axe-core, best practices included, on one page of each sort and every
 * plan, in light and dark, on a small phone and a desk. A violation of any impact fails.
 */
class AxeIT {
  private static final String RUN =
      """
      const done = arguments[arguments.length - 1];
      axe.run(document, { resultTypes: ['violations'] }).then(
        result => done(result.violations.map(v =>
          v.id + ' (' + v.impact + '): ' + v.nodes.slice(0, 3).map(n =>
            n.target.join(' ') + ' ' + n.failureSummary.replace(/\\s+/g, ' ')).join(' | '))),
        error => done(['axe failed: ' + error]));
      """;

  private static final String OPEN_ALL =
      "document.querySelectorAll('details').forEach(d => { d.open = true; })";

  private static final String ASKED =
      """
      const keep = document.getElementById('plan-keep');
      const fields = window.benchlore.project.fields;
      ['Bench', 'Cabinet'].forEach(title => { fields.set({ title }); keep.click(); });
      document.querySelector('[aria-label="Forget Bench"]').click();
      fields.set({ coats: 6 });
      keep.click();""";

  private static SiteFolder site;
  private static Browser browser;
  private static String axe;

  @BeforeAll
  static void startBrowser() throws IOException {
    try (InputStream script = AxeIT.class.getResourceAsStream("/axe/axe.min.js")) {
      axe = new String(script.readAllBytes(), StandardCharsets.UTF_8);
    }
    site = SiteFolder.fromBuild();
    browser = Browser.start();
    browser.driver().manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
  }

  @AfterAll
  static void closeBrowser() {
    browser.close();
  }

  @Test
  void noPageOfAnySortBreaksARuleInAnySchemeOrWidth() {
    Map<String, List<String>> violations = new LinkedHashMap<>();
    List<String> pages = new ArrayList<>(site.oneOfEachSort());
    pages.add("index.html#find=bit+with+a+bearing");
    site.files().stream().filter(file -> file.matches("planner/.*html")).forEach(pages::add);
    pages.add("planner/fit.html#species=nothing&width=-1");
    pages.add("faults.html#when=while-coating&where=film&words=craters");
    pages.add("compare/router-bits.html#of=chamfer-bit,round-over-bit");
    for (String page : pages) {
      browser.open(site.address(page));
      addViolations(page, violations);
    }
    assertEquals(Map.of(), violations);
  }

  /** The question about a name that is taken, beside a plan forgotten that may come back. */
  @Test
  void theQuestionAboutATakenNameBreaksNoRule() {
    browser.open(site.address("planner/finish.html"));
    browser.script(ASKED);
    Map<String, List<String>> violations = new LinkedHashMap<>();
    addViolations("planner/finish.html", violations);
    browser.script("window.localStorage.clear()");
    assertEquals(Map.of(), violations);
  }

  private static void addViolations(String page, Map<String, List<String>> violations) {
    browser.script(OPEN_ALL);
    browser.script(axe);
    for (Scheme scheme : Scheme.values()) {
      for (int width : new int[] {Browser.NARROW, Browser.WIDE}) {
        for (Object violation : violations(scheme, width)) {
          violations
              .computeIfAbsent(page + ": " + violation, v -> new ArrayList<>())
              .add(scheme + " " + width + " px");
        }
      }
    }
  }

  @Test
  void theRulesNoticeAFault(@TempDir Path folder) throws IOException {
    Path bad = folder.resolve("index.html");
    Files.writeString(
        bad,
        """
        <!DOCTYPE html><html><head><title>Bad</title></head>
        <body><p style="color:#aaa;background:#fff">pale</p><img src="data:,"></body></html>
        """);
    browser.open(bad.toUri().toString());
    browser.script(axe);
    String found = violations(Scheme.LIGHT, Browser.WIDE).toString();
    for (String rule : List.of("color-contrast", "html-has-lang", "image-alt", "region")) {
      assertTrue(found.contains(rule + " ("), rule + " not in " + found);
    }
  }

  private static List<?> violations(Scheme scheme, int width) {
    browser.scheme(scheme);
    browser.width(width);
    return (List<?>) browser.driver().executeAsyncScript(RUN);
  }
}
