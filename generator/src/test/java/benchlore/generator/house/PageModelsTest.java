package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.page.Frame;
import benchlore.generator.page.PageModel;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A template is given typed records, never a map of anything. */
final class PageModelsTest {
  private static final Pattern ANYTHING = Pattern.compile("Map<\\s*String\\s*,\\s*(Object|\\?)");

  /** Files that may name such a map, each with its reason. It may only shrink. */
  private static final Set<String> MAY =
      Set.of(
          // The template engine takes its variables so; they are a record's components.
          "Templates.java",
          // Data of a page's script, which no template sees.
          "ComparePages.java");

  /** Collections by name: ids of records, whose number nobody knows. It may only shrink. */
  private static final Set<String> BY_ID = Set.of("KeyModel.plain");

  @Test
  void noPageIsFilledFromAMapOfAnything() throws IOException {
    Set<String> found = new TreeSet<>();
    for (Sources.Source source : Sources.main()) {
      boolean ours =
          source.packageName().equals("benchlore.generator.page")
              || source.packageName().equals("benchlore.generator.site");
      if (ours && ANYTHING.matcher(source.code()).find()) {
        found.add(source.path().substring(source.path().lastIndexOf('/') + 1));
      }
    }
    assertEquals(new TreeSet<>(MAY), found, "make a record of it in the package page");
  }

  @Test
  void whatATemplateIsGivenIsTypedAllTheWayDown() {
    Set<Class<?>> seen = new HashSet<>();
    Set<String> loose = new TreeSet<>();
    List<Class<?>> models = new ArrayList<>(List.of(PageModel.class.getPermittedSubclasses()));
    models.add(Frame.class);
    for (Class<?> model : models) {
      assertTrue(model.isRecord(), model + " is no record");
      walk(model, seen, loose);
    }
    assertEquals(new TreeSet<>(BY_ID), loose, "neither Object nor a map tells what is in it");
    assertTrue(seen.size() > models.size(), "no nested record was seen");
  }

  /** Adds the components of a record and of the page's records in it that could be anything. */
  private static void walk(Class<?> record, Set<Class<?>> seen, Set<String> loose) {
    if (!seen.add(record)) {
      return;
    }
    for (RecordComponent component : record.getRecordComponents()) {
      walk(component.getGenericType(), record.getSimpleName() + "." + component.getName(), loose)
          .filter(type -> type.isRecord() && type.getPackageName().equals(record.getPackageName()))
          .ifPresent(type -> walk(type, seen, loose));
    }
  }

  /** The class at the core of a type: of a list, what it lists. */
  private static Optional<Class<?>> walk(Type type, String name, Set<String> loose) {
    if (type instanceof ParameterizedType generic) {
      if (generic.getRawType() == Map.class) {
        loose.add(name);
        return Optional.empty();
      }
      return walk(generic.getActualTypeArguments()[0], name, loose);
    }
    if (type == Object.class || !(type instanceof Class<?>)) {
      loose.add(name);
      return Optional.empty();
    }
    return Optional.of((Class<?>) type);
  }
}
