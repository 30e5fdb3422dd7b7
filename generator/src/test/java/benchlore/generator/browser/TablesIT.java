package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** The tables as a reader without scripts meets them, on a phone and on a desk. */
class TablesIT {
  private static final long MOST_BYTES = 400_000;

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
  void noTableIsHeavy() throws IOException {
    List<String> heavy = new ArrayList<>();
    for (String page : site.tablePages()) {
      if (Files.size(site.root().resolve(page)) > MOST_BYTES) {
        heavy.add(page);
      }
    }
    assertEquals(List.of(), heavy);
  }

  @Test
  void theListLeadsToEveryTable() {
    browser.open(site.address("tables/index.html"));
    List<String> links =
        browser.driver().findElements(By.cssSelector("main a")).stream()
            .map(link -> link.getAttribute("href"))
            .toList();
    for (String page : site.records("tables")) {
      assertTrue(links.contains(site.address(page)), page);
    }
  }

  @Test
  void aRecordLeadsToItsOpenPlaceInEachTable() {
    browser.width(Browser.NARROW);
    for (String record :
        List.of(
            "species/teak.html",
            "adhesives/yellow-pva.html",
            "finishes/spar-varnish.html",
            "router-bits/pattern-bit.html")) {
      browser.open(site.address(record));
      List<String> links =
          browser.driver().findElements(By.cssSelector(".goes-with a")).stream()
              .map(link -> link.getAttribute("href"))
              .toList();
      assertFalse(links.isEmpty(), record);
      for (String link : links) {
        browser.open(link);
        WebElement place =
            browser.driver().findElement(By.id(link.substring(link.indexOf('#') + 1)));
        assertTrue(place.isDisplayed(), link + " stays shut");
        assertTrue(place.findElement(By.cssSelector(".match-group p")).isDisplayed(), link);
      }
    }
  }

  @Test
  void headsOfTheWholeTableStayInSight() {
    browser.width(Browser.WIDE);
    browser.open(site.address("tables/adhesive-by-species-whole.html"));
    WebElement table = browser.driver().findElement(By.cssSelector(".whole"));
    int top = table.findElement(By.cssSelector("thead th:nth-child(2)")).getLocation().getY();
    browser.script("arguments[0].scrollTop = 600; arguments[0].scrollLeft = 300;", table);
    WebElement head = table.findElement(By.cssSelector("thead th:nth-child(2)"));
    assertTrue(Math.abs(head.getLocation().getY() - top) < 3, "head " + head.getLocation());
    WebElement name = table.findElement(By.cssSelector("tbody tr:nth-child(30) th"));
    int left = table.getLocation().getX();
    assertTrue(Math.abs(name.getLocation().getX() - left) < 3, "name " + name.getLocation());
  }

  @Test
  void aVerdictIsNeverColourAlone() {
    browser.open(site.address("tables/bit-by-job-whole.html"));
    List<WebElement> cells =
        browser.driver().findElements(By.cssSelector(".whole tr:nth-child(3) td"));
    assertFalse(cells.isEmpty());
    for (WebElement cell : cells) {
      assertTrue(cell.getText().matches("(✓ best|! works|\\? unknown|✕ no)"), cell.getText());
    }
  }
}
