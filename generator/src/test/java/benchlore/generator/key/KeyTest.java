package benchlore.generator.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LibraryRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The keys grown from the real records: no record out of reach, no dead end, no long chain. */
class KeyTest {
  private static final int LONGEST_LIST = 8;

  private static Library library;

  @BeforeAll
  static void loadContent() throws IOException {
    library = LibraryLoader.load(Path.of("..", "content")).value().orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"ROUTER_BITS", "TOOLS", "DEFECTS"})
  void everyRecordIsReachedInSixQuestions(Kind kind) {
    Key.Node key = Key.grow(library.of(kind), KeyQuestions.of(kind));
    Set<String> reached = new TreeSet<>();
    collect(key, reached);
    Set<String> all = new TreeSet<>();
    library.of(kind).forEach(entry -> all.add(entry.id()));
    assertEquals(all, reached);
    assertTrue(key.depth() <= Key.MOST_QUESTIONS, () -> "depth " + key.depth());
    assertFalse(key.leaf());
  }

  @Test
  void noAnswerLeadsNowhereAndNoneIsTheOnlyOne() {
    for (Kind kind : List.of(Kind.ROUTER_BITS, Kind.TOOLS, Kind.DEFECTS)) {
      check(Key.grow(library.of(kind), KeyQuestions.of(kind)));
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"ROUTER_BITS", "TOOLS", "DEFECTS"})
  void noLastListIsLong(Kind kind) {
    List<List<String>> lists = new ArrayList<>();
    lists(Key.grow(library.of(kind), KeyQuestions.of(kind)), lists);
    List<String> longest =
        lists.stream().max(Comparator.comparingInt(List::size)).orElse(List.of());
    System.out.println(
        "key of "
            + kind.folder()
            + ": "
            + lists.size()
            + " last lists, longest "
            + longest.size()
            + " "
            + longest);
    assertTrue(longest.size() <= LONGEST_LIST, () -> longest.size() + ": " + longest);
  }

  @Test
  void noQuestionHasMoreAnswersThanAPageCanHold() {
    for (Kind kind : List.of(Kind.ROUTER_BITS, Kind.TOOLS, Kind.DEFECTS)) {
      assertTrue(
          mostAnswers(Key.grow(library.of(kind), KeyQuestions.of(kind))) <= Key.MOST_ANSWERS);
    }
  }

  @Test
  void fewRecordsAreOnlyListed() {
    List<LibraryRecord> three = library.of(Kind.ROUTER_BITS).subList(0, 3);
    assertTrue(Key.grow(three, KeyQuestions.of(Kind.ROUTER_BITS)).leaf());
  }

  @Test
  void questionWithoutAPlaceForARecordIsAFault() {
    KeyQuestion question = new KeyQuestion("Colour?", List.of("red"), entry -> Set.of("blue"));
    LibraryRecord entry = library.of(Kind.TOOLS).get(0);
    assertThrows(IllegalStateException.class, () -> question.of(entry));
  }

  private static void lists(Key.Node node, List<List<String>> lists) {
    if (node.leaf()) {
      lists.add(node.entries().stream().map(LibraryRecord::id).toList());
    }
    node.answers().forEach(answer -> lists(answer.then(), lists));
  }

  private static int mostAnswers(Key.Node node) {
    int most = node.answers().size();
    for (Key.Answer answer : node.answers()) {
      most = Math.max(most, mostAnswers(answer.then()));
    }
    return most;
  }

  private static void check(Key.Node node) {
    assertFalse(node.entries().isEmpty());
    if (node.leaf()) {
      return;
    }
    assertTrue(node.answers().size() > 1, node.question());
    node.answers().forEach(answer -> check(answer.then()));
  }

  private static void collect(Key.Node node, Set<String> reached) {
    if (node.leaf()) {
      node.entries().forEach(entry -> reached.add(entry.id()));
    }
    node.answers().forEach(answer -> collect(answer.then(), reached));
  }
}
