package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** The units switch: the page's own words by metric, the same figures by inches, remembered. */
class UnitsIT {
  private static final String METRIC_TWICE =
      """
      const units = window.benchlore.units;
      return [...document.querySelectorAll('span.q[data-q]')].map(e => {
        const high = e.dataset.h === undefined ? e.dataset.q : e.dataset.h;
        const made = units.text(Number(e.dataset.q), Number(high), e.dataset.u);
        return made === e.textContent ? '' : e.textContent + ' is made ' + made;
      }).filter(Boolean);
      """;
  private static final String SAY =
      "return window.benchlore.units.text(arguments[0], arguments[1], arguments[2])";

  private static final String DAYS =
      """
      return [...document.querySelectorAll('.ladder text[data-as], .ladder desc time, .glance time')]
        .map(e => e.textContent)""";

  private static final SiteFolder site = SiteFolder.fromBuild();
  @RegisterExtension static final Browser browser = Browser.watching(site);

  @AfterEach
  void forgetEverything() {
    browser.script("window.localStorage.clear()");
  }

  /** The generator and the page's script show a figure alike: every figure of many pages. */
  @Test
  void theScriptSaysWhatTheGeneratorWrote() {
    List<String> pages = new ArrayList<>();
    for (String page : site.files()) {
      if (page.endsWith(".html") && page.contains("/") && Math.floorMod(page.hashCode(), 8) == 0) {
        pages.add(page);
      }
    }
    List<String> wrong = new ArrayList<>();
    for (String page : pages) {
      browser.open(site.address(page));
      for (Object line : (List<?>) browser.script(METRIC_TWICE)) {
        wrong.add(page + ": " + line);
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void theSwitchTurnsEveryFigureAndIsRemembered() {
    browser.open(site.address("router-bits/round-over-bit.html"));
    WebElement button = browser.driver().findElement(By.id("units"));
    String before = browser.text("main .q");
    assertEquals("25.4 mm", before);
    button.click();
    assertEquals("1 in", browser.text("main .q"));
    browser.open(site.address("router-bits/chamfer-bit.html"));
    assertEquals("inch", browser.text("#units"));
    browser.driver().findElement(By.id("units")).click();
    browser.open(site.address("router-bits/round-over-bit.html"));
    assertEquals(before, browser.text("main .q"));
  }

  /** Against conversions anyone can look up: the inch is 25.4 mm, water freezes at 32 °F. */
  @Test
  void imperialFiguresAreRight() {
    browser.open(site.address("router-bits/round-over-bit.html"));
    browser.script("window.benchlore.units.set('imperial')");
    assertEquals("3/4\u00a0in", say(0.01905, 0.01905, "METRE"));
    assertEquals("1 1/2–2\u00a0in", say(0.0381, 0.0508, "metre"));
    assertEquals("0.004\u00a0in", say(0.0001016, 0.0001016, "metre"));
    assertEquals("10\u00a0ft", say(3.048, 3.048, "metre"));
    assertEquals("32\u00a0°F", say(0, 0, "celsius"));
    assertEquals("68\u00a0°F", say(20, 20, "celsius"));
    assertEquals("18\u00a0°F", say(10, 10, "celsius-difference"));
    assertEquals("5\u00a0mil", say(127, 127, "micron"));
    assertEquals("1\u00a0US gal", say(0.003785411784, 0.003785411784, "cubic-metre-liquid"));
    assertEquals("16\u00a0US fl oz", say(0.000473176473, 0.000473176473, "cubic-metre-liquid"));
    assertEquals("1\u00a0lb", say(0.45359237, 0.45359237, "kilogram"));
    assertEquals("150\u00a0psi", say(1034213.593975254, 1034213.593975254, "pascal"));
    assertEquals("100\u00a0cfm", say(0.0471947443, 0.0471947443, "cubic-metre-per-second"));
    assertEquals("4\u00a0h", say(14400, 14400, "second"));
    browser.script("window.benchlore.units.set('metric')");
  }

  private static Object say(double low, double high, String unit) {
    return browser.script(SAY, low, high, unit);
  }

  /** A plan's drawn days, their description and its text follow the reader's language alike. */
  @Test
  void drawnDaysAreWrittenTheReadersWay() {
    String page = site.address("plans/day-boat-cabin-panels.html");
    browser.locale("en-GB");
    browser.open(page);
    List<?> british = (List<?>) browser.script(DAYS);
    assertTrue(british.size() > 6, british.toString());
    assertTrue(
        british.stream().allMatch(d -> ((String) d).matches("[A-Z][a-z]{2},? \\d.*")),
        british.toString());
    browser.locale("en-US");
    browser.open(page);
    List<?> american = (List<?>) browser.script(DAYS);
    String clock = browser.text(".step-when time");
    String read = browser.driver().findElement(By.cssSelector(".ladder svg")).getAccessibleName();
    browser.locale("en-GB");
    assertTrue(read.matches("(?s).* from [A-Z][a-z]{2}, [A-Z][a-z]+ \\d.*"), read);
    assertEquals(british.size(), american.size());
    assertTrue(
        american.stream().allMatch(d -> ((String) d).matches("[A-Z][a-z]{2}, [A-Z][a-z]+ \\d.*")),
        american.toString());
    assertTrue(clock.matches("\\d+:\\d\\d.[AP]M"), clock);
  }
}
