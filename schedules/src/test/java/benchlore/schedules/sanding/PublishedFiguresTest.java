package benchlore.schedules.sanding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.material.Sheen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures published elsewhere, a row each; the display name prints the row. */
class PublishedFiguresTest {
  private static final String NAME = "{arguments}";
  private static final int EVERY_GRADE = 24;

  @ParameterizedTest(name = NAME)
  @CsvFileSource(resources = "/published/sanding/grain-sizes.csv", numLinesToSkip = 1)
  void grainSize(
      GritSystem system, int number, double micron, double tolerance, String status, String from) {
    assertEquals(
        micron, Grits.find(system, number).orElseThrow().micron(), tolerance, status + from);
  }

  @ParameterizedTest(name = NAME)
  @CsvFileSource(resources = "/published/sanding/conversions.csv", numLinesToSkip = 1)
  void conversion(GritSystem from, int fromNumber, GritSystem to, int toNumber) {
    Grit grit = Grits.find(from, fromNumber).orElseThrow();
    assertEquals(toNumber, Questions.given(Grits.convert(grit, to)).grit().number());
  }

  @ParameterizedTest(name = NAME)
  @CsvFileSource(resources = "/published/sanding/ridges.csv", numLinesToSkip = 1)
  void ridge(double radius, double pitch, double height, double tolerance) {
    assertEquals(height, ArcMarks.heightMetre(radius * 1e-3, pitch * 1e-3) * 1e3, tolerance);
  }

  @ParameterizedTest(name = NAME)
  @CsvFileSource(resources = "/published/sanding/ridges.csv", numLinesToSkip = 1)
  void inverse(double radius, double pitch, double height, double tolerance) {
    double slope = tolerance * pitch / height;
    double radiusSlope = tolerance * radius / height;
    assertEquals(pitch, ArcMarks.pitchMetre(radius * 1e-3, height * 1e-3) * 1e3, slope + 1e-9);
    assertEquals(
        radius, ArcMarks.radiusMetre(pitch * 1e-3, height * 1e-3) * 1e3, radiusSlope + 1e-9);
  }

  @ParameterizedTest(name = NAME)
  @CsvFileSource(resources = "/published/sanding/knife-marks.csv", numLinesToSkip = 1)
  void knifeMarks(double feedFootAMinute, double rpm, int knives, double marksAnInch) {
    double pitch = ArcMarks.knifePitchMetre(feedFootAMinute * 0.3048 / 60, rpm, knives);
    assertEquals(marksAnInch, 0.0254 / pitch, 0.001);
  }

  @ParameterizedTest(name = NAME)
  @CsvFileSource(resources = "/published/sanding/starts.csv", numLinesToSkip = 1)
  void firstGrade(String stock, String shelf, int firstGrade) {
    SandingRequest request = Questions.of(surface(stock)).withShop(shop(shelf, 1.7));
    List<SandingPass> passes = Questions.given(Sanding.plan(request)).passes();
    assertEquals(firstGrade, passes.get(0).grit().number());
  }

  private static StartSurface surface(String stock) {
    return switch (stock) {
      case "bandsawn" -> new StartSurface.Sawn(SawnBy.BANDSAW);
      case "circular-sawn" -> new StartSurface.Sawn(SawnBy.CIRCULAR_SAW);
      // One knife of a small planer doing all the work: ten marks an inch.
      case "planed-with-marks" -> new StartSurface.Planed(0.00254, 0.03);
      default -> throw new IllegalArgumentException(stock);
    };
  }

  @ParameterizedTest(name = NAME)
  @CsvFileSource(resources = "/published/sanding/sequences.csv", numLinesToSkip = 1)
  void sequenceIsAWayAndNoCheaperOneIsDearer(String job, String grades, double jumpLimit) {
    SandingShop shop = shop(grades, jumpLimit);
    List<Grit> shelf = shop.shelf();
    Grit last = shelf.get(shelf.size() - 1);
    SandingRequest request =
        Questions.with(
            Questions.of(new StartSurface.SandedTo(shelf.get(0))).withShop(shop),
            new SurfaceWanted(
                Questions.grades(last.number(), last.number()),
                FinishLook.SATIN,
                Optional.empty(),
                1,
                false,
                false));
    SandingSchedule schedule = Questions.given(Sanding.plan(request));
    assertEquals(last, schedule.passes().get(schedule.passes().size() - 1).grit());
    assertTrue(schedule.totals().faceSeconds() <= whole(shelf) + 1e-9, job);
  }

