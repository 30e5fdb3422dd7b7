package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.Select;

/** Records side by side, chosen by the address or by hand. */
class CompareIT {
  private static final String BITS = "compare/router-bits.html";
  private static final String WRITTEN_ADDRESSES =
      """
      const page = new DOMParser();
      return window.benchloreCompare.flatMap(record => [record.url, record.picture].concat(
        record.rows.map(row => row[1]).concat(Object.values(record.tell)).flatMap(html =>
          [...page.parseFromString(html, 'text/html').querySelectorAll('[href], [src]')]
            .map(e => e.getAttribute('href') || e.getAttribute('src')))))
        .filter(Boolean).map(address => new URL(address, location.href).href);
      """;

  private static final SiteFolder site = SiteFolder.fromBuild();
  @RegisterExtension static final Browser browser = Browser.watching(site);

  @BeforeEach
  void leaveThePage() {
    browser.open("about:blank");
  }

  @Test
  void theAddressSaysWhatStandsSideBySide() {
    browser.open(site.address(BITS + "#of=chamfer-bit,round-over-bit"));
    assertEquals(List.of("Chamfer bit", "Round-over bit"), heads());
    assertFalse(browser.driver().findElements(By.cssSelector("tr.differs")).isEmpty());
  }

  @Test
  void choosingOneMoreAddsAColumnAndKeepsTheAddressInStep() {
    browser.open(site.address(BITS + "#of=chamfer-bit,round-over-bit"));
    new Select(browser.driver().findElements(By.cssSelector("#compare select")).get(2))
        .selectByValue("cove-bit");
    assertEquals(List.of("Chamfer bit", "Round-over bit", "Cove bit"), heads());
    String address = browser.driver().getCurrentUrl();
    assertEquals(site.address(BITS + "#of=chamfer-bit,round-over-bit,cove-bit"), address);
  }

  @Test
  void unknownRecordsAndMarkupInTheAddressAreLeftOut() {
    browser.open(site.address(BITS + "#of=nothing,%3Cb%3E,cove-bit,cove-bit"));
    assertEquals(List.of("Cove bit"), heads());
  }

  @Test
  void twoOfEachShelfFitASmallPhoneAndEveryAddressInTheirDataExists() {
    List<String> files = site.files();
    browser.width(Browser.NARROW);
    for (String page : site.comparePages()) {
      String shelf = page.substring("compare/".length(), page.length() - ".html".length());
      List<String> ids =
          site.records(shelf).stream()
              .limit(2)
              .map(record -> record.substring(shelf.length() + 1, record.length() - 5))
              .toList();
      browser.open(site.address(page + "#of=" + String.join(",", ids)));
      assertEquals(ids.size(), heads().size(), page);
      Object spare =
          browser.script(
              "const page = document.documentElement; return page.clientWidth - page.scrollWidth");
      assertEquals(0L, spare, page + " is too wide");
      for (Object address : (List<?>) browser.script(WRITTEN_ADDRESSES)) {
        String file = address.toString().replace(site.prefix(), "").replaceAll("#.*", "");
        assertTrue(files.contains(file), page + ": " + address);
      }
    }
    browser.width(Browser.WIDE);
  }

  @Test
  void drawnToolsStandAtOneScale() {
    browser.open(site.address("compare/tools.html#of=smoothing-plane,jointer-plane"));
    assertEquals(
        "Drawn at one scale", browser.driver().findElement(By.className("scale-note")).getText());
    List<Integer> widths =
        browser.driver().findElements(By.cssSelector("#compare-table thead img")).stream()
            .map(picture -> picture.getSize().getWidth())
            .toList();
    List<?> sides =
        (List<?>)
            browser.script(
                """
                return ['smoothing-plane', 'jointer-plane'].map(id =>
                  window.benchloreCompare.find(record => record.id === id).side);
                """);
    double real = ((Number) sides.get(0)).doubleValue() / ((Number) sides.get(1)).doubleValue();
    assertEquals(real, (double) widths.get(0) / widths.get(1), 0.02);
    assertTrue(real < 0.6, "a smoother is less than six tenths of a jointer: " + real);
  }

  private static List<String> heads() {
    return browser.driver().findElements(By.cssSelector("#compare-table thead th a")).stream()
        .map(link -> link.getText())
        .toList();
  }
}
