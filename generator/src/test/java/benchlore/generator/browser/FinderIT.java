package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The finder on the front page, used as a reader uses it: by typing, by keys and by links. */
class FinderIT {
  private static final String NOTHING = "Nothing here fits.";
  private static final Set<String> ON_A_BEARING =
      Set.of("flush-trim-bit", "pattern-bit", "round-over-bit");

  private static final SiteFolder site = SiteFolder.fromBuild();
  @RegisterExtension static final Browser browser = Browser.watching(site);

  @BeforeEach
  void openFrontPage() {
    // The same page with another hash would not load anew.
    browser.open("about:blank");
    browser.open(site.address("index.html"));
  }

  @Test
  void aLayDescriptionFindsBitsOnABearing() {
    type("wheel on the end");
    waitForHits();
    Set<String> ids = new TreeSet<>(hitIds());
    ids.retainAll(ON_A_BEARING);
    assertFalse(ids.isEmpty(), "only " + hitIds());
    assertTrue(browser.text("#finder-status").contains("answer"));
  }

  @Test
  void aMisspeltNameComesFirst() {
    type("chamfur bit");
    waitForHits();
    assertEquals("chamfer-bit", hitIds().get(0));
  }

  @Test
  void nonsenseSaysSoAndShowsNothing() {
    type("quarterly tax return");
    waitUntil(() -> browser.text("#finder-status").startsWith(NOTHING));
    assertEquals(List.of(), hitIds());
  }

  @Test
  void clearingTheWordsClearsTheAnswers() {
    type("chamfer bit");
    waitForHits();
    words().sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
    waitUntil(() -> hitIds().isEmpty());
    assertEquals("", browser.text("#finder-status"));
  }

  @Test
  void enterOpensTheFirstAnswer() {
    type("chamfer bit");
    waitForHits();
    words().sendKeys(Keys.ENTER);
    waitUntil(() -> address().equals(site.address("router-bits/chamfer-bit.html")));
    assertEquals("Chamfer bit", browser.text("h1"));
  }

  @Test
  void aLinkWithWordsAndKindShowsTheirAnswers() {
    browser.open(site.address("index.html#find=" + encoded("round over") + "&kind=router-bits"));
    waitForHits();
    assertEquals("round over", words().getAttribute("value"));
    assertTrue(hitIds().contains("round-over-bit"), "only " + hitIds());
    assertTrue(
        hitAddresses().stream().allMatch(a -> a.startsWith(site.address("router-bits/"))),
        hitAddresses().toString());
  }

  @Test
  void theAddressKeepsTheWordsSoThatBackBringsThemBack() {
    type("chamfer bit");
    waitForHits();
    assertTrue(address().contains("#find=chamfer"), address());
    words().sendKeys(Keys.ENTER);
    waitUntil(() -> address().endsWith("chamfer-bit.html"));
    browser.driver().navigate().back();
    waitForHits();
    assertEquals("chamfer-bit", hitIds().get(0));
  }

  @Test
  void theKindNarrowsTheAnswers() {
    type("sanding");
    waitForHits();
    new Select(browser.driver().findElement(By.id("finder-kind"))).selectByValue("abrasives");
    waitUntil(
        () ->
            !hitIds().isEmpty()
                && hitAddresses().stream().allMatch(a -> a.startsWith(site.address("abrasives/"))));
  }

  @Test
  void arrowKeysWalkTheAnswersAndComeBack() {
    type("bit with a bearing");
    waitForHits();
    List<String> addresses = hitAddresses();
    assertTrue(addresses.size() > 1, addresses.toString());
    focused().sendKeys(Keys.ARROW_DOWN);
    assertEquals(addresses.get(0), focused().getAttribute("href"));
    focused().sendKeys(Keys.ARROW_DOWN);
    assertEquals(addresses.get(1), focused().getAttribute("href"));
    focused().sendKeys(Keys.ARROW_UP, Keys.ARROW_UP);
    assertEquals("finder-words", focused().getAttribute("id"));
  }

  @Test
  void answersFitASmallPhone() {
    browser.width(Browser.NARROW);
    type("bit with a bearing");
    waitForHits();
    Object spare =
        browser.script(
            "const page = document.documentElement; return page.clientWidth - page.scrollWidth");
    browser.width(Browser.WIDE);
    assertEquals(0L, spare);
  }

  @Test
  void theFindFunctionGivesRankedAnswersThatExist() {
    List<?> answers = find("chamfer bit");
    assertFalse(answers.isEmpty());
    double last = Double.MAX_VALUE;
    for (Object answer : answers) {
      Map<?, ?> fields = (Map<?, ?>) answer;
      assertTrue(
          fields.keySet().containsAll(Set.of("id", "kind", "title", "names", "url", "score")));
      assertTrue(((List<?>) fields.get("names")).contains(fields.get("title")), answer.toString());
      assertTrue(site.files().contains(fields.get("url")), answer.toString());
      double score = ((Number) fields.get("score")).doubleValue();
      assertTrue(score <= last, "not best first: " + answer);
      last = score;
    }
    assertEquals("chamfer-bit", ((Map<?, ?>) answers.get(0)).get("id"));
    assertEquals(List.of(), find("quarterly tax return"));
  }

  @Test
  void oddInputFindsNothingAndBreaksNothing() {
    for (String odd : List.of("", "   ", "<b>", "\\", "the of and", "💥", "x".repeat(5000))) {
      find(odd);
    }
    assertEquals(List.of(), find(""));
    assertEquals(List.of(), browser.script("return window.benchlore.find(null)"));
  }

  private static List<?> find(String words) {
    return (List<?>)
        browser
            .driver()
            .executeAsyncScript(
                "Promise.resolve(window.benchlore.find(arguments[0])).then(arguments[1])", words);
  }

  private static WebElement words() {
    return browser.driver().findElement(By.id("finder-words"));
  }

  private static WebElement focused() {
    return browser.driver().switchTo().activeElement();
  }

  private static void type(String text) {
    words().sendKeys(text);
  }

  private static String address() {
    return browser.driver().getCurrentUrl();
  }

  private static List<String> hitAddresses() {
    List<?> found =
        (List<?>)
            browser.script(
                "return [...document.querySelectorAll('#finder-answers > li > a')].map(a => a.href)");
    return found.stream().map(String.class::cast).toList();
  }

  private static List<String> hitIds() {
    return hitAddresses().stream().map(a -> a.replaceAll(".*/|\\.html$", "")).toList();
  }

  private static void waitForHits() {
    waitUntil(() -> !hitIds().isEmpty());
  }

  private static void waitUntil(java.util.function.BooleanSupplier condition) {
    new WebDriverWait(browser.driver(), Duration.ofSeconds(10), Duration.ofMillis(20))
        .until(driver -> condition.getAsBoolean());
  }

  private static String encoded(String words) {
    return URLEncoder.encode(words, StandardCharsets.UTF_8);
  }
}
