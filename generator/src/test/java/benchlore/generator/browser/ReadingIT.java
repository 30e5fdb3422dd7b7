package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** What a reader sees on lists, records and plans, with scripts switched off in the browser. */
class ReadingIT {
  private static SiteFolder site;
  private static Browser browser;

  @BeforeAll
  static void startBrowserWithoutScripts() {
    site = SiteFolder.fromBuild();
    browser = Browser.start();
    browser.scriptsOff();
  }

  @AfterAll
  static void closeBrowser() {
    browser.close();
  }

  @Test
  void theFrontPageSaysThatTheFinderNeedsScriptsAndHidesIt() {
    browser.open(site.address("index.html"));
    assertEquals("The finder needs scripts. Every list below works without.", noscript());
    assertFalse(browser.driver().findElement(By.id("finder")).isDisplayed());
  }

  @Test
  void everyListLeadsToEveryRecordOfItsShelf() {
    for (String shelf : site.shelves()) {
      browser.open(site.address(shelf + "/index.html"));
      List<String> links = addresses("main .cards a");
      for (String record : site.records(shelf)) {
        assertTrue(links.contains(site.address(record)), shelf + " misses " + record);
      }
      assertTrue(shown("h1") && shown("main .cards a"), shelf);
    }
  }

  @Test
  void aRecordOfEachShelfReadsWithoutScripts() {
    for (String page : site.oneOfEachSort()) {
      if (site.shelves().contains(page.replaceAll("/.*", "")) && !page.endsWith("index.html")) {
        browser.open(site.address(page));
        assertTrue(shown("h1") && shown(".lead") && shown("#looks") && shown("#use"), page);
        assertTrue(browser.text("main").length() > 400, page);
      }
    }
  }

  @Test
  void aBitIsDrawnLargeEnoughToSeeAndNamedForThoseWhoCannot() {
    browser.open(site.address("router-bits/chamfer-bit.html"));
    List<WebElement> drawings = browser.driver().findElements(By.cssSelector("figure svg"));
    assertFalse(drawings.isEmpty());
    for (WebElement drawing : drawings) {
      assertTrue(drawing.getSize().height > 80 && drawing.getSize().width > 80);
      assertEquals("img", drawing.getAttribute("role"));
    }
  }

  @Test
  void everyBitIsDrawn() {
    for (String bit : site.records("router-bits")) {
      assertTrue(site.read(bit).contains("<figure class=\"drawing\">"), bit);
    }
  }

  @Test
  void everyPlanIsListedAndReadsInOrder() {
    browser.open(site.address("plans/index.html"));
    List<String> listed = addresses("main .cards a");
    assertFalse(listed.isEmpty());
    assertEquals(
        site.records("plans").stream().map(site::address).toList(),
        listed.stream().sorted().toList());
    for (String plan : listed) {
      browser.open(plan);
      assertTrue(shown("h1") && shown(".glance"), plan);
      assertTrue(shown("figure.ladder svg") && shown(".shopping li"), plan);
      List<String> numbers =
          browser.driver().findElements(By.cssSelector(".step-number")).stream()
              .map(WebElement::getText)
              .filter(number -> !number.isBlank())
              .toList();
      assertTrue(numbers.size() > 3, plan + numbers);
      assertEquals(numbers.stream().sorted(ReadingIT::byNumber).toList(), numbers, plan);
      assertTrue(shown(".step-cautions li"), plan + " has no caution at a step");
    }
  }

  @Test
  void theWorkingOfAFigureOpensWithoutScripts() {
    browser.open(site.address(site.records("plans").get(0)));
    WebElement details = browser.driver().findElement(By.cssSelector("details"));
    assertFalse(details.findElement(By.cssSelector(".working")).isDisplayed());
    details.findElement(By.tagName("summary")).click();
    assertTrue(details.findElement(By.cssSelector(".working")).isDisplayed());
  }

  @Test
  void scriptsReallyAreOff() {
    browser.open(site.address("index.html"));
    assertEquals("undefined", browser.script("return typeof window.benchlore"));
  }

  private static int byNumber(String a, String b) {
    return Integer.compare(
        Integer.parseInt(a.replaceAll("\\D", "")), Integer.parseInt(b.replaceAll("\\D", "")));
  }

  private static boolean shown(String selector) {
    List<WebElement> found = browser.driver().findElements(By.cssSelector(selector));
    return !found.isEmpty() && found.get(0).isDisplayed();
  }

  private static String noscript() {
    return browser.text("noscript .note");
  }

  private static List<String> addresses(String selector) {
    Object links =
        browser.script(
            "return [...document.querySelectorAll(arguments[0])].map(a => a.href)", selector);
    return ((List<?>) links).stream().map(String.class::cast).toList();
  }
}
