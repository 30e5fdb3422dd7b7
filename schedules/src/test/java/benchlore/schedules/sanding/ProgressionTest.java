package benchlore.schedules.sanding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.Pores;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Worked cases with the grades a master would sign, written down from the trade before the engine
 * was asked; the display name prints the reason. Where the trade takes either of several ways, all
 * of them are named.
 */
class ProgressionTest {
  private static final List<Integer> USUAL = List.of(80, 100, 120, 150, 180, 220, 320);

  /** A row of the table. */
  record Row(
      String surface, String wood, FinishLook look, String waterborne, int coarsestP, int finestP) {

    SandingRequest request(String shelf) {
      SurfaceWanted wanted =
          new SurfaceWanted(
              Questions.grades(coarsestP, finestP),
              look,
              Optional.empty(),
              1,
              waterborne.equals("yes"),
              false);
      SandingShop shop =
          new SandingShop(
              ProgressionTest.shelf(shelf),
              List.of(SandingTool.RANDOM_ORBIT, SandingTool.BLOCK),
              SandingShop.USUAL_JUMP);
      return new SandingRequest(
          ProgressionTest.surface(surface),
          ProgressionTest.wood(wood),
          new SandingArea(1, 0, 1),
          wanted,
          shop);
    }
  }

  @ParameterizedTest(name = "{0}: {8}: {9}")
  @CsvFileSource(resources = "/sanding-progressions.csv", numLinesToSkip = 1)
  void theGradesAreThoseAMasterWouldSign(
      String job,
      String surface,
      String wood,
      FinishLook look,
      String waterborne,
      int coarsestP,
      int finestP,
      String shelf,
      String sequences,
      String why) {
    Row row = new Row(surface, wood, look, waterborne, coarsestP, finestP);
    Answer<SandingSchedule> answer = Sanding.plan(row.request(shelf));
    String told = answer.fold(given -> grades(given.value()), ProgressionTest::refusal);
    assertTrue(List.of(sequences.split("\\|", -1)).contains(told), job + ": " + told + ": " + why);
  }

  private static String grades(SandingSchedule schedule) {
    List<String> numbers = new ArrayList<>();
    schedule.passes().forEach(pass -> numbers.add(String.valueOf(pass.grit().number())));
    return numbers.isEmpty() ? "nothing" : String.join(" ", numbers);
  }

  private static String refusal(Answer.Refused<SandingSchedule> refused) {
    assertEquals(1, refused.reasons().size());
    String remedy = refused.reasons().get(0).remedy().pattern();
    return "refused:" + remedy.substring(remedy.lastIndexOf(": ") + 1, remedy.length() - 1);
  }

  private static List<Grit> shelf(String words) {
    List<Grit> shelf = new ArrayList<>();
    if (words.equals("usual")) {
      USUAL.forEach(number -> shelf.add(Questions.p(number)));
      return shelf;
    }
    for (String number : words.split(" ", -1)) {
      shelf.add(Questions.p(Integer.parseInt(number)));
    }
    return shelf;
  }

  static StartSurface surface(String words) {
    return switch (words) {
      case "sawmill" -> new StartSurface.Sawn(SawnBy.SAWMILL);
      case "bandsawn" -> new StartSurface.Sawn(SawnBy.BANDSAW);
      case "circular-sawn" -> new StartSurface.Sawn(SawnBy.CIRCULAR_SAW);
      case "planed" -> new StartSurface.Planed(0.0015, 0.03);
      case "finely planed" -> new StartSurface.Planed(0.001, 0.03);
      case "fine ball" -> new StartSurface.BallNose(0.006, 0.0005);
      case "ball" -> new StartSurface.BallNose(0.012, 0.0012);
      case "coarse ball" -> new StartSurface.BallNose(0.012, 0.003);
      case "very coarse ball" -> new StartSurface.BallNose(0.012, 0.006);
      case "straight" -> new StartSurface.StraightCut(0.022, 0.00015);
      case "torn" -> new StartSurface.TornGrain(300);
      case "old film" -> new StartSurface.OldFilm(60, StartSurface.OldFilm.Fate.REMOVE);
      case "sanded 80" -> new StartSurface.SandedTo(Questions.p(80));
      case "sanded 120" -> new StartSurface.SandedTo(Questions.p(120));
      case "sanded 180" -> new StartSurface.SandedTo(Questions.p(180));
      default -> throw new IllegalArgumentException(words);
    };
  }

  static SandingWood wood(String name) {
    return switch (name) {
      case "cherry" -> Questions.CHERRY;
      case "curly" -> new SandingWood(4400, 560, Pores.DIFFUSE, false, true, false);
      case "walnut" -> new SandingWood(4490, 610, Pores.SEMI_RING, true, false, false);
      case "oak" -> new SandingWood(5990, 750, Pores.RING, true, false, false);
      case "ash" -> Questions.ASH;
      case "maple" -> new SandingWood(6450, 705, Pores.DIFFUSE, false, false, false);
      case "birch" -> new SandingWood(5600, 690, Pores.DIFFUSE, false, false, false);
      case "sapele" -> new SandingWood(6280, 640, Pores.DIFFUSE, true, false, false);
      case "teak" -> new SandingWood(4740, 655, Pores.RING, true, false, true);
      case "pine" -> Questions.PINE;
      case "larch" -> new SandingWood(3690, 575, Pores.NONE, false, false, true);
      default -> throw new IllegalArgumentException(name);
    };
  }
}
