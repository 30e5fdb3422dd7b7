package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** The units switch: the page's own words by metric, the same figures by inches, remembered. */
class UnitsIT {
  private static final String SHOWN =
      "return [...document.querySelectorAll('[data-imperial]')].map(e => e.textContent)";
  private static final String CARRIED =
      "return [...document.querySelectorAll('[data-imperial]')].map(e => e.dataset.imperial)";
  private static final String SET = "window.benchlore.units.set(arguments[0])";

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

  @Test
  void everyFigureIsSwappedForWhatItCarriesAndBack() {
    int figures = 0;
    for (String page : site.files()) {
      if (page.endsWith(".html") && page.contains("/") && Math.floorMod(page.hashCode(), 8) == 0) {
        browser.open(site.address(page));
        Object metric = browser.script(SHOWN);
        browser.script(SET, "imperial");
        assertEquals(browser.script(CARRIED), browser.script(SHOWN), page);
        browser.script(SET, "metric");
        assertEquals(metric, browser.script(SHOWN), page);
        figures += ((List<?>) metric).size();
      }
    }
    assertTrue(figures > 100, "only " + figures + " figures were swapped");
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

  /** An inch is 25.4 mm: 18 mm are 45/64 in, 880 mm 34 5/8 in, to a rule's nearest mark. */
  @Test
  void aPlannersFieldsAndFiguresFollowTheSwitch() {
    browser.open(site.address("planner/glue-up.html"));
    assertEquals("880 mm", browser.text(".plan-drawing > text"));
    assertEquals("18 mm", field("thickness"));
    browser.script(SET, "imperial");
    assertEquals("34 5/8 in", browser.text(".plan-drawing > text"));
    assertEquals("45/64 in", field("thickness"));
    assertTrue(browser.text("#answer").contains(" US fl oz"), browser.text("#answer"));
    browser.open(site.address("planner/cutting.html"));
    assertTrue(browser.text(".glance").matches("(?s).*\\d in/min.*\\d ft/min.*"));
    browser.script(SET, "metric");
    assertTrue(browser.text(".glance").matches("(?s).*\\d mm/min.*\\d m/s.*"));
  }

  private static String field(String name) {
    return browser.script("return document.getElementById('f-' + arguments[0]).value", name)
        + " "
        + browser.text("[data-unit-of=" + name + "]");
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
