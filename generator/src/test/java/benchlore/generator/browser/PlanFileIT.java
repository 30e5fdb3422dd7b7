package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.export.PlanJson;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.Planned;
import benchlore.generator.planning.Plans;
import benchlore.schedules.present.PlanCalendar;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.project.ProjectPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A plan file means the same to the page and to the generator, there and back. */
class PlanFileIT {
  private static final Path CONTENT = Path.of("../content");
  private static final String PAGE = "planner/finish.html";
  private static final String TAKE =
      "return window.benchlore.project.take(window.benchlore.saved.fromYaml(arguments[0]).file)";
  private static final String REQUEST =
      "return JSON.stringify(window.benchlore.project.current().request)";
  private static final String FILE =
      "return window.benchlore.saved.toYaml(window.benchlore.project.current().file)";
  private static final String CALENDAR =
      "return window.benchlore.project.calendar().replaceAll('\\r', '<CR>')";

  private static final SiteFolder site = SiteFolder.fromBuild();
  @RegisterExtension static final Browser browser = Browser.watching(site);
  private static Content content;

  @BeforeAll
  static void loadContent() throws IOException {
    content = Content.load(CONTENT).value().orElseThrow();
  }

  @BeforeEach
  void openThePage() {
    browser.open("about:blank");
    browser.open(site.address(PAGE));
    browser.script("window.localStorage.clear()");
  }

  @Test
  void theDemoPlansAskTheSameOfTheEngineInThePage() throws IOException {
    for (Planned planned : content.plans()) {
      assertEquals(true, browser.script(TAKE, yaml(planned)), () -> browser.text("#plan-tell"));
      String request = (String) browser.script(REQUEST);
      assertEquals(planned.request(), PlanJson.parse(request), planned.id());
    }
  }

  @Test
  void aPlanSavedFromThePageIsReadByTheGeneratorAsTheSame(@TempDir Path folder) throws IOException {
    for (Planned planned : content.plans()) {
      browser.script(TAKE, yaml(planned));
      String saved = (String) browser.script(FILE);
      Path file = Files.writeString(folder.resolve(planned.id() + ".yaml"), saved);
      LoadResult<List<Planned>> read =
          Plans.of(LibraryLoader.open(CONTENT), List.of(file), content.library());
      assertEquals(List.of(), read.problems(), saved);
      assertEquals(planned.request(), read.value().orElseThrow().get(0).request());
      browser.script(TAKE, saved);
      assertEquals(saved, browser.script(FILE));
    }
  }

  @Test
  void nightsThatWereOtherwiseGoThereAndBack(@TempDir Path folder) throws IOException {
    String yaml = yaml(content.plans().get(0));
    String nights =
        """
        climate:
          { low: 12 °C, high: 19 °C, humidity: 55 %, heating: { from: 8 h, to: 20 h, at: 18 °C }, nights: [
            { date: 2027-03-02, low: 0.5 °C, high: 8 °C, humidity: 62.5 %, heated: false },
            { date: 2027-03-01, low: -4 °C, high: 10 °C },
            { date: 2027-03-05, low: 15 °C, high: 24 °C, heated: false } ] }
        """;
    String told = yaml.replaceAll("(?m)^climate:.*\\R(  .*\\R)*", "") + nights;
    Path file = Files.writeString(folder.resolve(content.plans().get(0).id() + ".yaml"), told);
    Planned planned = read(file);
    assertEquals(5, planned.request().shop().climate().otherwise().size());
    assertEquals(true, browser.script(TAKE, told), () -> browser.text("#plan-tell"));
    String request = (String) browser.script(REQUEST);
    assertEquals(planned.request(), PlanJson.parse(request));
    String saved = (String) browser.script(FILE);
    Files.writeString(file, saved);
    assertEquals(planned.request(), read(file).request(), saved);
    browser.script(TAKE, saved);
    assertEquals(saved, browser.script(FILE));
    String address = browser.driver().getCurrentUrl();
    assertTrue(
        address.contains("nights=2027-03-01_-4_10~2027-03-02_0.5_8_62.5_off~2027-03-05_15_24__off"),
        address);
    browser.open("about:blank");
    browser.open(address);
    assertEquals(request, browser.script(REQUEST));
  }

  private static Planned read(Path file) throws IOException {
    LoadResult<List<Planned>> read =
        Plans.of(LibraryLoader.open(CONTENT), List.of(file), content.library());
    assertEquals(List.of(), read.problems());
    return read.value().orElseThrow().get(0);
  }

