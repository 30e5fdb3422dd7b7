package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The planner pages as their reader uses them, in a real browser, without a network. */
class PlannerIT {
  private static final List<String> PAGES =
      List.of("finish", "glue-up", "sanding", "air", "fit", "cutting", "sheen");
  private static final String SPARE =
      "const page = document.documentElement; return page.clientWidth - page.scrollWidth";
  private static final String WORKED =
      """
      const page = document.getElementById('answer');
      return page.querySelectorAll('.glance .q').length > 0 && page.querySelectorAll('svg').length > 0
        && window.benchlore.last.answer.given === true""";

  private static final String SHOWN_FIELDS =
      """
      return [...document.getElementById('planner').elements]
        .filter(e => e.name && e.offsetParent !== null).map(e => e.id)""";

  private static final SiteFolder site = SiteFolder.fromBuild();
  @RegisterExtension static final Browser browser = Browser.watching(site);

  @BeforeEach
  void leaveThePage() {
    browser.open("about:blank");
  }

  @Test
  void everyPlannerAnswersAtOnceAndFitsASmallPhone() {
    for (String page : PAGES) {
      open(page, "");
      assertEquals(true, browser.script(WORKED), page);
      assertFalse(browser.driver().findElement(By.id("strange")).isDisplayed(), page);
      assertFalse(
          browser.driver().findElements(By.cssSelector("#answer .step-cautions")).isEmpty(), page);
      browser.width(Browser.NARROW);
      assertEquals(0L, browser.script(SPARE), page + " is too wide");
      browser.width(Browser.WIDE);
    }
  }

  @Test
  void everyFigureOfAnAnswerHasItsWorking() {
    for (String page : PAGES) {
      open(page, "");
      List<WebElement> folds =
          browser.driver().findElements(By.cssSelector("#answer .working code"));
      assertFalse(folds.isEmpty(), page);
    }
  }

  @Test
  void whatIsChangedStandsInTheAddressAndComesBackFromIt() {
    open("glue-up", "");
    new Select(browser.driver().findElement(By.id("f-adhesive"))).selectByValue("epoxy-structural");
    WebElement length = browser.driver().findElement(By.id("f-length"));
    length.clear();
    length.sendKeys("1200", Keys.TAB);
    String address = browser.driver().getCurrentUrl();
    assertTrue(address.contains("adhesive=epoxy-structural"), address);
    assertTrue(address.contains("length=1200"), address);
    assertTrue(address.contains("start="), address);
    String answer = browser.text("#answer .glance");
    browser.open("about:blank");
    browser.open(address);
    assertEquals(answer, browser.text("#answer .glance"));
    assertEquals("1200", value("f-length"));
  }

  @Test
  void whatAChosenRecordSaysIsWhereTheFormStarts() {
    open("cutting", "");
    new Select(browser.driver().findElement(By.id("f-record"))).selectByValue("ball-nose-bit");
    waitFor(
        "return document.getElementById('f-diameter').value === String(1000 * benchlore.data.bit('ball-nose-bit').bit.diameterMetre)");
    open("sanding", "");
    new Select(browser.driver().findElement(By.id("f-finish"))).selectByValue("hardwax-oil");
    waitFor(
        "return document.getElementById('f-coats').value === String(benchlore.view.usualCoats(benchlore.data.finish('hardwax-oil').finish))");
    browser.open("about:blank");
    open("sanding", "#finish=hardwax-oil&coats=7");
    assertEquals("7", value("f-coats"));
  }

  /** Lacquer melts into itself: nobody sands between its coats. */
  @Test
  void aFinishThatMeltsInIsNotSandedBetweenCoats() {
    open("sanding", "");
    assertTrue(browser.text("#answer").contains("Between coats"));
    browser.open("about:blank");
    open("sanding", "#finish=nitrocellulose-lacquer");
    assertFalse(browser.text("#answer").contains("Between coats"));
  }

  /** What a cut takes besides stands folded below it, the answer in each heading. */
  @Test
  void aCutTellsOfReachTabsAndFlattening() {
    open("cutting", "");
    assertTrue(browser.text("#answer").contains("Does it reach? Yes"));
    assertTrue(browser.text("#answer").contains("Tabs to hold the part:"));
    assertTrue(browser.text("#answer").contains("Flatten a face:"));
    browser.open("about:blank");
    open("cutting", "#machine=HAND_ROUTER&long=10&part-long=20");
    assertTrue(browser.text("#answer").contains("Does it reach? No."));
    assertFalse(browser.text("#answer").contains("Tabs to hold the part:"));
  }

  @Test
  void theAirIsReckonedForSandingDustAndForOverspray() {
    open("air", "");
    assertFalse(browser.text("#answer").contains("Overspray of one coat"));
    browser.open("about:blank");
    open("air", "#airs=DUST&removed=0.5");
    assertTrue(browser.text("#answer").contains("Over eight hours"));
    assertFalse(browser.driver().findElement(By.id("f-finish")).isDisplayed());
    browser.open("about:blank");
    open("air", "#finish=waterborne-polyurethane&method=SPRAY");
    assertTrue(browser.text("#answer").contains("Overspray of one coat"));
    assertTrue(browser.text("#answer").contains("Past the part"));
  }

