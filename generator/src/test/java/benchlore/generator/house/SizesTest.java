package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Files and methods stay small; lines are counted in the house format, documentation too. */
final class SizesTest {
  private static final int LONGEST_FILE = 400;
  private static final int MEDIAN_FILE = 90;
  private static final int LONGEST_METHOD = 40;
  private static final int NINE_METHODS_IN_TEN = 20;
  private static final int MOST_PARAMETERS = 5;

  /** Where a long list of arguments is wanted, each with its reason. */
  private static final List<String> MANY_PARAMETERS = List.of();

  /**
   * One method or constructor.
   *
   * @param name with its file
   * @param lines from its first word to its brace
   * @param parameters how many
   */
  private record Method(String name, int lines, int parameters) {}

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
      if (method.parameters() > MOST_PARAMETERS && !MANY_PARAMETERS.contains(method.name())) {
        tooMany.add(method.name() + " takes " + method.parameters() + " parameters");
      }
    }
    assertEquals(List.of(), tooMany, "make a record of the request");
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
        public Void visitMethod(MethodTree tree, Void none) {
          LineMap lines = source.unit().getLineMap();
          long start = source.positions().getStartPosition(source.unit(), tree);
          long end = source.positions().getEndPosition(source.unit(), tree);
          if (start >= 0 && end > start) {
            int count = (int) (lines.getLineNumber(end - 1) - lines.getLineNumber(start)) + 1;
            boolean constructor = tree.getName().contentEquals("<init>");
            methods.add(
                new Method(
                    source.path() + " " + tree.getName(),
                    count,
                    constructor ? 0 : tree.getParameters().size()));
          }
          return super.visitMethod(tree, null);
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
