package benchlore.generator.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.StepId;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a plan file may call a step is what the engine calls it. */
class StepNamesTest {
  private static final Path SCHEMA = Path.of("../content/schema/plans.schema.json");

  @Test
  void theSchemaTakesEveryStepOfTheEngineAndNoOther() throws IOException {
    Pattern pattern =
        Pattern.compile(
            new ObjectMapper()
                .readTree(SCHEMA.toFile())
                .at("/properties/run/properties/done/items/properties/step/pattern")
                .asText());
    for (StepId.Task task : StepId.Task.values()) {
      String word = task.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      for (String name : List.of(word, word + "-1", word + "-9999", word + "-0", word + "-10000")) {
        assertEquals(StepId.parse(name).isPresent(), pattern.matcher(name).find(), name);
      }
      assertTrue(pattern.matcher(word).find() || pattern.matcher(word + "-1").find(), word);
    }
    assertFalse(pattern.matcher("cut").find());
  }
}
