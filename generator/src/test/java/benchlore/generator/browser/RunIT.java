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
    assertEquals(List.of("glue-1"), browser.script(DONE));
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
    assertTrue(((String) browser.script(STEP, "clamps-off-1")).compareTo("2031-05-06T10:00") >= 0);
  }

  /**
   * Last night was cold: the coat put on yesterday evening waits longer, tomorrow is as planned.
   */
  @Test
  void aColderNightMovesWhatFollowsAndNoOtherDay() {
    openARunWithItsFirstCoatLaidYesterday();
    String before = (String) browser.script(STEP, "coat-2");
    click(".nights summary");
    assertEquals("18", number("night-low"));
    assertEquals("22", number("night-high"));
    type("night-low", "-2");
    click("#night-add");
    waitFor(".night-list li");
    String after = (String) browser.script(STEP, "coat-2");
    assertTrue(before.compareTo(after) < 0, before + " " + after);
    String told = browser.text("#plan-tell");
    assertTrue(told.startsWith("Scuff with") && told.contains(" instead of "), told);
    assertTrue(browser.text(".nights").contains(told), browser.text(".nights"));
    assertEquals(1L, browser.script("return document.querySelectorAll('.lad-coldest').length"));
    assertEquals(
        List.of(2L, 18L, 18L),
        browser.script(
            """
            const climate = window.benchlore.last.request.shop.climate;
            return [climate.otherwise.length, climate.hours[5].celsius, window.benchlore.project.fields.values.low]"""));
    assertTrue(browser.driver().getCurrentUrl().contains("nights="));
    click("#night-add");
    assertEquals(1, browser.driver().findElements(By.cssSelector(".night-list li")).size());
    assertEquals("Nothing in the plan moves.", browser.text("#plan-tell"));
    click(".night-list button");
    waitUntilGone(".night-list");
    assertTrue(((String) browser.script(STEP, "coat-2")).compareTo(after) < 0);
    assertFalse(browser.driver().getCurrentUrl().contains("nights="));
  }

  @Test
  void aNightIsKeptWithTheRunAndShownWhenItIsStopped() {
    openARunWithItsFirstCoatLaidYesterday();
    click(".nights summary");
    type("night-low", "1");
    click("#night-add");
    waitFor(".night-list li");
    String after = (String) browser.script(STEP, "coat-2");
    browser.open("about:blank");
    browser.open(site.address(PAGE));
    click("#plan-kept summary");
    click("#plan-list button");
    waitFor(".run-title");
    assertEquals(after, browser.script(STEP, "coat-2"));
    assertEquals(1, browser.driver().findElements(By.cssSelector(".night-list li")).size());
    click("#plan-run");
    waitUntilGone(".run-title");
    assertEquals(1, browser.driver().findElements(By.cssSelector(".night-list li")).size());
    click(".night-list button");
    waitUntilGone(".night-list");
  }

  @Test
  void aNightThatCanNotBeSaysWhyAndChangesNothing() {
    openARunWithItsFirstCoatLaidYesterday();
    click(".nights summary");
    for (String[] bad :
        new String[][] {{"cold", "temperatures"}, {"30", "above"}, {"-60", "can\u2019t"}}) {
      type("night-low", bad[0]);
      click("#night-add");
      assertTrue(browser.text("#night-wrong").contains(bad[1]), browser.text("#night-wrong"));
      assertEquals("", browser.script("return window.benchlore.project.fields.values.nights"));
    }
  }

  @Test
  void theNightsToChooseFromReachFromBeforeTheRunToTheDayAfterTomorrow() {
    openARunWithItsFirstCoatLaidYesterday();
    Object right =
        browser.script(
            """
            const options = Array.from(document.getElementById('night-date').options, o => o.value);
            const day = n => { const d = new Date(); d.setDate(d.getDate() + n); return window.benchlore.view.minute(d).slice(0, 10); };
            const begun = window.benchlore.last.request.progress.done.map(d => d.slots[0].start).sort()[0].slice(0, 10);
            return options[0] === day(2) && options.at(-1) < begun && options.includes(begun)
              && document.getElementById('night-date').value === day(-1)""");
    assertEquals(true, right);
  }

  /** A shop that is open all day, a coat that went on yesterday at seven in the evening. */
  private static void openARunWithItsFirstCoatLaidYesterday() {
    browser.script(
        """
        const open = {low: 18, high: 22, start: '2026-01-05T09:00', title: 'A run'};
        ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'].forEach(d => { open[d] = '06:00-23:00'; });
        const project = window.benchlore.project;
        project.fields.set(open);
        project.fields.answerNow();
        const steps = window.benchlore.last.answer.value.steps;
        const at = steps.findIndex(s => s.id === 'coat-1');
        const d = new Date();
        d.setDate(d.getDate() - 1);
        const yesterday = window.benchlore.view.minute(d).slice(0, 10) + 'T19:00:00';
        const shift = (Date.parse(yesterday + 'Z') - Date.parse(steps[at].slots[0].start + 'Z')) / 1000;
        const plus = iso => window.benchlore.steps.plus(iso, shift);
        const done = steps.slice(0, at + 1).filter(s => s.kind === 'WORK')
          .map(s => ({step: s.id, slots: s.slots.map(t => ({start: plus(t.start), end: plus(t.end)}))}));
        project.fields.set({start: done[0].slots[0].start.slice(0, 16)});
        window.benchlore.saved.keep({name: 'A run', address: project.fields.address(), run: {done}});
        window.benchlore.kept.list();""");
    click("#plan-kept summary");
    click("#plan-list button");
    waitFor(".run-title");
  }

  private static String number(String id) {
    String text = (String) browser.script("return document.getElementById(arguments[0]).value", id);
    return text.substring(0, text.indexOf(' '));
  }

  private static void type(String id, String text) {
    WebElement box = browser.driver().findElement(By.id(id));
    box.clear();
    box.sendKeys(text);
  }

  private static void waitUntilGone(String selector) {
    new WebDriverWait(browser.driver(), java.time.Duration.ofSeconds(5))
        .until(d -> d.findElements(By.cssSelector(selector)).isEmpty());
  }

  @Test
  void whereTheRestCanNotBeLaidOutTheWayBackIsInReach() {
    click("#plan-run");
    waitFor(".run-title");
    browser.script("window.benchlore.project.fields.set({low: -10, high: -8})");
    waitFor("#answer .caution.danger");
    assertFalse(browser.driver().findElements(By.id("night-low")).isEmpty());
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
