package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The engine's script in a browser answers with the same bytes as the engine on the JVM. */
class EngineScriptIT {
  private static final int REQUESTS = 500;
  private static final int AT_ONCE = 50;
  private static final int MOST_BYTES = 400_000;
  private static final String SCRIPT = "/benchlore/template/js/engine.js";

  @TempDir static Path folder;
  private static Browser browser;
  private static RandomRequests requests;

  @BeforeAll
  static void open() throws IOException {
    requests = new RandomRequests(Path.of("../content"), 1);
    Files.write(folder.resolve("engine.js"), script());
    Path page = folder.resolve("page.html");
    Files.writeString(
        page, "<!doctype html><html lang=en><title>t</title><script src=engine.js></script>");
    browser = Browser.start();
    browser.open(page.toUri().toString());
  }

  @AfterAll
  static void close() {
    browser.close();
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

  @Test
  void tellsItsVersion() {
    assertEquals(EngineEntry.engineVersion(), browser.script("return EngineEntry.engineVersion()"));
  }

  @TestFactory
  List<DynamicTest> answersAsTheJvmDoes() {
    return List.of(
        same("sanding", requests::sanding, EngineEntry::sanding),
        same("drying", requests::drying, EngineEntry::drying),
        same("glueUp", requests::glueUp, EngineEntry::glueUp),
        same("air", requests::air, EngineEntry::air),
        same("fit", requests::fit, EngineEntry::fit),
        same("cutting", requests::cutting, EngineEntry::cutting),
        same("plan", requests::plan, EngineEntry::plan));
  }

  private static DynamicTest same(
      String name, Supplier<Object> request, UnaryOperator<String> engine) {
    return DynamicTest.dynamicTest(name, () -> compare(name, request, engine));
  }

  private static void compare(String name, Supplier<Object> request, UnaryOperator<String> engine) {
    int given = 0;
    for (int done = 0; done < REQUESTS; done += AT_ONCE) {
      List<String> asked = new ArrayList<>();
      for (int i = 0; i < AT_ONCE; i++) {
        asked.add(RequestJson.write(request.get()));
      }
      List<?> answers =
          (List<?>) browser.script("return arguments[0].map(EngineEntry." + name + ");", asked);
      for (int i = 0; i < AT_ONCE; i++) {
        String wanted = engine.apply(asked.get(i));
        assertEquals(wanted, answers.get(i), asked.get(i));
        given = wanted.startsWith("{\"given\":true") ? given + 1 : given;
      }
    }
    int answered = given;
    System.out.println(name + ": " + REQUESTS + " requests, " + given + " answered");
    assertTrue(
        answered > REQUESTS / 5, () -> "only " + answered + " of the requests were answered");
  }

  @Test
  void tellsWhatIsBrokenInARequest() {
    for (String broken : List.of("", "{", "[1]", "{\"a\":tru}", "{\"start\":5}", "{} x")) {
      assertEquals(
          EngineEntry.plan(broken),
          browser.script("return EngineEntry.plan(arguments[0])", broken));
      assertTrue(EngineEntry.plan(broken).contains("\"broken\":"), broken);
    }
  }
}
