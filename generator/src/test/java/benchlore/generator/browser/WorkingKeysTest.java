package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.QuantityKey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A page that asks for a line of working asks for one the engine has. */
class WorkingKeysTest {
  private static final Path SCRIPTS = Path.of("../site-template/js");
  private static final Pattern LOOK_UP =
      Pattern.compile("(?<!function )\\bline\\(\\s*answer\\s*,([^()]*)\\)");
  // A text compared with is no key.
  private static final Pattern COMPARED = Pattern.compile("==\\s*(['\"])[^'\"]*\\1");
  private static final Pattern TEXT = Pattern.compile("(['\"])([^'\"]*)\\1");

  @Test
  void everyKeyAskedForIsOneOfTheEngine() throws IOException {
    Set<String> keys = new HashSet<>();
    for (QuantityKey key : QuantityKey.values()) {
      keys.add(key.name());
    }
    List<String> unknown = new ArrayList<>();
    int asked = 0;
    for (Path script : scripts()) {
      for (String key : keysIn(Files.readString(script))) {
        asked++;
        if (!keys.contains(key)) {
          unknown.add(script.getFileName() + " asks for " + key);
        }
      }
    }
    assertEquals(List.of(), unknown);
    assertTrue(asked >= 26, "only " + asked + " look-ups were found");
  }

  @Test
  void bothKeysOfAChoiceAndNoneOfItsConditionAreRead() {
    assertEquals(
        List.of("A_KEY", "ANOTHER", "LAST"),
        keysIn(
            "line(answer, v.x === 'FIRE' ? 'A_KEY' : 'ANOTHER'), view.line(answer, 'LAST', n.length)"));
  }

  private static List<String> keysIn(String script) {
    List<String> keys = new ArrayList<>();
    Matcher lookUp = LOOK_UP.matcher(script);
    while (lookUp.find()) {
      int before = keys.size();
      Matcher text = TEXT.matcher(COMPARED.matcher(lookUp.group(1)).replaceAll("=="));
      while (text.find()) {
        keys.add(text.group(2));
      }
      if (keys.size() == before) {
        keys.add("a key that is not written out: " + lookUp.group());
      }
    }
    return keys;
  }

  private static List<Path> scripts() throws IOException {
    try (Stream<Path> all = Files.walk(SCRIPTS)) {
      return all.filter(p -> p.toString().endsWith(".js")).toList();
    }
  }
}
