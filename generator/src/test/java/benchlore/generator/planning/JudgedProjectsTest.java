package benchlore.generator.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.LoadResult;
import benchlore.generator.planning.JudgedProject.Check;
import benchlore.generator.planning.JudgedRules.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.Yaml;

/**
 * Made-up projects over all finishes and adhesives, held against what a master expects of each. The
 * expectations were written before the plans; one that is marked open must still fail, so that the
 * mark goes when the plan is mended.
 */
final class JudgedProjectsTest {
  private static final Path CONTENT = Path.of("..", "content");
  private static final Path REPORT = Path.of("target", "judged-projects.md");
  private static final List<JudgedProject> PROJECTS = JudgedProject.read();
  private static final Map<String, JudgedAnswer> ANSWERS = new TreeMap<>();

  @TempDir static Path folder;

  private static LibraryLoader loader;
  private static Library library;

  @BeforeAll
  static void load() throws IOException {
    loader = LibraryLoader.open(CONTENT);
    library = Content.library(loader).value().orElseThrow();
    for (JudgedProject project : PROJECTS) {
      answered(project).ifPresent(answer -> ANSWERS.put(project.id(), answer));
    }
  }

  @AfterAll
  static void report() throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add("| project | what a master expects | what comes out |");
    lines.add("|---|---|---|");
    PROJECTS.forEach(project -> lines.add(row(project)));
    Files.createDirectories(REPORT.getParent());
    Files.write(REPORT, lines);
  }

  @TestFactory
  Stream<DynamicTest> everyPlanIsWhatAMasterExpects() {
    return PROJECTS.stream()
        .map(p -> DynamicTest.dynamicTest(p.id(), () -> assertEquals(List.of(), wrong(p))));
  }

  @TestFactory
  Stream<DynamicTest> everyPlanKeepsWhatHoldsOfAll() {
    return JudgedProject.everywhere().stream()
        .map(c -> DynamicTest.dynamicTest(c.words(), () -> everywhere(c)));
  }

  @Test
  void everyFinishIsAskedForAtLeastOnce() {
    assertEquals(Set.of(), unasked(Kind.FINISHES));
  }

  @Test
  void everyAdhesiveIsAskedForAtLeastOnce() {
    assertEquals(Set.of(), unasked(Kind.ADHESIVES));
  }

  @Test
  void thereAreAtLeastSixtyProjectsEachWithAName() {
    long names = PROJECTS.stream().map(JudgedProject::id).distinct().count();
    assertEquals(PROJECTS.size(), names);
    assertTrue(names >= 60);
  }

  @Test
  void everyRuleOfTheVocabularyIsUsed() {
    Set<String> unused = JudgedRules.names();
    PROJECTS.forEach(p -> p.expect().forEach(c -> unused.remove(c.rule())));
    JudgedProject.everywhere().forEach(c -> unused.remove(c.rule()));
    assertEquals(Set.of(), unused);
  }

  private static Set<String> unasked(Kind kind) {
    Set<String> ids = new TreeSet<>();
    for (LibraryRecord entry : library.of(kind)) {
      ids.add(entry.id());
    }
    for (JudgedProject project : PROJECTS) {
      if (project.waitsFor().isEmpty()) {
        ids.remove(String.valueOf(project.plan().get("adhesive")));
        ids.removeIf(
            id -> String.valueOf(project.plan().get("finish")).contains("record=" + id + ","));
      }
    }
    return ids;
  }

  /** What came out; empty of a project in words the plan file can't read yet. */
  private static Optional<JudgedAnswer> answered(JudgedProject project) throws IOException {
    Path file = folder.resolve(project.id() + ".yaml");
    Files.writeString(file, new Yaml().dump(project.plan()));
    LoadResult<List<Planned>> read = Plans.of(loader, List.of(file), library);
    if (read.value().isPresent()) {
      return Optional.of(JudgedAnswer.of(project, read.value().get().get(0)));
    }
    return project.waitsFor().isPresent()
        ? Optional.empty()
        : Optional.of(JudgedAnswer.of(project, read.problems()));
  }

  private static List<String> wrong(JudgedProject project) {
    JudgedAnswer answer = ANSWERS.get(project.id());
    if (project.waitsFor().isPresent()) {
      return answer == null ? List.of() : List.of("it is read now, take out waits-for");
    }
    return project.expect().stream().flatMap(c -> broken(answer, c).stream()).toList();
  }

  private static Optional<String> broken(JudgedAnswer answer, Check check) {
    Verdict verdict = JudgedRules.of(answer, check);
    if (verdict.kept() != check.open().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        verdict.kept()
            ? "kept now, take out its open: " + check.words()
            : check.words() + ", since " + check.why() + "; came out: " + verdict.cameOut());
  }

  /** A row of the printed table: a project, what is expected and why, what came out. */
  private static String row(JudgedProject project) {
    JudgedAnswer answer = ANSWERS.get(project.id());
    List<String> expected = new ArrayList<>();
    List<String> came = new ArrayList<>();
    for (Check check : project.expect()) {
      expected.add(check.words() + ": " + check.why() + " (" + check.from() + ")");
      if (answer != null) {
        Verdict verdict = JudgedRules.of(answer, check);
        String open = check.open().map(why -> ", open: " + why).orElse("");
        came.add((verdict.kept() ? "✓ " : "✗ ") + verdict.cameOut() + open);
      }
    }
    if (answer == null) {
      came.add("not read yet: " + project.waitsFor().orElse(""));
    }
    return Stream.of(project.what(), String.join("<br>", expected), String.join("<br>", came))
        .map(JudgedProjectsTest::cell)
        .collect(Collectors.joining(" | ", "| ", " |"));
  }

  private static void everywhere(Check check) {
    List<String> broken = new ArrayList<>();
    for (JudgedAnswer answer : ANSWERS.values()) {
      if (answer.plan().isPresent() || !JudgedRules.needsPlan(check)) {
        Verdict verdict = JudgedRules.of(answer, check);
        if (!verdict.kept()) {
          broken.add(answer.project().id() + ": " + verdict.cameOut());
        }
      }
    }
    assertEquals(check.brokenBy(), broken.size(), () -> check.words() + " is broken by " + broken);
    assertEquals(check.brokenBy() > 0, check.open().isPresent(), "a number broken says why");
  }

  private static String cell(String text) {
    return text.replace("|", " or ");
  }
}