  @Test
  void nightsThatCanNotBeChangeNothingAndSayWhy() {
    String before = (String) browser.script(REQUEST);
    for (Map.Entry<String, String> bad :
        Map.of(
                "2027-02-30_4_9", "no day",
                "2027-02-03_14_9", "above",
                "2027-02-03_4_90", "90",
                "2027-02-03_4_9_120", "humidity",
                "2027-02-03_4_9~2027-02-03_5_9", "twice",
                "tuesday", "no night")
            .entrySet()) {
      browser.open("about:blank");
      browser.open(site.address(PAGE + "#nights=" + bad.getKey()));
      assertTrue(browser.text("#strange").contains(bad.getValue()), browser.text("#strange"));
      assertEquals(before, browser.script(REQUEST));
    }
  }

  @Test
  void aPlanThatCameWithTheSiteOpensByItsAddress() {
    browser.open("about:blank");
    browser.open(site.address(PAGE + "#begin=day-boat-cabin-panels"));
    assertEquals(
        "Cabin panels for a day boat",
        browser.script("return window.benchlore.project.current().file.title"));
    assertTrue(
        browser.driver().getCurrentUrl().contains("finish=")
            || browser.driver().getCurrentUrl().contains("coats="));
    browser.open("about:blank");
    browser.open(site.address(PAGE + "#begin=nothing"));
    assertTrue(browser.text("#plan-tell").contains("no plan of that name"));
  }

  /** The engine writes the text; which plan, under which name and in whose units, is the page's. */
  @Test
  void theCalendarIsThatOfThePlanInTheFormInTheReadersUnits() throws IOException {
    Planned planned = content.plans().get(0);
    browser.script(TAKE, yaml(planned));
    for (UnitSystem system : UnitSystem.values()) {
      browser.script(
          "window.benchlore.units.set(arguments[0])", system.name().toLowerCase(Locale.ROOT));
      String expected =
          planned.answer().fold(given -> calendar(planned, given.value(), system), refused -> "");
      // The driver drops the carriage returns of a text, so they travel as words.
      assertEquals(expected.replace("\r", "<CR>"), browser.script(CALENDAR), planned.id());
    }
  }

  @Test
  void aFileThatIsNoPlanChangesNothingAndSaysWhy() throws IOException {
    String before = (String) browser.script(REQUEST);
    for (Map.Entry<String, String> bad :
        Map.of(
                "- a\n- list\n",
                "no plan file",
                "title: [",
                "YAML",
                yaml(content.plans().get(0)).replace("species: white-ash", "species: cheery"),
                "Wood",
                yaml(content.plans().get(0)).replace("count: 1", "count: 1000"),
                "How many")
            .entrySet()) {
      browser.script(
          """
          const read = window.benchlore.saved.fromYaml(arguments[0]);
          if (read.problem) { window.benchlore.project.say(read.problem); }
          else { window.benchlore.project.take(read.file); }""",
          bad.getKey());
      assertTrue(browser.text("#plan-tell").contains(bad.getValue()), browser.text("#plan-tell"));
      assertEquals(before, browser.script(REQUEST));
    }
  }

  @Test
  void keptPlansComeBackAndSpoiledStorageIsSetAside() {
    browser.script("document.getElementById('plan-keep').click()");
    assertTrue(browser.text("#plan-tell").contains("is kept"));
    browser.open("about:blank");
    browser.open(site.address(PAGE));
    assertEquals(1L, browser.script("return document.querySelectorAll('#plan-list li').length"));
    browser.script("window.localStorage.setItem('benchlore.plans', '{broken')");
    browser.open("about:blank");
    browser.open(site.address(PAGE));
    assertTrue(
        browser.text("#plan-tell").contains("set aside")
            || browser.text("#plan-tell").contains("stand aside"));
    assertEquals(
        "{broken", browser.script("return window.localStorage.getItem('benchlore.plans.aside.1')"));
    browser.script("window.localStorage.clear()");
  }

  private static String calendar(Planned planned, ProjectPlan plan, UnitSystem system) {
    return PlanCalendar.render(
        new PlanCalendar.Head(planned.id(), planned.title(), plan.start(), system), plan);
  }

  private static String yaml(Planned planned) throws IOException {
    return Files.readString(CONTENT.resolve("plans/" + planned.id() + ".yaml"));
  }
}
