package benchlore.generator.script;

import com.google.javascript.jscomp.NodeUtil;
import com.google.javascript.rhino.IR;
import com.google.javascript.rhino.Node;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Rewrites the compiler's table of Java classes, a fifth of its script.
 *
 * <p>Three things are said at length there and shortly here. A class that holds nothing but static
 * methods, or an interface no object is tested for, is not needed at all. A record, an enum
 * constant or a lambda needs no first values of its fields, since the language sees to it that each
 * is set, so that all of them can be made in one go. Methods are put on their classes by name of
 * method, written so that the optimiser may shorten that name.
 */
final class ClassTable {
  private static final String TABLE = "$rt_metadata";
  private static final String ENUMS = "$rt_enumConstantsMetadata";
  private static final String ERASE = "$rt_eraseClinit";
  private static final String HELPERS =
      """
      let $press_done = () => {},
      $press_class = (parent, cls) => {
        let meta = $rt_newClassMetadata();
        cls[$rt_meta] = meta;
        meta.parent = parent;
        cls.prototype = Object.create(parent.prototype);
        cls.prototype.constructor = cls;
        return cls;
      },
      $press_classes = (parent, count) =>
        Array.from({length: count}, () => $press_class(parent, function () {})),
      $press_each = (list, put) => {
        for (let i = 0; i < list.length; i += 2) {
          put(list[i].prototype, list[i + 1]);
        }
      };
      """;

  private final ScriptTree script;
  private final List<Node> tables;
  private final List<Node> enums;
  private final Map<String, CompiledClass> classes = new LinkedHashMap<>();
  private final Set<String> usedByCode = new HashSet<>();
  private final Set<String> asObjects = new HashSet<>();
  private final Set<String> needed = new LinkedHashSet<>();
  private final Set<String> parents = new HashSet<>();

  private ClassTable(ScriptTree script) {
    this.script = script;
    tables = script.calls(TABLE);
    // Not there where no constant is found by its name.
    enums = script.calls(ENUMS);
    if (tables.isEmpty() || enums.size() > 1) {
      throw new IllegalArgumentException("the script has no table of classes as known");
    }
    for (Node table : tables) {
      for (CompiledClass row : CompiledClass.rows(table)) {
        classes.put(row.name(), row);
      }
    }
    findUses();
    findNeeded();
  }

  /** Rewrites the table of a script, in place. */
  static void rewrite(ScriptTree script) {
    ClassTable table = new ClassTable(script);
    table.write();
    table.clear();
  }

  private void findUses() {
    Set<Node> own = new HashSet<>(tables);
    own.addAll(enums);
    script
        .names()
        .forEach(
            (name, places) -> {
              if (classes.containsKey(name) && places.stream().anyMatch(at -> isUse(at, own))) {
                usedByCode.add(name);
              }
            });
    for (Node call : script.calls("$rt_cls")) {
      if (call.getSecondChild().isName()) {
        asObjects.add(call.getSecondChild().getString());
      }
    }
  }

  private static boolean isUse(Node place, Set<Node> tables) {
    Node parent = place.getParent();
    if (parent.isLet() || NodeUtil.isFunctionDeclaration(parent)) {
      return false;
    }
    if (ScriptTree.isCall(parent, ERASE)) {
      return false;
    }
    for (Node above = parent; above != null; above = above.getParent()) {
      if (tables.contains(above)) {
        return false;
      }
    }
    return true;
  }

  private void findNeeded() {
    Deque<String> left = new ArrayDeque<>(usedByCode);
    while (!left.isEmpty()) {
      String name = left.remove();
      if (needed.add(name)) {
        classes.get(name).parent().ifPresent(left::add);
        classes.get(name).parent().ifPresent(parents::add);
      }
    }
  }

  /** What a test of an object's kind may ask for. */
  private List<String> interfacesKept(CompiledClass cls) {
    return cls.interfaces().stream().filter(usedByCode::contains).toList();
  }

