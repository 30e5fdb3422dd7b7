package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Which package may use which. Each package's note ({@code package-info.java}) is the one place
 * that says so; a new arrow is drawn there first.
 */
final class LayersTest {
  private static final String GENERATOR = "benchlore.generator.";
  private static final String ENGINE = "benchlore.schedules.";

  private static final Pattern NAME = Pattern.compile("\\{@code ([a-z.]+)}");
  private static final Pattern SAYS =
      Pattern.compile(
          "System\\s*\\.\\s*(out|err|exit|console)|printStackTrace|Runtime\\.getRuntime");
  private static final Pattern FILES =
      Pattern.compile("java\\.(io|nio|net)\\b|\\b(Files|Path|InputStream)\\b");

  @Test
  void packagesUseWhatTheirNoteAllows() throws IOException {
    SortedMap<String, Set<String>> allowed = allowed();
    Set<String> broken = new TreeSet<>();
    for (Sources.Source source : Sources.main()) {
      String own = source.packageName();
      if (source.path().endsWith("package-info.java")) {
        continue;
      }
      assertTrue(allowed.containsKey(own), own + " has no note that says what it may depend on");
      for (String used : used(source)) {
        boolean engine = own.startsWith(GENERATOR) && used.startsWith(ENGINE);
        if (!engine && !used.equals(own) && !allowed.get(own).contains(used)) {
          broken.add(source.path() + " uses " + used);
        }
      }
    }
    assertEquals(Set.of(), broken);
  }

  /** A note that allows what nobody uses any more is out of date. */
  @Test
  void notesAllowNoMoreThanIsUsed() throws IOException {
    SortedMap<String, Set<String>> unused = allowed();
    for (Sources.Source source : Sources.main()) {
      if (!source.path().endsWith("package-info.java")) {
        unused.getOrDefault(source.packageName(), new TreeSet<>()).removeAll(used(source));
      }
    }
    unused.values().removeIf(Set::isEmpty);
    assertEquals(Map.of(), unused);
  }

  @Test
  void noPackagesStandInARing() throws IOException {
    SortedMap<String, Set<String>> left = allowed();
    boolean more = true;
    while (more) {
      Set<String> placed = new TreeSet<>();
      left.forEach(
          (name, uses) -> {
            if (uses.isEmpty()) {
              placed.add(name);
            }
          });
      left.keySet().removeAll(placed);
      left.values().forEach(uses -> uses.removeAll(placed));
      more = !placed.isEmpty();
    }
    assertEquals(Set.of(), left.keySet(), "these stand in a ring");
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

  /** What each package's note allows, packages by their full names. */
  private static SortedMap<String, Set<String>> allowed() throws IOException {
    SortedMap<String, Set<String>> allowed = new TreeMap<>();
    for (Sources.Source source : Sources.main()) {
      if (source.path().endsWith("package-info.java")) {
        String note = source.text().replaceAll("\\s*\\n \\*\\s?", " ");
        String module = source.packageName().startsWith(ENGINE) ? ENGINE : GENERATOR;
        Set<String> names = new TreeSet<>();
        int from = note.indexOf("May depend on ");
        if (from < 0) {
          assertTrue(note.contains("Depends on the JDK alone"), source.path() + " says nothing");
        } else {
          Matcher name = NAME.matcher(note.substring(from, note.indexOf(". ", from)));
          while (name.find()) {
            names.add(module + name.group(1));
          }
        }
        allowed.put(source.packageName(), names);
      }
    }
    return allowed;
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

  /** Our packages that a source names, in an import or in full. */
  private static Set<String> used(Sources.Source source) {
    Set<String> used = new TreeSet<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitMemberSelect(MemberSelectTree tree, Void none) {
        Matcher name =
            Pattern.compile("(benchlore\\.(?:generator|schedules)(?:\\.[a-z]+)+)\\.[A-Z].*")
                .matcher(tree.toString());
        if (name.matches()) {
          used.add(name.group(1));
        }
        return super.visitMemberSelect(tree, null);
      }
    }.scan(source.unit(), null);
    return used;
  }
}
