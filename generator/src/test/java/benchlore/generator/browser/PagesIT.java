package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.browser.Browser.Scheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page in a real browser: quiet console, no request outside the folder, nothing too wide. */
class PagesIT {
  private static final String TOO_WIDE =
      """
      document.querySelectorAll('details').forEach(d => { d.open = true; });
      const page = document.documentElement;
      if (page.scrollWidth <= page.clientWidth) { return ''; }
      const out = [...document.querySelectorAll('body *')]
        .filter(e => e.getBoundingClientRect().right > page.clientWidth + 0.5
                  && !e.closest('.scroll, nav, svg'))
        .map(e => e.tagName.toLowerCase() + (e.className ? '.' + e.className : ''));
      return page.scrollWidth + ' px wide: ' + [...new Set(out)].slice(0, 5).join(', ');
      """;
  private static final String LIGHTNESS =
      """
      const style = getComputedStyle(document.body);
      return [style.backgroundColor, style.color].map(colour => {
        const [r, g, b] = colour.match(/[0-9.]+/g).map(Number);
        return (0.2126 * r + 0.7152 * g + 0.0722 * b) / 255;
      });
      """;

  private static SiteFolder site;
  private static Browser browser;

  @BeforeAll
  static void startBrowser() {
    site = SiteFolder.fromBuild();
    browser = Browser.start();
  }

  @AfterAll
  static void closeBrowser() {
    browser.close();
  }

  @Test
  void everyPageIsQuietStaysInItsFolderAndFitsASmallPhone() {
    browser.scheme(Scheme.LIGHT);
    browser.width(Browser.NARROW);
    List<String> troubles = new ArrayList<>();
    for (String page : site.pages()) {
      browser.open(site.address(page));
      String wide = (String) browser.script(TOO_WIDE);
      if (!wide.isEmpty()) {
        troubles.add(page + ": " + wide);
      }
      browser.troubles(site.prefix()).forEach(trouble -> troubles.add(page + ": " + trouble));
    }
    assertEquals("", String.join("\n", troubles));
  }

  @Test
  void theKindOfThisPageIsInSightInTheRowOfKinds() {
    browser.width(Browser.NARROW);
    browser.open(site.address("techniques/index.html"));
    assertEquals(
        true,
        browser.script(
            """
            const here = document.querySelector('.top [aria-current]').getBoundingClientRect();
            const row = document.querySelector('.top nav').getBoundingClientRect();
            return here.left >= row.left && here.right <= row.right"""));
  }

  @Test
  void darkSchemeIsLightTextOnDarkPaper() {
    for (String page : site.oneOfEachSort()) {
      browser.open(site.address(page));
      browser.scheme(Scheme.LIGHT);
      List<?> light = (List<?>) browser.script(LIGHTNESS);
      browser.scheme(Scheme.DARK);
      List<?> dark = (List<?>) browser.script(LIGHTNESS);
      assertTrue(number(light, 0) > 0.8 && number(light, 1) < 0.3, page + " light: " + light);
      assertTrue(number(dark, 0) < 0.2 && number(dark, 1) > 0.7, page + " dark: " + dark);
    }
  }

  @Test
  void theWatchNoticesWhatItIsThereFor(@TempDir Path folder) throws IOException {
    Path inside = Files.createDirectory(folder.resolve("site"));
    Files.writeString(folder.resolve("outside.svg"), "<svg xmlns='http://www.w3.org/2000/svg'/>");
    Files.writeString(
        inside.resolve("index.html"),
        """
        <!DOCTYPE html><html lang="en"><head><title>Bad</title>
        <meta http-equiv="Content-Security-Policy" content="style-src 'self'"></head>
        <body style="color: red"><p>x</p><img src="../outside.svg" alt=""><img src="none.png" alt="">
        <img src="http://wood.example/a.png" alt="">
        <div id="far"></div><script>console.warn('careful')</script></body></html>
        """);
    SiteFolder bad = new SiteFolder(inside);
    browser.open(bad.address("index.html"));
    String troubles = String.join("\n", browser.troubles(bad.prefix()));
    assertTrue(troubles.contains("outside the site: file://"), troubles);
    assertTrue(troubles.contains("outside the site: http://wood.example/a.png"), troubles);
    assertTrue(troubles.contains("none.png"), troubles);
    assertTrue(troubles.contains("Content Security Policy"), troubles);
    assertTrue(troubles.contains("careful"), troubles);
  }

  private static double number(List<?> values, int at) {
    return ((Number) values.get(at)).doubleValue();
  }
}
