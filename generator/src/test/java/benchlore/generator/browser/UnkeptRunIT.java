package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.Planned;
import benchlore.generator.planning.Plans;
import benchlore.schedules.project.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Ticks that the browser can't keep are told of until they are kept, and leave it as a file. */
class UnkeptRunIT {
  private static final Path CONTENT = Path.of("../content");
  private static final String PAGE = "planner/finish.html";
  private static final String FILL =
      """
      let n = 0;
      for (let size = 1 << 20; size >= 1; size >>= 1) {
        try {
          for (;;) { window.localStorage.setItem('full' + n, 'x'.repeat(size)); n++; }
        } catch (full) { }
      }""";
  private static final String DENY =
      "Object.defineProperty(window, 'localStorage', { get() { throw new Error('denied') } })";
  private static final String CATCH_FILES =
      """
      window.caught = [];
      URL.createObjectURL = blob => { window.caught.push(blob); return '#'; };
      URL.revokeObjectURL = () => { };
      HTMLAnchorElement.prototype.click = () => { }""";
  private static final String CAUGHT = "return window.caught.at(-1).text()";
  private static final String DONE =
      "return window.benchlore.last.request.progress.done.map(d => d.step)";
  private static final String TAKE =
      "return window.benchlore.project.take(window.benchlore.saved.fromYaml(arguments[0]).file)";
  private static final String KEPT =
      "return window.benchlore.saved.read().plans.map(p => p.run.done.map(d => d.step))";

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
    openThePage();
  }

  @ParameterizedTest
  @ValueSource(strings = {FILL, DENY})
  void ticksThatAreNotKeptAreToldOfEvenAfterTheRunIsStopped(String full) {
    browser.script(full);
    click("#plan-run");
    tick();
    assertTrue(browser.text("#plan-tell").contains("not kept"), browser.text("#plan-tell"));
    assertTrue(told().contains("are not kept"), told());
    tick();
    assertTrue(told().contains("are not kept"), told());
    click("#plan-run");
    assertTrue(told().contains("are not kept"), told());
  }

  @Test
  void theFileCarriesTheTicksAndOpeningItBringsTheRunBack(@TempDir Path folder) throws IOException {
    browser.script(FILL + CATCH_FILES);
    click("#plan-run");
    tick();
    tick();
    Object done = browser.script(DONE);
    click("#run-unkept-save");
    assertTrue(told().contains("still keeps none"), told());
    String file = (String) browser.script(CAUGHT);
    click("#plan-save");
    assertEquals(file, browser.script(CAUGHT));
    assertEquals(done, steps(folder, file));
    openThePage();
    assertEquals(true, browser.script(TAKE, file), () -> browser.text("#plan-tell"));
    waitFor(".run-title");
    assertEquals(done, browser.script(DONE));
    assertEquals(List.of(done), browser.script(KEPT));
    assertFalse(banner().isDisplayed());
  }

  @Test
  void onceThereIsRoomEveryTickIsKeptAndNothingMoreIsTold() {
    browser.script(FILL);
    click("#plan-run");
    tick();
    assertTrue(banner().isDisplayed());
    browser.script("window.localStorage.clear()");
    tick();
    assertFalse(banner().isDisplayed());
    assertEquals(List.of(browser.script(DONE)), browser.script(KEPT));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "null",
        "{}",
        "{\"done\":null}",
        "{\"done\":5}",
        "{\"done\":\"coat-1\"}",
        "{\"done\":[null]}",
        "{\"done\":[{\"step\":\"dry-clamp\"}]}",
        "{\"done\":[{\"step\":\"dry-clamp\",\"slots\":[]}]}",
        "{\"done\":[{\"step\":\"dry-clamp\",\"slots\":[null]}]}",
        "{\"done\":[{\"step\":\"dry-clamp\",\"slots\":[{\"start\":1,\"end\":2}]}]}",
        "{\"done\":[{\"step\":7,\"slots\":[{\"start\":\"2027-01-01T10:00:00\",\"end\":\"2027-01-01T11:00:00\"}]}]}"
      })
  void aRunOfAWrongFormInStorageIsSetAsideAndNotLost(String run) {
    String stored =
        "{\"version\":1,\"plans\":[{\"name\":\"Chest\",\"address\":\"coats=3\",\"run\":"
            + run
            + "}]}";
    browser.script("window.localStorage.setItem('benchlore.plans', arguments[0])", stored);
    browser.open("about:blank");
    browser.open(site.address(PAGE));
    assertTrue(browser.text("#plan-tell").contains("stand aside"), browser.text("#plan-tell"));
    assertEquals(
        stored, browser.script("return window.localStorage.getItem('benchlore.plans.aside.1')"));
    assertTrue(browser.text("#answer").contains("Day by day"));
  }

  /** The steps the command line takes as done from a file the page has saved. */
  private static List<String> steps(Path folder, String text) throws IOException {
    Path file = Files.writeString(folder.resolve("a-plan-of-mine.yaml"), text);
    Content content = Content.load(CONTENT).value().orElseThrow();
    LoadResult<List<Planned>> read =
        Plans.of(LibraryLoader.open(CONTENT), List.of(file), content.library());
    assertEquals(List.of(), read.problems(), text);
    Progress progress = read.value().orElseThrow().get(0).request().progress();
    assertTrue(progress.resume().isPresent());
    return progress.done().stream().map(done -> done.step().name()).toList();
  }

  private static String told() {
    assertTrue(banner().isDisplayed());
    return browser.text("#run-unkept");
  }

  private static WebElement banner() {
    return browser.driver().findElement(By.id("run-unkept"));
  }

  private static void tick() {
    waitFor(".run-title");
    String before = browser.text(".run-title");
    click(".run-done");
    new WebDriverWait(browser.driver(), Duration.ofSeconds(5))
        .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
        .until(d -> !browser.text(".run-title").equals(before));
  }

  private static void click(String selector) {
    WebElement element = browser.driver().findElement(By.cssSelector(selector));
    browser.script("arguments[0].scrollIntoView({block: 'center'})", element);
    element.click();
  }

  private static void waitFor(String selector) {
    new WebDriverWait(browser.driver(), Duration.ofSeconds(5))
        .until(d -> !d.findElements(By.cssSelector(selector)).isEmpty());
  }
}
