package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.source.tree.MemberSelectTree;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Which package may use which; a new arrow is drawn here first, with its reason. */
final class LayersTest {
  private static final String GENERATOR = "benchlore.generator.";
  private static final String ENGINE = "benchlore.schedules.";

  /** Packages of the generator and those of it they may use; every one may use the engine. */
  private static final Map<String, Set<String>> MAY_USE =
      Map.ofEntries(
          Map.entry("library", Set.of()),
          Map.entry("units", Set.of()),
          Map.entry("drawing", Set.of()),
          Map.entry("tables", Set.of("library")),
          Map.entry("planning", Set.of("library", "drawing", "tables")),
          Map.entry("find", Set.of("library")),
          Map.entry("json", Set.of()),
          Map.entry("export", Set.of("library", "planning", "units", "json", "find")),
          // A plan's calendar stands beside its page, the planner's data among its scripts.
          Map.entry(
              "site",
              Set.of("library", "planning", "drawing", "find", "units", "export", "tables")),
          Map.entry("browser", Set.of("json")),
          Map.entry("cli", Set.of("library", "planning", "site", "export")));

  private static final Pattern SAYS =
      Pattern.compile(
          "System\\s*\\.\\s*(out|err|exit|console)|printStackTrace|Runtime\\.getRuntime");
  private static final Pattern FILES =
      Pattern.compile("java\\.(io|nio|net)\\b|\\b(Files|Path|InputStream)\\b");

  @Test
  void packagesUseOnlyWhatTheyMay() throws IOException {
    List<String> broken = new ArrayList<>();
    SortedMap<String, Set<String>> used = new TreeMap<>();
    for (Sources.Source source : Sources.main()) {
      if (source.packageName().startsWith(GENERATOR)) {
        String own = source.packageName().substring(GENERATOR.length());
        for (String name : used(source, GENERATOR)) {
          used.computeIfAbsent(own, o -> new TreeSet<>()).add(name);
          if (!name.equals(own) && !MAY_USE.getOrDefault(own, Set.of()).contains(name)) {
            broken.add(source.path() + " uses " + name);
          }
        }
      }
    }
    assertEquals(List.of(), broken);
    assertEquals(Set.of(), unknown(used.keySet()), "packages without a line in the table");
  }

  private static Set<String> unknown(Set<String> packages) {
    Set<String> unknown = new TreeSet<>(packages);
    unknown.removeAll(MAY_USE.keySet());
    return unknown;
  }

  @Test
  void theEngineKnowsNothingOfTheGenerator() throws IOException {
    List<String> broken = new ArrayList<>();
    for (Sources.Source source : Sources.main()) {
      if (source.packageName().startsWith(ENGINE) && source.text().contains(GENERATOR)) {
        broken.add(source.path());
      }
    }
    assertEquals(List.of(), broken);
  }

  @Test
  void drawingKnowsNoFiles() throws IOException {
    assertEquals(List.of(), matching(FILES, GENERATOR + "drawing"));
  }

  @Test
  void onlyTheCommandLinePrintsOrExits() throws IOException {
    List<String> saying = matching(SAYS, "benchlore");
    saying.removeIf(path -> path.startsWith("generator/src/main/java/benchlore/generator/cli/"));
    assertEquals(List.of(), saying);
  }

  private static List<String> matching(Pattern pattern, String within) throws IOException {
    List<String> found = new ArrayList<>();
    for (Sources.Source source : Sources.main()) {
      if (source.packageName().startsWith(within) && pattern.matcher(source.code()).find()) {
        found.add(source.path());
      }
    }
    return found;
  }

  /** First name after a prefix, of every import and every name written in full. */
  private static Set<String> used(Sources.Source source, String prefix) {
    Set<String> used = new TreeSet<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitMemberSelect(MemberSelectTree tree, Void none) {
        String name = tree.toString();
        if (name.startsWith(prefix)) {
          String rest = name.substring(prefix.length());
          int dot = rest.indexOf('.');
          used.add(dot < 0 ? rest : rest.substring(0, dot));
        }
        return super.visitMemberSelect(tree, null);
      }
    }.scan(source.unit(), null);
    return used;
  }
}