  /** True for a class that only its parent and its methods need be told of. */
  private boolean isPlain(CompiledClass cls) {
    return cls.parent().isPresent()
        && !parents.contains(cls.name())
        && !cls.hasJavaName()
        && !cls.isInterface()
        && interfacesKept(cls).isEmpty()
        && cls.nesting().isNumber()
        && !(cls.isEnum() && asObjects.contains(cls.name()));
  }

  private boolean isHollow(CompiledClass cls) {
    return isPlain(cls) && cls.setsEveryField();
  }

  private void write() {
    StringBuilder text = new StringBuilder(HELPERS);
    List<String> rows = new ArrayList<>();
    for (CompiledClass cls : kept(cls -> !isPlain(cls))) {
      rows.add(cls.row(interfacesKept(cls)));
    }
    text.append(TABLE + "([" + String.join(",", rows) + "]);");
    byParent(kept(cls -> isPlain(cls) && !isHollow(cls)))
        .forEach(
            (parent, names) ->
                text.append("[" + String.join(",", names) + "]")
                    .append(".forEach(c=>$press_class(" + parent + ",c));"));
    byParent(kept(this::isHollow))
        .forEach(
            (parent, names) ->
                text.append("let [" + String.join(",", names) + "]=")
                    .append("$press_classes(" + parent + "," + names.size() + ");"));
    byMethod()
        .forEach(
            (put, pairs) ->
                text.append(
                    "$press_each([" + String.join(",", pairs) + "],(p,f)=>{" + put + "});"));
    for (Node table : enums) {
      text.append(ENUMS + "([" + String.join(",", enumsKept(table)) + "]);");
    }
    ScriptTree.insertBefore(tables.get(0).getParent(), text.toString());
  }

  private List<CompiledClass> kept(Predicate<CompiledClass> which) {
    return classes.values().stream()
        .filter(cls -> needed.contains(cls.name()))
        .filter(which)
        .toList();
  }

  private static Map<String, List<String>> byParent(List<CompiledClass> classes) {
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (CompiledClass cls : classes) {
      names.computeIfAbsent(cls.parent().orElseThrow(), key -> new ArrayList<>()).add(cls.name());
    }
    return names;
  }

  /** Pairs of class and function, by the statement that puts a method on a prototype p. */
  private Map<String, List<String>> byMethod() {
    Map<String, List<String>> pairs = new LinkedHashMap<>();
    for (CompiledClass cls : kept(cls -> true)) {
      for (CompiledClass.Method method : cls.methods()) {
        String function = method.wrapper().isEmpty() ? "f" : method.wrapper() + "(f)";
        pairs
            .computeIfAbsent("p." + method.name() + "=" + function, key -> new ArrayList<>())
            .add(cls.name() + "," + method.function());
      }
    }
    return pairs;
  }

  private List<String> enumsKept(Node table) {
    List<String> kept = new ArrayList<>();
    List<Node> cells = ScriptTree.children(table.getSecondChild());
    for (int i = 0; i < cells.size(); i += 2) {
      if (asObjects.contains(cells.get(i).getString())) {
        kept.add(ScriptTree.text(cells.get(i)));
        kept.add(ScriptTree.text(cells.get(i + 1)));
      }
    }
    return kept;
  }

  private void clear() {
    tables.forEach(table -> table.getParent().detach());
    enums.forEach(table -> table.getParent().detach());
    for (Node erase : script.calls(ERASE)) {
      erase.replaceWith(IR.name("$press_done"));
    }
    Map<String, List<Node>> places = new HashMap<>(script.names());
    for (CompiledClass cls : classes.values()) {
      if (needed.contains(cls.name()) && !isHollow(cls)) {
        continue;
      }
      for (Node place : places.getOrDefault(cls.name(), List.of())) {
        if (place.getParent().isLet()) {
          ScriptTree.removeDeclared(place);
        } else if (NodeUtil.isFunctionDeclaration(place.getParent())) {
          place.getParent().detach();
        }
      }
    }
  }
}