  private static void waitFor(String script) {
    new WebDriverWait(browser.driver(), java.time.Duration.ofSeconds(5))
        .until(d -> Boolean.TRUE.equals(browser.script(script)));
  }

  @Test
  void aBrokenOrHostileAddressGivesAPlainMessageAndTheDefaults() {
    for (String page : PAGES) {
      open(page, "");
      String usual = browser.text("#answer .glance");
      browser.open("about:blank");
      open(
          page,
          "#species=%3Cscript%3Ealert(1)%3C/script%3E&length=-5&nothing=1&%E0%A4%A=x&start=tomorrow"
              + "&__proto__=1&constructor=2&thickness=1e999");
      assertTrue(browser.driver().findElement(By.id("strange")).isDisplayed(), page);
      assertEquals(usual, browser.text("#answer .glance"), page);
      assertEquals(true, browser.script("return document.querySelector('main script') === null"));
      browser.open("about:blank");
      open(page, "#x=" + "a".repeat(20_000));
      assertTrue(browser.text("#strange").contains("too long"), page);
      assertEquals(usual, browser.text("#answer .glance"), page);
    }
  }

  @Test
  void aFieldThatMakesNoSenseSaysSoAndTheLastAnswerStays() {
    open("fit", "");
    String before = browser.text("#answer .glance");
    WebElement width = browser.driver().findElement(By.id("f-width"));
    width.clear();
    width.sendKeys("wide", Keys.TAB);
    assertTrue(browser.text("#f-width-wrong").contains("Width across the grain"));
    assertEquals("true", width.getAttribute("aria-invalid"));
    assertEquals(before, browser.text("#answer .glance"));
  }

  @Test
  void inchesAndFractionsAreUnderstoodAndTheSwitchTurnsFormAndAnswer() {
    open("fit", "");
    WebElement width = browser.driver().findElement(By.id("f-width"));
    width.clear();
    width.sendKeys("11 3/4 in", Keys.TAB);
    assertTrue(browser.driver().getCurrentUrl().contains("width=298.45"));
    browser.driver().findElement(By.id("units")).click();
    assertEquals("11 3/4", value("f-width"));
    assertEquals("in", browser.text("[data-unit-of=width]"));
    assertEquals("66.2", value("f-celsius"));
    assertTrue(browser.text("#answer .glance").contains("in"));
    width.clear();
    width.sendKeys("12", Keys.TAB);
    assertTrue(browser.driver().getCurrentUrl().contains("width=304.8"));
    browser.driver().findElement(By.id("units")).click();
    assertEquals("304.8", value("f-width"));
    browser.script("window.localStorage.clear()");
  }

  @Test
  void theResultIsAnnouncedOncePolitely() {
    open("cutting", "");
    WebElement said = browser.driver().findElement(By.id("said"));
    assertEquals("status", said.getAttribute("role"));
    new WebDriverWait(browser.driver(), java.time.Duration.ofSeconds(5))
        .until(d -> !said.getAttribute("textContent").isEmpty());
    assertTrue(said.getAttribute("textContent").contains("rpm"));
  }

  /** From the top of the page to an answer and its working with the keyboard alone. */
  @Test
  void everythingIsDoneWithTheKeyboardAlone() {
    open("sanding", "");
    int steps = 0;
    while (!"f-species".equals(focused("id")) && steps++ < 60) {
      browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
    }
    assertEquals("f-species", focused("id"));
    browser.driver().switchTo().activeElement().sendKeys("White ash");
    assertTrue(browser.driver().getCurrentUrl().contains("species=white-ash"));
    while (!"f-area".equals(focused("id")) && steps++ < 80) {
      browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
    }
    browser
        .driver()
        .switchTo()
        .activeElement()
        .sendKeys(Keys.chord(Keys.CONTROL, "a"), "2.5", Keys.TAB);
    assertTrue(browser.driver().getCurrentUrl().contains("area=2.5"));
    while (!"SUMMARY".equals(focused("tagName")) && steps++ < 160) {
      browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
    }
    browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
    assertEquals(true, browser.script("return document.activeElement.parentNode.open"));
  }

  /** Every field that is shown is reached with Tab, and the last one lets go again. */
  @Test
  void everyFieldOfEveryPlannerIsReachedWithTheKeyboard() {
    for (String page : PAGES) {
      open(page, "");
      Set<Object> shown = new HashSet<>((List<?>) browser.script(SHOWN_FIELDS));
      Set<Object> reached = new HashSet<>();
      for (int i = 0; i < 300 && !reached.containsAll(shown); i++) {
        browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
        reached.add(focused("id"));
      }
      shown.removeAll(reached);
      assertEquals(Set.of(), shown, page);
      Object last = focused("id");
      browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
      assertFalse(last.equals(focused("id")), page + ": " + last + " holds the keyboard");
    }
  }

  private static Object focused(String property) {
    return browser.script("return document.activeElement[arguments[0]]", property);
  }

  private static String value(String id) {
    return browser.driver().findElement(By.id(id)).getAttribute("value");
  }

  private static void open(String page, String rest) {
    browser.open(site.address("planner/" + page + ".html" + rest));
  }
}
