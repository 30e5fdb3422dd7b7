package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A plan that is run: ticks, replanning, the countdown; and the card for the wall. */
class RunIT {
  private static final String PAGE = "planner/finish.html";
  private static final String STEP =
      """
      const plan = window.benchlore.last.answer.value;
      const step = plan.steps.find(s => s.id === arguments[0]);
      return step.slots[0].start""";
  private static final String DONE =
      "return window.benchlore.last.request.progress.done.map(d => d.step)";
  private static final Pattern PDF_PAGE = Pattern.compile("/Type\\s*/Page\\b(?!s)");

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
  }

  @Test
  void theNextThingAndItsCountdownStandOnOneScreenAndTicksAreKept() {
    browser.width(Browser.NARROW);
    click("#plan-run");
    waitFor(".run-title");
    String first = browser.text(".run-title");
    assertFalse(browser.text("#run-clock").isEmpty());
    assertFalse(browser.driver().findElements(By.cssSelector(".run .step-cautions")).isEmpty());
    click(".run-done");
    waitUntilNot(".run-title", first);
    assertEquals(List.of("dry-clamp"), browser.script(DONE));
    assertTrue(browser.text(".run").contains("Still true after"), browser.text(".run"));
    String second = browser.text(".run-title");
    browser.open("about:blank");
    browser.open(site.address(PAGE));
    click("#plan-kept summary");
    click("#plan-list button");
    waitFor(".run-title");
    assertEquals(second, browser.text(".run-title"));
    click(".run-undo");
    waitUntilNot(".run-title", second);
    assertEquals(first, browser.text(".run-title"));
    browser.width(Browser.WIDE);
  }

  @Test
  void aStepDoneLaterMovesWhatFollows() {
    click("#plan-run");
    waitFor(".run-title");
    String planned = (String) browser.script(STEP, "coat-1");
    click(".run details summary");
    WebElement at = browser.driver().findElement(By.id("run-at"));
    browser.script("arguments[0].value = '2031-05-06T10:00'", at);
    click(".run-at button");
    new WebDriverWait(browser.driver(), java.time.Duration.ofSeconds(5))
        .until(d -> !planned.equals(browser.script(STEP, "coat-1")));
    assertTrue(planned.compareTo((String) browser.script(STEP, "coat-1")) < 0);
    assertTrue(((String) browser.script(STEP, "glue-1")).compareTo("2031-05-06T10:00") >= 0);
  }

  @Test
  void aColderRoomMovesWhatFollows() {
    click("#plan-run");
    waitFor(".run-title");
    String cured = "return window.benchlore.last.answer.value.steps.at(-1).slots.at(-1).end";
    String planned = (String) browser.script(cured);
    List<WebElement> folds = browser.driver().findElements(By.cssSelector(".run details summary"));
    folds.get(folds.size() - 1).click();
    WebElement low = browser.driver().findElement(By.id("run-low"));
    low.clear();
    low.sendKeys("11", Keys.TAB);
    new WebDriverWait(browser.driver(), java.time.Duration.ofSeconds(5))
        .until(d -> !planned.equals(browser.script(cured)));
    assertTrue(planned.compareTo((String) browser.script(cured)) < 0);
  }

  @Test
  void whereTheRestCanNotBeLaidOutTheWayBackIsInReach() {
    click("#plan-run");
    waitFor(".run-title");
    browser.script("window.benchlore.project.fields.set({low: -10, high: -8})");
    waitFor("#answer .caution.danger");
    assertFalse(browser.driver().findElements(By.id("run-low")).isEmpty());
    browser.script("window.benchlore.project.fields.set({low: 17, high: 21})");
    waitFor(".run-title");
  }

  /** One sheet, Letter and A4, for every demo plan; boxes to tick and the dangers are on it. */
  @Test
  void theCardIsOneSheet() throws IOException {
    for (String plan :
        List.of("ash-tool-chest", "cherry-record-cabinet", "day-boat-cabin-panels")) {
      String yaml = Files.readString(Path.of("../content/plans/" + plan + ".yaml"));
      browser.script(
          "window.benchlore.project.take(window.benchlore.saved.fromYaml(arguments[0]).file)",
          yaml);
      new WebDriverWait(browser.driver(), java.time.Duration.ofSeconds(5))
          .until(d -> browser.script("return window.benchlore.last.answer.given === true"));
      assertEquals(1, pages(8.5, 11), plan + " on Letter");
      assertEquals(1, pages(8.27, 11.69), plan + " on A4");
      Object boxes = browser.script("return document.querySelectorAll('.card-box').length");
      assertTrue((Long) boxes > 10);
    }
  }

  @Test
  void theCardsCodeHoldsTheAddressWhereThePageIsServed() {
    Object svg =
        browser.script(
            """
            const plan = window.benchlore.last.answer.value;
            const names = window.benchlore.project.names();
            const card = window.benchlore.card('x', plan, names, 'https://shop.example/planner/finish.html#coats=3');
            const file = window.benchlore.card('x', plan, names, 'file:///x.html');
            return [card.querySelectorAll('.card-code').length, file.querySelectorAll('.card-code').length]""");
    assertEquals(List.of(1L, 0L), svg);
  }

  private static int pages(double wide, double high) {
    Map<String, Object> pdf =
        browser
            .driver()
            .executeCdpCommand(
                "Page.printToPDF",
                Map.of("paperWidth", wide, "paperHeight", high, "printBackground", false));
    byte[] bytes = Base64.getDecoder().decode((String) pdf.get("data"));
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    return (int) PDF_PAGE.matcher(text).results().count();
  }

  private static void click(String selector) {
    WebElement element = browser.driver().findElement(By.cssSelector(selector));
    browser.script("arguments[0].scrollIntoView({block: 'center'})", element);
    element.click();
  }

  private static void waitFor(String selector) {
    new WebDriverWait(browser.driver(), java.time.Duration.ofSeconds(5))
        .until(d -> !d.findElements(By.cssSelector(selector)).isEmpty());
  }

  private static void waitUntilNot(String selector, String text) {
    new WebDriverWait(browser.driver(), java.time.Duration.ofSeconds(5))
        .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
        .until(d -> !browser.text(selector).equals(text));
  }
}