  private static double whole(List<Grit> shelf) {
    SandedStock stock = SandedStock.wood(Questions.CHERRY, 1, false);
    double seconds = 0;
    for (int i = 1; i < shelf.size(); i++) {
      double depth = stock.scratchMicron(shelf.get(i - 1));
      List<SandingTool> tools = List.of(SandingTool.RANDOM_ORBIT);
      AbrasiveCut cutting = AbrasiveCut.of(shelf.get(i), stock, tools).get(0);
      seconds += cutting.pass(depth, depth).seconds();
    }
    return seconds;
  }

  @ParameterizedTest(name = NAME)
  @CsvFileSource(resources = "/published/sanding/final-grades.csv", numLinesToSkip = 1)
  void finalGrade(String finish, int coarsestP, int finestP) {
    SandingRequest request =
        Questions.with(
            Questions.of(new StartSurface.TornGrain(150)), Questions.film(coarsestP, finestP));
    List<SandingPass> passes =
        Questions.given(Sanding.plan(request.withShop(Questions.orbital(GritTable.FEPA_P))))
            .passes();
    int last = passes.get(passes.size() - 1).grit().number();
    assertTrue(last >= coarsestP && last <= finestP, finish + ": " + last);
  }

  @ParameterizedTest(name = NAME)
  @CsvFileSource(resources = "/published/sanding/rub-outs.csv", numLinesToSkip = 1)
  void rubOut(Sheen sheen, int coarsestP, int finestP, String rubbing) {
    SandingShop shop =
        new SandingShop(GritTable.FEPA_P, List.of(SandingTool.BLOCK), SandingShop.USUAL_JUMP);
    RubOutSchedule schedule =
        Questions.given(RubOut.plan(new RubOutRequest(sheen, 120, 10, 0.5, shop)));
    int last = schedule.papers().get(schedule.papers().size() - 1).grit().number();
    assertTrue(last >= coarsestP && last <= finestP, "last paper P" + last);
    List<String> names = new ArrayList<>();
    schedule.rubbing().forEach(kind -> names.add(kind.name()));
    assertEquals(rubbing, String.join(" ", names));
  }

  @Test
  void coveringPassIsThePublishedInchASecond() {
    double padMetre = 0.125;
    double pace = SandingTool.RANDOM_ORBIT.row().cover() / padMetre;
    // Published as about one inch a second.
    assertEquals(0.0254, pace, 0.001);
  }

  @Test
  void halvingTheStepoverQuartersTheScallop() {
    double whole = ArcMarks.heightMetre(0.005, 0.001);
    assertEquals(4, whole / ArcMarks.heightMetre(0.005, 0.0005), 0.01);
  }

  @Test
  void tableHoldsEveryGradeOnceAndFalls() {
    assertTrue(Grits.all(GritSystem.FEPA_P).size() >= EVERY_GRADE);
    for (GritSystem system : GritSystem.values()) {
      List<Grit> grades = Grits.all(system);
      for (int i = 1; i < grades.size(); i++) {
        assertTrue(grades.get(i).number() > grades.get(i - 1).number());
        assertTrue(grades.get(i).micron() < grades.get(i - 1).micron());
      }
    }
  }

  private static SandingShop shop(String shelf, double jumpLimit) {
    List<Grit> grits = new ArrayList<>();
    for (String number : shelf.split(" ", -1)) {
      grits.add(Questions.p(Integer.parseInt(number)));
    }
    return new SandingShop(grits, List.of(SandingTool.RANDOM_ORBIT), jumpLimit);
  }
}
