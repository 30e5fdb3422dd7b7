package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Plans kept in the browser: nothing is written over unasked, and nothing forgotten is lost. */
class KeptPlansIT {
  private static final String PAGE = "planner/finish.html";
  private static final String SET = "window.benchlore.project.fields.set(arguments[0])";
  private static final String STORED = "return window.localStorage.getItem('benchlore.plans')";
  private static final String NAMES = "return window.benchlore.saved.read().plans.map(p => p.name)";
  private static final String COATS =
      """
      const plan = window.benchlore.saved.find(arguments[0]);
      return window.benchlore.project.fields.readAddress(plan.address).values.coats""";
  private static final String FILE =
      "return window.benchlore.saved.toYaml(window.benchlore.project.current().file)";
  private static final String SMALL =
      """
      return [...document.querySelectorAll('#plan-taken-choice button, #plan-list button')]
        .filter(b => b.offsetParent !== null).map(b => b.getBoundingClientRect())
        .filter(r => r.height < 44 || r.width < 44).length""";

  private static final SiteFolder site = SiteFolder.fromBuild();
  @RegisterExtension static final Browser browser = Browser.watching(site);

  @BeforeEach
  void openThePage() {
    browser.open("about:blank");
    browser.open(site.address(PAGE));
    browser.script("window.localStorage.clear()");
  }

  @AfterEach
  void forgetEverything() {
    browser.script("window.localStorage.clear()");
    browser.width(Browser.WIDE);
  }

  @Test
  void aTakenNameIsAskedAboutAndKeepBothLosesNothing() {
    browser.width(Browser.NARROW);
    keep("Cabinet", 4);
    assertTrue(browser.text("#plan-tell").contains("“Cabinet” is kept"));
    keep("Cabinet", 4);
    assertFalse(asked(), "the very same plan");
    Object before = browser.script(STORED);
    keep("Cabinet", 6);
    assertTrue(asked());
    assertEquals(before, browser.script(STORED));
    assertEquals("status", attribute("#plan-taken", "role"));
    assertTrue(browser.text("#plan-taken").contains("“Cabinet 2”"), browser.text("#plan-taken"));
    assertEquals(0L, browser.script(SMALL));
    assertEquals("plan-both", focused());
    press(Keys.ENTER);
    assertEquals(List.of("Cabinet 2", "Cabinet"), browser.script(NAMES));
    assertEquals(4L, browser.script(COATS, "Cabinet"));
    assertEquals(6L, browser.script(COATS, "Cabinet 2"));
    assertEquals("Cabinet 2", attribute("#f-title", "value"));
    assertFalse(asked());
    assertEquals("plan-keep", focused());
    keep("Cabinet 2", 9);
    assertTrue(browser.text("#plan-taken").contains("“Cabinet 3”"), browser.text("#plan-taken"));
  }

  @Test
  void replaceItReplacesThatOneAloneWithTheKeyboard() {
    keep("Cabinet", 4);
    keep("Chest", 5);
    keep("Cabinet", 7);
    press(Keys.chord(Keys.SHIFT, Keys.TAB));
    assertEquals("plan-replace", focused());
    press(Keys.SPACE);
    assertEquals(List.of("Cabinet", "Chest"), browser.script(NAMES));
    assertEquals(7L, browser.script(COATS, "Cabinet"));
    assertEquals(5L, browser.script(COATS, "Chest"));
  }

  @Test
  void anotherNameAnswersTheQuestionToo() {
    keep("Cabinet", 4);
    keep("Cabinet", 6);
    assertTrue(asked());
    browser.driver().findElement(By.id("f-title")).sendKeys(" of ash");
    assertFalse(asked());
    assertEquals("", browser.text("#plan-taken"));
    click("#plan-keep");
    assertEquals(List.of("Cabinet of ash", "Cabinet"), browser.script(NAMES));
  }

