package benchlore.generator.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Kind;
import benchlore.generator.page.CompareModel;
import benchlore.generator.page.Frame;
import benchlore.generator.page.PageModel;
import benchlore.generator.page.PlannerModel;
import io.pebbletemplates.pebble.error.PebbleException;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A template reads what its model has, and a model has what its template reads. */
final class TemplateVariablesTest {
  private static final Path PAGES = Path.of("..", "site-template", "pages");

  /** What others extend, include or import: no page of their own. */
  private static final Set<String> SHARED = Set.of("base", "fields", "key-node", "planner");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {"{{ missing }}", "{{ kind.missing }}", "{% for k in missing %}x{% endfor %}"})
  void aVariableThatNoComponentHasStopsTheBuild(String body) throws IOException {
    Files.writeString(folder.resolve("compare.peb"), body);

    assertThrows(PebbleException.class, this::rendered);
  }

  @Test
  void theComponentsOfModelAndFrameAreTheVariables() throws IOException {
    Files.writeString(
        folder.resolve("compare.peb"), "{{ root }}{{ kind.folder() }} {{ here }} {{ canPlan }}");

    assertEquals("../tools compare true", rendered());
  }

  private String rendered() throws IOException {
    Frame frame = Frame.of("compare/tools.html", true);
    byte[] page = new Templates(folder).render(frame, new CompareModel(Kind.TOOLS));
    return new String(page, StandardCharsets.UTF_8);
  }

  /** A branch that no record takes today fails here, not when the first one takes it. */
  @ParameterizedTest
  @MethodSource("templates")
  void everyVariableOfATemplateIsAComponent(String template) throws IOException {
    Set<String> free = variables(template);

    free.removeAll(components(Frame.class));
    free.removeAll(components(model(template)));

    assertEquals(Set.of(), free);
  }

  /** What no template reads is work for nobody. */
  @Test
  void everyComponentOfAModelIsRead() throws IOException {
    Map<Class<?>, Set<String>> unread = new TreeMap<>((a, b) -> a.getName().compareTo(b.getName()));
    for (Class<?> model : PageModel.class.getPermittedSubclasses()) {
      unread.put(model, components(model));
    }
    List<String> templates = templates();
    for (String template : templates) {
      unread.get(model(template)).removeAll(variables(template));
    }

    unread.values().removeIf(Set::isEmpty);
    assertEquals(Map.of(), unread);
    assertTrue(templates.size() > 20, "only " + templates);
  }

  /** The free variables of a template with all it extends, includes and imports. */
  private static Set<String> variables(String template) throws IOException {
    Set<String> free = new TreeSet<>();
    for (String part : TemplateNames.parts(PAGES, template)) {
      free.addAll(TemplateNames.free(PAGES, part));
    }
    return free;
  }

  static List<String> templates() throws IOException {
    try (Stream<Path> files = Files.list(PAGES)) {
      return files
          .map(file -> file.getFileName().toString().replace(".peb", ""))
          .filter(name -> !SHARED.contains(name))
          .sorted()
          .toList();
    }
  }

  /** The model of a template, by its name: {@code TableWholeModel} fills {@code table-whole}. */
  private static Class<?> model(String template) {
    if (template.startsWith("planner-")) {
      return PlannerModel.class;
    }
    String name =
        Arrays.stream(template.split("-"))
                .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
                .collect(Collectors.joining())
            + "Model";
    return Arrays.stream(PageModel.class.getPermittedSubclasses())
        .filter(model -> model.getSimpleName().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no model " + name + " for " + template));
  }

  private static Set<String> components(Class<?> record) {
    return Arrays.stream(record.getRecordComponents())
        .map(RecordComponent::getName)
        .collect(Collectors.toCollection(HashSet::new));
  }
}
