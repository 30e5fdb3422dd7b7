package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.javascript.jscomp.Compiler;
import com.google.javascript.jscomp.CompilerOptions;
import com.google.javascript.jscomp.NodeUtil;
import com.google.javascript.jscomp.SourceFile;
import com.google.javascript.rhino.Node;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The pages' modules are held to the sizes of the Java and import downward alone. What the compiler
 * that bundles them checks itself (types, names, imports that are not there) is not checked again.
 */
final class ScriptRulesTest {
  private static final Path MODULES = Sources.ROOT.resolve("site-template/js");

  /** What each folder may import beside itself. */
  private static final Map<String, Set<String>> LAYERS =
      Map.of(
          "page", Set.of(),
          "finder", Set.of("page"),
          "planner", Set.of("page"),
          "project", Set.of("page", "planner"));

  private static final int LONGEST_FILE = 400;
  private static final int LONGEST_FUNCTION = 40;
  private static final int MOST_PARAMETERS = 5;
  private static final int LONGEST_LINE = 120;
  private static final Pattern INDENT = Pattern.compile("( {2})*( \\*.*|\\S.*)?");
  private static final Pattern GLOBAL = Pattern.compile("window\\.benchlore\\s*=[^=]");

  @Test
  void filesFunctionsAndListsOfParametersStaySmall() throws IOException {
    List<String> tooLong = new ArrayList<>();
    for (Map.Entry<String, String> module : modules().entrySet()) {
      String text = module.getValue();
      if (text.lines().count() >= LONGEST_FILE) {
        tooLong.add(module.getKey() + " has " + text.lines().count() + " lines");
      }
      for (Node function : nodes(module, Node::isFunction)) {
        int from = function.getSourceOffset();
        long lines = text.substring(from, from + function.getLength()).lines().count();
        String name = module.getKey() + ":" + function.getLineno();
        if (lines > LONGEST_FUNCTION) {
          tooLong.add(name + " has " + lines + " lines");
        }
        if (NodeUtil.getFunctionParameters(function).getChildCount() > MOST_PARAMETERS) {
          tooLong.add(name + " takes too many parameters");
        }
      }
    }
    assertEquals(List.of(), tooLong);
  }

  @Test
  void namesAreDeclaredConstOrLet() throws IOException {
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, String> module : modules().entrySet()) {
      for (Node declared : nodes(module, Node::isVar)) {
        found.add(module.getKey() + ":" + declared.getLineno());
      }
    }
    assertEquals(List.of(), found);
  }

  @Test
  void importsGoToTheFoldersBelowAlone() throws IOException {
    List<String> upward = new ArrayList<>();
    SortedMap<String, List<String>> imports = imports();
    imports.forEach(
        (module, targets) -> {
          for (String target : targets) {
            if (!imports.containsKey(target)) {
              upward.add(module + " imports " + target + ", which is not there");
            } else if (!folder(target).equals(folder(module))
                && !LAYERS.get(folder(module)).contains(folder(target))) {
              upward.add(module + " imports " + target);
            }
          }
        });
    assertEquals(List.of(), upward);
  }

  @Test
  void noModuleIsReachedFromWhatItImports() throws IOException {
    SortedMap<String, List<String>> imports = imports();
    List<String> rings = new ArrayList<>();
    for (String module : imports.keySet()) {
      Set<String> reached = new HashSet<>();
      List<String> next = new ArrayList<>(imports.get(module));
      while (!next.isEmpty()) {
        String one = next.remove(next.size() - 1);
        if (reached.add(one)) {
          next.addAll(imports.getOrDefault(one, List.of()));
        }
      }
      if (reached.contains(module)) {
        rings.add(module);
      }
    }
    assertEquals(List.of(), rings);
  }

  @Test
  void oneModuleAloneGivesNamesToTheWindow() throws IOException {
    List<String> giving = new ArrayList<>();
    for (Map.Entry<String, String> module : modules().entrySet()) {
      if (GLOBAL.matcher(module.getValue()).find()) {
        giving.add(module.getKey());
      }
    }
    assertEquals(List.of("page/names.js"), giving);
  }

  @Test
  void linesAreShortAndIndentedByTwo() throws IOException {
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, String> module : modules().entrySet()) {
      List<String> lines = module.getValue().lines().toList();
      for (int i = 0; i < lines.size(); i++) {
        String line = lines.get(i);
        if (line.length() > LONGEST_LINE
            || line.endsWith(" ")
            || line.contains("\t")
            || !INDENT.matcher(line).matches()) {
          found.add(module.getKey() + ":" + (i + 1));
        }
      }
    }
    assertEquals(List.of(), found);
  }

  private static String folder(String module) {
    return module.substring(0, module.indexOf('/'));
  }

  private static SortedMap<String, List<String>> imports() throws IOException {
    SortedMap<String, List<String>> imports = new TreeMap<>();
    for (Map.Entry<String, String> module : modules().entrySet()) {
      List<String> targets = new ArrayList<>();
      for (Node one : nodes(module, Node::isImport)) {
        Path beside = Path.of(module.getKey()).getParent();
        String target = beside.resolve(one.getLastChild().getString()).normalize().toString();
        targets.add(target.replace('\\', '/'));
      }
      imports.put(module.getKey(), targets);
    }
    return imports;
  }

  private static List<Node> nodes(
      Map.Entry<String, String> module, java.util.function.Predicate<Node> wanted) {
    Compiler compiler = new Compiler();
    compiler.initOptions(new CompilerOptions());
    Node root = compiler.parse(SourceFile.fromCode(module.getKey(), module.getValue()));
    List<Node> found = new ArrayList<>();
    NodeUtil.visitPreOrder(
        root,
        node -> {
          if (wanted.test(node)) {
            found.add(node);
          }
        });
    return found;
  }

  /** Each module's text by its path; the types stand outside them. */
  private static SortedMap<String, String> modules() throws IOException {
    SortedMap<String, String> modules = new TreeMap<>();
    try (Stream<Path> files = Files.walk(MODULES)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".js")).toList()) {
        String name = MODULES.relativize(file).toString().replace('\\', '/');
        if (!name.startsWith("types/")) {
          modules.put(name, Files.readString(file));
        }
      }
    }
    assertTrue(modules.size() > 30, "only " + modules.size() + " modules were read");
    return modules;
  }
}
