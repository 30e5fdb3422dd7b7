package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Faults narrowed down by when and where they showed, by words, by keys and by the address. */
class FaultsIT {
  private static final String PAGE = "faults.html";

  private static final SiteFolder site = SiteFolder.fromBuild();
  @RegisterExtension static final Browser browser = Browser.watching(site);

  @BeforeEach
  void openThePage() {
    browser.open("about:blank");
    browser.open(site.address(PAGE));
  }

  @Test
  void whenAndWhereNarrowDownAndWordsPutTheRightFaultFirst() {
    int all = shown().size();
    toggle("when", "while-coating").click();
    toggle("where", "film").click();
    List<String> some = shown();
    assertTrue(some.size() > 1 && some.size() < all, some.toString());
    assertTrue(browser.driver().findElement(By.id("faults-causes")).isDisplayed());
    words("holes open in the wet coat");
    assertEquals("fisheyes", shown().get(0));
    words("skin of an orange");
    assertEquals("orange-peel", shown().get(0));
    String causes = status().replaceAll("\\D+", " ").strip();
    assertTrue(status().startsWith(shown().size() + " fault"), status());
    assertFalse(causes.endsWith(" 0"), status());
  }

  @Test
  void aPlaceWhereOneFaultShowsLeavesItAloneWithItsCausesToOpen() {
    toggle("when", "while-glueing").click();
    toggle("where", "edge").click();
    assertEquals(List.of("clamp-dents"), shown());
    WebElement cause = browser.driver().findElement(By.cssSelector("#clamp-dents details"));
    cause.findElement(By.tagName("summary")).click();
    assertTrue(cause.findElement(By.tagName("dl")).isDisplayed());
  }

  @Test
  void likeliestCausesOfAllTheFaultsComeFirst() {
    browser.open(site.address(PAGE + "#when=while-glueing"));
    List<String> firsts =
        browser
            .driver()
            .findElements(
                By.cssSelector("#faults-all article:not([hidden]) li:first-child summary"))
            .stream()
            .map(WebElement::getText)
            .toList();
    List<String> listed =
        browser.driver().findElements(By.cssSelector("#faults-causes-list summary")).stream()
            .map(s -> s.getText().lines().findFirst().orElse(""))
            .toList();
    assertEquals(firsts, listed.subList(0, firsts.size()));
  }

  @Test
  void theAddressKeepsAndGivesBackWhatWasChosen() {
    toggle("when", "while-machining").click();
    toggle("see", "torn").click();
    words("corner");
    String address = browser.driver().getCurrentUrl();
    assertEquals(site.address(PAGE + "#when=while-machining&see=torn&words=corner"), address);
    List<String> before = shown();
    browser.open("about:blank");
    browser.open(address);
    assertEquals(before, shown());
    assertEquals("true", toggle("when", "while-machining").getAttribute("aria-pressed"));
    assertEquals("corner", input().getDomProperty("value"));
  }

  @Test
  void aStrangeAddressSaysSoAndShowsEverything() {
    int all = shown().size();
    for (String hash :
        List.of(
            "#when=%3Cimg%20src=x%20onerror=alert(1)%3E&where=__proto__",
            "#%E0%A4%A", "#nothing-here", "#see=constructor&x=1")) {
      browser.open("about:blank");
      browser.open(site.address(PAGE + hash));
      assertEquals(all, shown().size(), hash);
      assertTrue(browser.text("#faults-note").contains("left out"), hash);
    }
    browser.open(site.address(PAGE + "#when=while-sanding"));
    assertEquals("", browser.text("#faults-note"));
  }

  @Test
  void keysAloneAreEnough() {
    WebElement first = toggle("when", "in-the-board");
    browser.script("arguments[0].focus()", first);
    press(Keys.SPACE);
    assertEquals("true", first.getAttribute("aria-pressed"));
    while (!active().equals(toggle("see", "bent"))) {
      press(Keys.TAB);
      assertFalse(active().getTagName().equals("body"), "ran out of page");
    }
    press(Keys.ENTER);
    assertTrue(shown().containsAll(List.of("bow", "twist", "crook", "cupping")), status());
    while (!active().getTagName().equals("summary")) {
      press(Keys.TAB);
    }
    press(Keys.ENTER);
    assertFalse(browser.driver().findElements(By.cssSelector("details[open]")).isEmpty());
  }

  @Test
  void startAgainTakesEverythingBack() {
    int all = shown().size();
    toggle("where", "film").click();
    words("sticky");
    browser.driver().findElement(By.id("faults-clear")).click();
    assertEquals(all, shown().size());
    assertEquals(input(), active());
  }

  private static WebElement toggle(String row, String word) {
    return browser
        .driver()
        .findElement(By.cssSelector("[data-row='" + row + "'] [data-word='" + word + "']"));
  }

  private static WebElement input() {
    return browser.driver().findElement(By.id("faults-text"));
  }

  private static void words(String words) {
    input().clear();
    input().sendKeys(words);
  }

  private static WebElement active() {
    return browser.driver().switchTo().activeElement();
  }

  private static void press(Keys key) {
    active().sendKeys(key);
  }

  private static String status() {
    return browser.text("#faults-status");
  }

  private static List<String> shown() {
    return browser
        .driver()
        .findElements(By.cssSelector("#faults-all article:not([hidden])"))
        .stream()
        .map(article -> article.getAttribute("id"))
        .toList();
  }
}