  @Test
  void aForgottenPlanComesBackWhereItStood() {
    keep("Bench", 3);
    keep("Cabinet", 4);
    keep("Chest", 5);
    Object before = browser.script(STORED);
    click("#plan-kept summary");
    click("[aria-label='Forget Cabinet']");
    assertEquals(List.of("Chest", "Bench"), browser.script(NAMES));
    assertTrue(browser.text("#plan-tell").contains("“Cabinet” is forgotten"));
    assertEquals("“Cabinet” is forgotten.", browser.text(".plan-gone span"));
    assertEquals(0L, browser.script(SMALL));
    assertTrue(
        ((String) browser.script("return document.activeElement.className")).contains("undo"));
    press(Keys.ENTER);
    assertEquals(before, browser.script(STORED));
    assertEquals("Cabinet", browser.script("return document.activeElement.textContent"));
    assertTrue(browser.text("#plan-tell").contains("is back"));
  }

  @Test
  void aForgottenPlanWhoseNameWasTakenSinceComesBackBesideIt() {
    keep("Cabinet", 4);
    click("#plan-kept summary");
    click("[aria-label='Forget Cabinet']");
    keep("Cabinet", 6);
    click(".plan-undo");
    assertEquals(List.of("Cabinet 2", "Cabinet"), browser.script(NAMES));
    click("[data-name='Cabinet 2']");
    assertEquals("Cabinet 2", attribute("#f-title", "value"));
    assertEquals("4", attribute("#f-coats", "value"));
  }

  @Test
  void aFileWhoseNameIsTakenAsksTheSame(@TempDir Path folder) throws IOException {
    keep("Cabinet", 4);
    String yaml = (String) browser.script(FILE);
    Path same = Files.writeString(folder.resolve("same.yaml"), yaml);
    Path other =
        Files.writeString(folder.resolve("other.yaml"), yaml.replace("coats: 4", "coats: 6"));
    Object before = browser.script(STORED);
    open(same);
    assertFalse(asked(), "the very same plan");
    open(other);
    assertTrue(asked());
    assertEquals("6", attribute("#f-coats", "value"));
    assertEquals(before, browser.script(STORED));
    click("#plan-both");
    assertEquals(List.of("Cabinet 2", "Cabinet"), browser.script(NAMES));
    assertEquals(6L, browser.script(COATS, "Cabinet 2"));
    assertTrue(((String) browser.script(FILE)).contains("id: cabinet-2"));
  }

  /** Nobody is asked with a brush in the hand: a run goes beside what stands under its name. */
  @Test
  void aRunWritesOverNoOtherPlan() {
    keep("Cabinet", 4);
    browser.script(SET, Map.of("coats", 6));
    click("#plan-run");
    assertEquals(List.of("Cabinet 2", "Cabinet"), browser.script(NAMES));
    assertEquals(4L, browser.script(COATS, "Cabinet"));
    click("#plan-run");
    keep("Chest", 5);
    click("#plan-run");
    assertEquals(List.of("Chest", "Cabinet 2", "Cabinet"), browser.script(NAMES));
    click(".run-done");
    click("#plan-run");
    browser.script(SET, Map.of("coats", 3));
    click("#plan-run");
    assertEquals(
        List.of("Chest 2", "Chest", "Cabinet 2", "Cabinet"), browser.script(NAMES), "has ticks");
  }

  private static void keep(String title, int coats) {
    browser.script(SET, Map.of("title", title, "coats", coats));
    click("#plan-keep");
  }

  private static void open(Path file) {
    browser.script("window.benchlore.project.say('')");
    browser.driver().findElement(By.id("plan-file")).sendKeys(file.toString());
    new WebDriverWait(browser.driver(), Duration.ofSeconds(5))
        .until(d -> browser.text("#plan-tell").contains("is open"));
  }

  private static boolean asked() {
    return browser.driver().findElement(By.id("plan-taken-choice")).isDisplayed();
  }

  private static String attribute(String selector, String name) {
    return browser.driver().findElement(By.cssSelector(selector)).getAttribute(name);
  }

  private static Object focused() {
    return browser.script("return document.activeElement.id");
  }

  private static void press(CharSequence keys) {
    browser.driver().switchTo().activeElement().sendKeys(keys);
  }

  private static void click(String selector) {
    WebElement element = browser.driver().findElement(By.cssSelector(selector));
    browser.script("arguments[0].scrollIntoView({block: 'center'})", element);
    element.click();
  }
}
