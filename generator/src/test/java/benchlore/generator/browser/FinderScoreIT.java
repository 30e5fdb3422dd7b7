package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * How well the finder answers questions in lay words, written by people who had not read the
 * records. The ranking is tuned on one half alone; the other half says what it is worth. Both are
 * printed.
 *
 * <p>The floors are what was measured less two points: a change that answers fewer questions has to
 * say so here.
 */
class FinderScoreIT {
  /**
   * A question.
   *
   * @param words what is typed
   * @param accepted ids of right answers; none for a question of another world
   */
  private record Question(String words, Set<String> accepted) {}

  /** A half's result, percent of its questions; the last is a share of those of another world. */
  private record Score(double first, double three, double ten, double nothing) {}

  private static Browser browser;

  @BeforeAll
  static void openFrontPage() {
    SiteFolder site = SiteFolder.fromBuild();
    browser = Browser.start();
    browser.open(site.address("index.html"));
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  @Test
  void answersTheHalfItWasTunedOn() throws IOException {
    Score score = score("tune");
    assertTrue(score.first() >= FLOOR_TUNE.first(), score.toString());
    assertTrue(score.three() >= FLOOR_TUNE.three(), score.toString());
    assertTrue(score.ten() >= FLOOR_TUNE.ten(), score.toString());
    assertTrue(score.nothing() >= FLOOR_TUNE.nothing(), score.toString());
  }

  @Test
  void answersTheHalfHeldBack() throws IOException {
    Score score = score("held-back");
    assertTrue(score.first() >= FLOOR_HELD.first(), score.toString());
    assertTrue(score.three() >= FLOOR_HELD.three(), score.toString());
    assertTrue(score.ten() >= FLOOR_HELD.ten(), score.toString());
    assertTrue(score.nothing() >= FLOOR_HELD.nothing(), score.toString());
  }

  private static final Score FLOOR_TUNE = new Score(84.1, 96.8, 98, 84);
  private static final Score FLOOR_HELD = new Score(81.6, 91.9, 95, 69);

  @Test
  void findsNothingForOtherWorlds() throws IOException {
    List<String> asked = lines("tune-off-topic");
    List<String> answered = answered(asked);
    System.out.printf(
        "finder, tune-off-topic: nothing fits %d of %d%n",
        asked.size() - answered.size(), asked.size());
    assertTrue(answered.size() <= 0.20 * asked.size(), answered.toString());
  }

  @Test
  void findsSomethingForTheShop() throws IOException {
    List<String> asked = lines("tune-on-topic");
    List<String> answered = answered(asked);
    System.out.printf(
        "finder, tune-on-topic: something found for %d of %d%n", answered.size(), asked.size());
    List<String> not = new ArrayList<>(asked);
    not.removeAll(answered);
    assertTrue(answered.size() >= 0.97 * asked.size(), not.toString());
  }

  private static List<String> answered(List<String> asked) {
    List<?> found =
        (List<?>) browser.script("return arguments[0].map(q => benchlore.find(q).length);", asked);
    List<String> answered = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      if (((Number) found.get(i)).intValue() > 0) {
        answered.add(asked.get(i));
      }
    }
    return answered;
  }

  @Test
  void everyAcceptedAnswerIsARecord() throws IOException {
    SiteFolder site = SiteFolder.fromBuild();
    List<String> missing = new ArrayList<>();
    for (String half : List.of("tune", "held-back")) {
      for (Question question : questions(half)) {
        for (String id : question.accepted()) {
          if (site.pages().stream().noneMatch(page -> page.endsWith("/" + id + ".html"))) {
            missing.add(id);
          }
        }
      }
    }
    assertEquals(List.of(), missing);
  }

  private static Score score(String half) throws IOException {
    List<Question> questions = questions(half);
    List<?> answers =
        (List<?>)
            browser.script(
                "return arguments[0].map(q => benchlore.find(q).map(r => r.id));",
                questions.stream().map(Question::words).toList());
    int asked = 0;
    int[] within = new int[3];
    int elsewhere = 0;
    int nothing = 0;
    for (int i = 0; i < questions.size(); i++) {
      List<?> ids = (List<?>) answers.get(i);
      if (questions.get(i).accepted().isEmpty()) {
        elsewhere++;
        nothing += ids.isEmpty() ? 1 : 0;
      } else {
        asked++;
        int place = place(ids, questions.get(i).accepted());
        within[0] += place < 1 ? 1 : 0;
        within[1] += place < 3 ? 1 : 0;
        within[2] += place < 10 ? 1 : 0;
      }
    }
    Score score =
        new Score(
            100.0 * within[0] / asked,
            100.0 * within[1] / asked,
            100.0 * within[2] / asked,
            100.0 * nothing / elsewhere);
    System.out.printf(
        "finder, %s: %d questions, right first %.1f %%, in three %.1f %%, in ten %.1f %%; nothing"
            + " fits %d of %d%n",
        half, asked, score.first(), score.three(), score.ten(), nothing, elsewhere);
    return score;
  }

  private static int place(List<?> ids, Set<String> accepted) {
    for (int i = 0; i < ids.size(); i++) {
      if (accepted.contains(String.valueOf(ids.get(i)))) {
        return i;
      }
    }
    return Integer.MAX_VALUE;
  }

  private static List<Question> questions(String half) throws IOException {
    List<Question> questions = new ArrayList<>();
    for (String line : lines(half)) {
      int tab = line.indexOf('\t');
      String ids = line.substring(tab + 1);
      questions.add(
          new Question(
              line.substring(0, tab), ids.equals("-") ? Set.of() : Set.of(ids.split(",", -1))));
    }
    return questions;
  }

  private static List<String> lines(String name) throws IOException {
    try (InputStream in = FinderScoreIT.class.getResourceAsStream("/finder/" + name + ".tsv")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.startsWith("#")).toList();
    }
  }
}
