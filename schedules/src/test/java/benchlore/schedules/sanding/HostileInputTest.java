package benchlore.schedules.sanding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.Pores;
import benchlore.schedules.material.Sheen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nonsense in, a typed refusal out. */
class HostileInputTest {
  private static final double NAN = Double.NaN;
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  /** A question and the input that should be named. */
  record Nonsense(SandingRequest request, String input) {}

  static List<Nonsense> nonsense() {
    List<Nonsense> all = new ArrayList<>();
    start(all, new StartSurface.Planed(NAN, 0.03), "knifePitchMetre");
    start(all, new StartSurface.Planed(0.001, -0.03), "cutterRadiusMetre");
    start(all, new StartSurface.BallNose(0.006, 0), "stepoverMetre");
    start(all, new StartSurface.BallNose(0.006, 0.007), "stepoverMetre");
    start(all, new StartSurface.BallNose(INFINITE, 0.001), "ballDiameterMetre");
    start(all, new StartSurface.StraightCut(0.01, NAN), "feedPerFluteMetre");
    start(all, new StartSurface.TornGrain(-1), "depthMicron");
    start(all, new StartSurface.TornGrain(1e9), "depthMicron");
    start(all, new StartSurface.OldFilm(NAN, StartSurface.OldFilm.Fate.SCUFF), "filmMicron");
    wood(all, NAN, 600, "hardnessNewton");
    wood(all, 0, 600, "hardnessNewton");
    wood(all, 4000, INFINITE, "densityKilogramPerCubicMetre");
    area(all, 0, 0, "totalSquareMetre");
    area(all, NAN, 0, "totalSquareMetre");
    area(all, 1, 2, "endGrainSquareMetre");
    area(all, 1, -1, "endGrainSquareMetre");
    wanted(
        all,
        new SurfaceWanted(
            Questions.grades(0, 220), FinishLook.SATIN, Optional.empty(), 1, false, false));
    wanted(
        all,
        new SurfaceWanted(
            Questions.grades(180, 9000), FinishLook.SATIN, Optional.empty(), 1, false, false));
    shop(all, new SandingShop(List.of(), List.of(SandingTool.BLOCK), 1.7), "shelf");
    shop(all, new SandingShop(Questions.SHELF, List.of(), 1.7), "tools");
    shop(all, new SandingShop(Questions.SHELF, List.of(SandingTool.BELT), 1.7), "tools");
    shop(all, new SandingShop(Questions.SHELF, List.of(SandingTool.BLOCK), 1), "jumpLimitRatio");
    shop(all, new SandingShop(Questions.SHELF, List.of(SandingTool.BLOCK), NAN), "jumpLimitRatio");
    return all;
  }

  private static SandingRequest usual() {
    return Questions.of(new StartSurface.TornGrain(100));
  }

  private static void start(List<Nonsense> all, StartSurface start, String input) {
    all.add(new Nonsense(Questions.of(start), input));
  }

  private static void wood(List<Nonsense> all, double hardness, double density, String input) {
    SandingWood wood = new SandingWood(hardness, density, Pores.DIFFUSE, false, false, false);
    all.add(new Nonsense(Questions.with(usual(), wood), input));
  }

  private static void area(List<Nonsense> all, double total, double ends, String input) {
    all.add(new Nonsense(Questions.with(usual(), new SandingArea(total, ends, 1)), input));
  }

  private static void wanted(List<Nonsense> all, SurfaceWanted wanted) {
    all.add(new Nonsense(Questions.with(usual(), wanted), "finalGrade"));
  }

  private static void shop(List<Nonsense> all, SandingShop shop, String input) {
    all.add(new Nonsense(usual().withShop(shop), input));
  }

  @ParameterizedTest
  @MethodSource("nonsense")
  void isRefusedByName(Nonsense nonsense) {
    assertEquals(List.of(nonsense.input()), Questions.refused(Sanding.plan(nonsense.request())));
    assertEquals(List.of(nonsense.input()), Questions.refused(ShelfGap.plan(nonsense.request())));
  }

  @Test
  void everyReasonIsToldAtOnce() {
    SandingRequest request =
        new SandingRequest(
            new StartSurface.TornGrain(NAN),
            new SandingWood(-1, NAN, Pores.NONE, false, false, false),
            new SandingArea(0, 0, 1),
            Questions.film(180, 220),
            new SandingShop(List.of(), List.of(), 0));
    assertEquals(
        List.of(
            "depthMicron",
            "hardnessNewton",
            "densityKilogramPerCubicMetre",
            "totalSquareMetre",
            "shelf",
            "tools",
            "jumpLimitRatio"),
        Questions.refused(Sanding.plan(request)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -5, 1e9, Double.NaN, Double.NEGATIVE_INFINITY})
  void nearestGradeOfNonsenseIsRefused(double micron) {
    assertEquals(List.of("micron"), Questions.refused(Grits.nearest(GritSystem.CAMI, micron)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 1e9, Double.NaN, Double.POSITIVE_INFINITY})
  void millingNonsenseIsRefused(double figure) {
    MillingPass feed = new MillingPass(0.006, figure, 0.0002, 0.002, 1);
    MillingPass ball = new MillingPass(figure, 0.02, 0.0002, 0.002, 1);
    MillingPass finest = new MillingPass(0.006, 0.02, figure, 0.002, 1);
    MillingPass coarsest = new MillingPass(0.006, 0.02, 0.0002, figure, 1);
    for (MillingPass pass : List.of(feed, ball, finest, coarsest)) {
      Answer<MachineOrSandCurve> answer =
          MachineOrSand.plan(new MachineOrSandRequest(pass, usual()));
      assertTrue(!Questions.refused(answer).isEmpty());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 1e9, Double.NaN, Double.POSITIVE_INFINITY})
  void rubOutNonsenseIsRefused(double figure) {
    SandingShop shop = Questions.orbital(GritTable.FEPA_P);
    assertEquals(
        List.of("filmMicron", "levelMicron", "areaSquareMetre"),
        Questions.refused(
            RubOut.plan(new RubOutRequest(Sheen.SATIN, figure, figure, figure, shop))));
  }

  @Test
  void ridgesOutsideTheirRangeAreNotANumber() {
    assertTrue(Double.isNaN(ArcMarks.heightMetre(0.003, 0.007)));
    assertTrue(Double.isNaN(ArcMarks.heightMetre(-0.003, 0.001)));
    assertTrue(Double.isNaN(ArcMarks.pitchMetre(0.003, 0.004)));
    assertTrue(Double.isNaN(ArcMarks.radiusMetre(0.001, 0)));
    assertTrue(Double.isNaN(ArcMarks.knifePitchMetre(0.1, 0, 2)));
  }

  @Test
  void nullIsTheCallersMistake() {
    assertThrows(NullPointerException.class, () -> Sanding.plan(null));
    assertThrows(NullPointerException.class, () -> new StartSurface.Sawn(null));
  }
}
