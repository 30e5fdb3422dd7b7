package benchlore.generator.site;

import io.pebbletemplates.pebble.PebbleEngine;
import io.pebbletemplates.pebble.loader.FileLoader;
import io.pebbletemplates.pebble.node.ForNode;
import io.pebbletemplates.pebble.node.NamedArgumentNode;
import io.pebbletemplates.pebble.node.SetNode;
import io.pebbletemplates.pebble.node.expression.ContextVariableExpression;
import io.pebbletemplates.pebble.template.PebbleTemplate;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The names a template reads, told by the template engine's own parser. */
final class TemplateNames {
  private static final String ENGINE = "io.pebbletemplates.pebble.";
  private static final Pattern PART =
      Pattern.compile("\\{%\\s*(?:extends|include|import)\\s+\"([\\w-]+)\"");

  private TemplateNames() {}

  /** A template and all it extends, includes and imports. */
  static Set<String> parts(Path folder, String template) throws IOException {
    Set<String> parts = new TreeSet<>();
    Deque<String> left = new ArrayDeque<>(Set.of(template));
    while (!left.isEmpty()) {
      String part = left.pop();
      if (parts.add(part)) {
        String text = Files.readString(folder.resolve(part + ".peb"));
        PART.matcher(text).results().map(found -> found.group(1)).forEach(left::push);
      }
    }
    return parts;
  }

  /** The names one file reads and does not give itself, by a loop or as a macro's parameter. */
  static Set<String> free(Path folder, String part) {
    FileLoader loader = new FileLoader(folder.toAbsolutePath().normalize().toString());
    loader.setSuffix(".peb");
    PebbleTemplate template = new PebbleEngine.Builder().loader(loader).build().getTemplate(part);
    Set<String> read = new TreeSet<>();
    Set<String> given = new TreeSet<>(Set.of("loop"));
    walk(template, read, given);
    read.removeAll(given);
    return read;
  }

  /** Goes through the parsed tree, whose nodes give no way in to all their parts. */
  private static void walk(PebbleTemplate template, Set<String> read, Set<String> given) {
    Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Object> left = new ArrayDeque<>(Set.of(template));
    while (!left.isEmpty()) {
      Object node = left.pop();
      if (!seen.add(node)) {
        continue;
      }
      if (node instanceof ContextVariableExpression variable) {
        read.add(variable.getName());
      } else if (node instanceof ForNode loop) {
        given.add(loop.getIterationVariable());
      } else if (node instanceof SetNode set) {
        given.add(set.getName());
      } else if (node instanceof NamedArgumentNode parameter) {
        given.add(parameter.getName());
      }
      left.addAll(inside(node));
    }
  }

  private static Collection<Object> inside(Object node) {
    if (node instanceof Collection<?> many) {
      return many.stream().map(Object.class::cast).filter(TemplateNames::matters).toList();
    }
    if (node instanceof Map<?, ?> map) {
      return map.values().stream().map(Object.class::cast).filter(TemplateNames::matters).toList();
    }
    if (node instanceof Object[] many) {
      return Arrays.stream(many).filter(TemplateNames::matters).toList();
    }
    Collection<Object> parts = new ArrayDeque<>();
    for (Class<?> type = node.getClass(); type != Object.class; type = type.getSuperclass()) {
      for (Field field : type.getDeclaredFields()) {
        if (!Modifier.isStatic(field.getModifiers())) {
          Object part = value(field, node);
          if (matters(part)) {
            parts.add(part);
          }
        }
      }
    }
    return parts;
  }

  private static Object value(Field field, Object node) {
    try {
      field.setAccessible(true);
      return field.get(node);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(field + " can't be read", e);
    }
  }

  /** Whether names may stand in it: a part of the tree, or several. The engine itself is none. */
  private static boolean matters(Object part) {
    if (part == null) {
      return false;
    }
    String name = part.getClass().getName();
    return part instanceof Collection
        || part instanceof Map
        || part instanceof Object[]
        || name.startsWith(ENGINE + "node.")
        // An "if" keeps each condition with its branch in one.
        || name.equals(ENGINE + "utils.Pair")
        || name.startsWith(ENGINE + "template.");
  }
}
