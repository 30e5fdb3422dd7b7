package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.lang.model.element.Modifier;
import org.junit.jupiter.api.Test;

/** Files and methods stay small; lines are counted in the house format, documentation too. */
final class SizesTest {
  private static final int LONGEST_FILE = 400;
  private static final int MEDIAN_FILE = 90;
  private static final int LONGEST_METHOD = 40;
  private static final int NINE_METHODS_IN_TEN = 20;
  private static final int MOST_PARAMETERS = 5;
  private static final int MOST_COMPONENTS = 8;

  /** Where a long list of arguments is wanted, each with its reason. */
  private static final List<String> MANY_PARAMETERS = List.of();

  /**
   * Records still too wide, each with what it has now. It may only shrink: what got narrower or
   * went is taken out, and nothing is added.
   */
  private static final Map<String, Integer> WIDE =
      Map.ofEntries(
          // Answers of an engine entry; their parts are to become records of their own.
          Map.entry("DustSchedule", 11),
          Map.entry("GlueUpSchedule", 9),
          Map.entry("Row", 9),
          Map.entry("Batch", 9),
          // Requests whose keys the plan files and the pages write too.
          Map.entry("FitRequest", 9),
          Map.entry("Part", 10),
          // Everything a site or one of its pages is made from.
          Map.entry("Content", 9),
          Map.entry("LibraryRecord", 11),
          // The measures of a bit as its drawing takes them.
          Map.entry("BitGeometry", 13));

  /**
   * One method or constructor.
   *
   * @param name with its file
   * @param lines from its first word to its brace
   * @param parameters how many
   * @param constructor whether it is one
   */
  private record Method(String name, int lines, int parameters, boolean constructor) {}

  @Test
  void filesStaySmall() throws IOException {
    List<Integer> sizes = new ArrayList<>();
    List<String> tooLong = new ArrayList<>();
    for (Sources.Source source : Sources.main()) {
      int lines = source.lines().size();
      sizes.add(lines);
      if (lines > LONGEST_FILE) {
        tooLong.add(source.path() + " has " + lines + " lines");
      }
    }
    int median = share(sizes, 0.5);
    System.out.println(
        "files: " + sizes.size() + ", median " + median + ", longest " + share(sizes, 1));
    assertEquals(List.of(), tooLong);
    assertTrue(median < MEDIAN_FILE, "median " + median);
  }

  @Test
  void methodsStaySmall() throws IOException {
    List<Integer> sizes = new ArrayList<>();
    List<String> tooLong = new ArrayList<>();
    for (Method method : methods()) {
      sizes.add(method.lines());
      if (method.lines() > LONGEST_METHOD) {
        tooLong.add(method.name() + " has " + method.lines() + " lines");
      }
    }
    int nine = share(sizes, 0.9);
    System.out.println(
        "methods: "
            + sizes.size()
            + ", median "
            + share(sizes, 0.5)
            + ", 90th percentile "
            + nine
            + ", longest "
            + share(sizes, 1));
    assertEquals(List.of(), tooLong);
    assertTrue(nine < NINE_METHODS_IN_TEN, "90th percentile " + nine);
  }

  @Test
  void methodsTakeFewParameters() throws IOException {
    List<String> tooMany = new ArrayList<>();
    for (Method method : methods()) {
      int most = method.constructor() ? MOST_COMPONENTS : MOST_PARAMETERS;
      if (method.parameters() > most && !MANY_PARAMETERS.contains(method.name())) {
        tooMany.add(method.name() + " takes " + method.parameters() + " parameters");
      }
    }
    assertEquals(List.of(), tooMany, "make a record of the request");
  }

  /**
   * What a record holds is written in a list without names; a long one can't be read or checked.
   */
  @Test
  void recordsHaveFewComponents() throws IOException {
    Map<String, Integer> wide = new TreeMap<>();
    for (Sources.Source source : Sources.main()) {
      new TreeScanner<Void, Void>() {
        @Override
        public Void visitClass(ClassTree tree, Void none) {
          int components = components(tree);
          if (components > MOST_COMPONENTS) {
            wide.merge(tree.getSimpleName().toString(), components, Math::max);
          }
          return super.visitClass(tree, null);
        }
      }.scan(source.unit(), null);
    }
    assertEquals(new TreeMap<>(WIDE), wide, "make records of what belongs together");
  }

  /** How many components a record has; none for another type. The parser tells them as fields. */
  private static int components(ClassTree tree) {
    if (tree.getKind() != Tree.Kind.RECORD) {
      return 0;
    }
    int count = 0;
    for (Tree member : tree.getMembers()) {
      if (member instanceof VariableTree field
          && !field.getModifiers().getFlags().contains(Modifier.STATIC)) {
        count++;
      }
    }
    return count;
  }

  @Test
  void noVagueNames() throws IOException {
    List<String> vague =
        Sources.main().stream()
            .map(Sources.Source::path)
            .filter(path -> path.matches(".*(Manager|Helper|Utils?|Impl)\\.java"))
            .toList();
    assertEquals(List.of(), vague);
  }

  private static List<Method> methods() throws IOException {
    List<Method> methods = new ArrayList<>();
    for (Sources.Source source : Sources.main()) {
      new TreeScanner<Void, Void>() {
        @Override
        public Void visitClass(ClassTree tree, Void none) {
          for (Tree member : tree.getMembers()) {
            if (member instanceof MethodTree method) {
              add(method, components(tree));
            }
          }
          return super.visitClass(tree, null);
        }

        private void add(MethodTree tree, int components) {
          LineMap lines = source.unit().getLineMap();
          long start = source.positions().getStartPosition(source.unit(), tree);
          long end = source.positions().getEndPosition(source.unit(), tree);
          if (start >= 0 && end > start) {
            int count = (int) (lines.getLineNumber(end - 1) - lines.getLineNumber(start)) + 1;
            boolean constructor = tree.getName().contentEquals("<init>");
            int parameters = tree.getParameters().size();
            // A record's own constructor is counted by its components.
            boolean own = constructor && parameters == components;
            methods.add(
                new Method(
                    source.path() + " " + tree.getName(),
                    count,
                    own ? 0 : parameters,
                    constructor));
          }
        }
      }.scan(source.unit(), null);
    }
    return methods;
  }

  private static int share(List<Integer> sizes, double share) {
    List<Integer> sorted = sizes.stream().sorted().toList();
    return sorted.get((int) Math.round(share * (sorted.size() - 1)));
  }
}
