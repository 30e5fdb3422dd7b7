package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.generator.export.JsonText;
import benchlore.generator.export.RequestJson;
import benchlore.schedules.exchange.EngineJson;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.quantity.Unit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The engine's script in a browser answers with the same figures, to the last bit, as the engine on
 * the JVM.
 */
class EngineScriptIT {
  private static final int PLANS = 1_000;
  private static final int REQUESTS = 300;
  private static final int AT_ONCE = 50;

  /**
   * A guard against accidents such as a table of all the world's letters, not a goal to bend the
   * engine for: the goal of 400,000 was set before plan files, figures, days and calendar, the
   * gate's ways out, the readers of every rule, finishes in order, tables and directions came to
   * it.
   */
  private static final int MOST_BYTES = 660_000;

  private static final String SCRIPT = "/benchlore/template/js/engine.js";

  private static final String ANSWER =
      "return JSON.stringify(EngineEntry[arguments[0]](JSON.parse(arguments[1])));";
  private static final String PRINTS =
      """
      const [name, texts] = arguments;
      return texts.map(text => {
        const answer = JSON.stringify(EngineEntry[name](JSON.parse(text)));
        let first = 0x811c9dc5, second = 0;
        for (let i = 0; i < answer.length; i++) {
          const c = answer.charCodeAt(i);
          first = Math.imul(first ^ c, 0x01000193);
          second = (Math.imul(second, 31) + c) | 0;
        }
        return answer.length + ' ' + first + ' ' + second;
      });
      """;
  private static final String SPEED =
      """
      const load = performance.getEntriesByType('navigation')[0];
      const requests = arguments[0].map(text => JSON.parse(text));
      requests.forEach(request => EngineEntry.plan(request));
      const start = performance.now();
      requests.forEach(request => EngineEntry.plan(request));
      const took = performance.now() - start;
      return [load.loadEventEnd - load.startTime, requests.length / took * 1000].map(Math.round).join(', ');
      """;
  private static final String HOSTILE =
      """
      const loop = {};
      loop.start = loop;
      return [undefined, null, 1, 'x', true, [], {}, loop, {start: NaN}, {parts: new Array(1e8)}, Symbol('x')]
        .map(request => EngineEntry.plan(request).broken);
      """;
  private static final String DIFFER =
      """
      const [name, all] = arguments;
      return all.map(([wanted, ...given]) => [wanted, EngineEntry[name](...given), ...given])
        .filter(([wanted, got]) => wanted === null ? !isNaN(got) : !Object.is(wanted, got))
        .map(told => told.join(', '));
      """;
  private static final List<String> COUNTS = new ArrayList<>();

  @TempDir static Path folder;
  private static Browser browser;
  private static RandomRequests requests;

  @BeforeAll
  static void open() throws IOException {
    requests = new RandomRequests(Path.of("../content"), 1);
    Files.write(folder.resolve("engine.js"), script());
    Path page = folder.resolve("page.html");
    Files.writeString(
        page,
        "<!doctype html><html lang=en><meta charset=utf-8><title>t</title><script src=engine.js></script>");
    browser = Browser.start();
    browser.open(page.toUri().toString());
  }

  @AfterAll
  static void close() {
    browser.close();
    System.out.println("engine, browser as JVM: " + String.join(", ", COUNTS));
  }

  private static byte[] script() throws IOException {
    try (InputStream in = EngineScriptIT.class.getResourceAsStream(SCRIPT)) {
      return in.readAllBytes();
    }
  }

  @Test
  void isSmall() throws IOException {
    int bytes = script().length;
    assertTrue(bytes < MOST_BYTES, () -> "engine.js has " + bytes + " bytes");
  }

  /** Prints how heavy and how fast it is here; asserts nothing about time. */
  @Test
  void measures() throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
      gzip.write(script());
    }
    List<String> asked = new ArrayList<>();
    RandomRequests plans = new RandomRequests(Path.of("../content"), 3);
    for (int i = 0; i < AT_ONCE; i++) {
      asked.add(RequestJson.write(plans.plan()));
    }
    System.out.println(
        "engine: "
            + script().length
            + " bytes, "
            + packed.size()
            + " gzipped; load ms, plans a second: "
            + browser.script(SPEED, asked));
  }

  @Test
  void tellsItsVersion() {
    assertEquals(EngineEntry.engineVersion(), browser.script("return EngineEntry.engineVersion()"));
  }

  @TestFactory
  List<DynamicTest> answersAsTheJvmDoes() {
    return List.of(
        same("sanding", requests::sanding, EngineJson::sanding, REQUESTS),
        same("machineOrSand", requests::machineOrSand, EngineJson::machineOrSand, REQUESTS),
        same("drying", requests::drying, EngineJson::drying, REQUESTS),
        same("dew", requests::dew, EngineJson::dew, REQUESTS),
        same("coats", requests::coats, EngineJson::coats, REQUESTS),
        same("grade", requests::grade, EngineJson::grade, REQUESTS),
        same("sheen", requests::sheen, EngineJson::sheen, REQUESTS),
        same("glueUp", requests::glueUp, EngineJson::glueUp, REQUESTS),
        same("air", requests::air, EngineJson::air, REQUESTS),
        same("shelfGap", requests::sanding, EngineJson::shelfGap, REQUESTS),
        same("dust", requests::dust, EngineJson::dust, REQUESTS),
        same("mist", requests::mist, EngineJson::mist, REQUESTS),
        same("fit", requests::fit, EngineJson::fit, REQUESTS),
        same("cutting", requests::cutting, EngineJson::cutting, REQUESTS),
        same("reach", requests::reach, EngineJson::reach, REQUESTS),
        same("tabs", requests::tabs, EngineJson::tabs, REQUESTS),
        same("surfacing", requests::surfacing, EngineJson::surfacing, REQUESTS),
        same("climate", requests::day, EngineJson::climate, REQUESTS),
        same("room", requests::changingRoom, EngineJson::room, REQUESTS),
        same("plan", requests::plan, EngineJson::plan, PLANS));
  }

  /** In both systems, of every unit and of units a field may have. */
  @Test
  void writesAndReadsFiguresAsTheJvmDoes() {
    SplittableRandom random = new SplittableRandom(5);
    List<List<Object>> figures = new ArrayList<>();
    List<List<Object>> shown = new ArrayList<>();
    List<List<Object>> typed = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      String by = (i % 2 == 0 ? UnitSystem.METRIC : UnitSystem.IMPERIAL).name();
      double low = (random.nextDouble() - 0.2) * Math.pow(10, random.nextInt(-6, 7));
      double high = random.nextBoolean() ? low : low * 1.5;
      for (Unit unit : Unit.values()) {
        String of = unit.name();
        figures.add(Arrays.asList(EngineEntry.figure(low, high, of, by), low, high, of, by));
      }
      for (String field : List.of("mm", "m³/h", "°C", "µm", "mm/min", "L", "N", "h", "%", "")) {
        String text = EngineEntry.shown(low, field, by);
        shown.add(Arrays.asList(text, low, field, by));
        typed.add(typed(text, field, by));
        typed.add(typed(text + " in", field, by));
      }
    }
    assertEquals(List.of(), browser.script(DIFFER, "figure", figures));
    assertEquals(List.of(), browser.script(DIFFER, "shown", shown));
    assertEquals(List.of(), browser.script(DIFFER, "typed", typed));
  }

  /** What is read, nothing where that is no number, and what it is read from. */
  private static List<Object> typed(String text, String field, String system) {
    double value = EngineEntry.typed(text, field, system);
    return Arrays.asList(Double.isNaN(value) ? null : value, text, field, system);
  }

  private static DynamicTest same(
      String name, Supplier<Object> request, EngineJson.Call engine, int requests) {
    return DynamicTest.dynamicTest(name, () -> compare(name, request, engine, requests));
  }

  private static void compare(
      String name, Supplier<Object> request, EngineJson.Call engine, int requests) {
    int given = 0;
    for (int done = 0; done < requests; done += AT_ONCE) {
      List<String> asked = new ArrayList<>();
      for (int i = 0; i < AT_ONCE; i++) {
        asked.add(RequestJson.write(request.get()));
      }
      // Both sides work at the same time.
      CompletableFuture<List<String>> here =
          CompletableFuture.supplyAsync(
              () -> asked.stream().map(text -> JsonText.answer(engine, text)).toList());
      List<?> prints = (List<?>) browser.script(PRINTS, name, asked);
      List<String> answers = here.join();
      for (int i = 0; i < AT_ONCE; i++) {
        String wanted = answers.get(i);
        if (!print(wanted).equals(prints.get(i))) {
          assertEquals(wanted, browser.script(ANSWER, name, asked.get(i)), asked.get(i));
          fail("prints differ where texts are the same");
        }
        given = wanted.startsWith("{\"given\":true") ? given + 1 : given;
      }
    }
    int answered = given;
    COUNTS.add(name + " " + requests + " (" + given + " answered)");
    assertTrue(
        answered > requests / 8, () -> "only " + answered + " of the requests were answered");
  }

  /** Length and two hashes of a text, as the script below works them out. */
  private static String print(String text) {
    int first = 0x811c9dc5;
    for (int i = 0; i < text.length(); i++) {
      first = (first ^ text.charAt(i)) * 0x01000193;
    }
    return text.length() + " " + first + " " + text.hashCode();
  }

  @Test
  void hostileRequestsAreToldNotThrown() {
    List<?> broken = (List<?>) browser.script(HOSTILE);
    assertEquals(11, broken.size());
    for (Object told : broken) {
      assertTrue(told.toString().startsWith("request"), told.toString());
    }
  }
}
