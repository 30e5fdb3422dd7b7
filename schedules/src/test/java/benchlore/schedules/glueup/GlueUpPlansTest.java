package benchlore.schedules.glueup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.glueup.GlueUpRequest.Wood;
import benchlore.schedules.glueup.GlueUpSchedule.Batch;
import benchlore.schedules.glueup.GlueUpSchedule.Order;
import benchlore.schedules.material.Adhesive.Family;
import benchlore.schedules.material.Adhesive.Setting;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole plans, and the engine's integrals and splits against independent ones. */
class GlueUpPlansTest {
  private static List<String> codes(GlueUpRequest request) {
    return GlueUp.plan(request)
        .fold(
            given -> given.cautions().stream().map(caution -> caution.code()).toList(),
            refused -> List.of("refused"));
  }

  /** Simpson's rule of the general numeric library over the time in clamps gives the label back. */
  @ParameterizedTest
  @CsvSource({"12,24,60", "9,30,240", "15,22,720", "10,18,30", "18,35,1440"})
  void clampTimeIntegratesToTheLabel(double low, double high, double minutes) {
    Samples.AdhesiveBuilder adhesive = Samples.epoxy();
    adhesive.clamp = Samples.minutes(minutes, minutes);
    Climate climate = Climate.swing(low, high, 50);
    GlueUpRequest request =
        Samples.in(Samples.request(adhesive.build(), Samples.panel(1)), climate);
    Batch batch = Samples.given(request).batches().get(0);
    UnivariateFunction rate =
        t -> {
          Moment second = batch.tight().plusSeconds(Math.floor(t));
          double before = climate.at(second).celsius();
          double after = climate.at(second.plusSeconds(1)).celsius();
          double celsius = before + (after - before) * (t - Math.floor(t));
          return Math.exp(Math.log(2) * (celsius - 20) / 10);
        };
    double seconds = Duration.between(batch.tight(), batch.clampsOff()).seconds();
    double age = new SimpsonIntegrator(1e-6, 1e-6, 3, 30).integrate(1_000_000, rate, 0, seconds);
    assertEquals(minutes * 60, age, 5 + minutes * 60 * 0.001);
  }

  @ParameterizedTest
  @CsvSource({
    "POLYURETHANE_ONE_PART,isocyanate-adhesive",
    "EPOXY,epoxy-skin",
    "UREA_FORMALDEHYDE,formaldehyde-adhesive",
    "RESORCINOL,formaldehyde-adhesive",
    "CYANOACRYLATE,instant-adhesive",
    "CONTACT,flammable-vapour",
    "CONSTRUCTION,flammable-vapour",
    "HOT_HIDE,hot-adhesive",
    "HOT_MELT,hot-adhesive"
  })
  void hazardsStandFirst(Family family, String code) {
    Samples.AdhesiveBuilder adhesive = Samples.epoxy();
    adhesive.family = family;
    assertEquals(code, codes(Samples.request(adhesive.build(), Samples.panel(1))).get(0));
  }

  @Test
  void panelOfFourEdgesInOneGo() {
    GlueUpRequest request = Samples.request(Samples.yellow().build(), Samples.panel(4));
    GlueUpSchedule plan = Samples.given(request);
    assertEquals(1, plan.batches().size());
    // 0.8 x 0.02 m2 at 500 kPa is 8 kN: 4 clamps of 2.5 kN; 0.2 m apart: 1 + ceil(0.7238 / 0.2).
    GlueUpSchedule.Row row = plan.rows().get(0);
    assertEquals(4, row.neededForForce());
    assertEquals(5, row.neededForSpacing());
    assertEquals(5, row.count());
    assertEquals(2400, row.forceEachNewton(), 1e-9);
    // 4 x 0.016 m2 x 0.2 kg/m2 x 1.1 x 1.1
    assertEquals(0.015488, plan.glue().massKilogram(), 1e-12);
    assertEquals(0.015488 / 1100, plan.glue().volumeCubicMetre(), 1e-15);
    Batch batch = plan.batches().get(0);
    assertEquals(4 * (20 + 0.016 * 400), batch.spreadSecond(), 1e-9);
    assertEquals(5 * 20, batch.closeSecond(), 1e-9);
    assertEquals(Order.SPREAD_ALL, batch.order());
    // Wood at 9 % slows setting by 1/16 of 1 to 1.25 over 8 to 12 %.
    assertEquals(3600 * 1.0625, Duration.between(batch.tight(), batch.clampsOff()).seconds(), 1);
    assertEquals(7 * 86_400, plan.machine().afterSecond(), 300);
  }

  @Test
  void tooManyJointsForTheOpenTimeAreSplit() {
    GlueUpRequest request =
        Samples.with(
            Samples.request(Samples.yellow().build(), Samples.panel(12)), new Pace(60, 400, 30, 1));
    GlueUpSchedule plan = Samples.given(request);
    assertTrue(plan.batches().size() > 1);
    assertTrue(codes(request).contains("sub-assemblies"));
    for (int i = 1; i < plan.batches().size(); i++) {
      Batch before = plan.batches().get(i - 1);
      // The same panel: the next edge can't go on while the last is still in clamps.
      assertFalse(plan.batches().get(i).start().isBefore(before.clampsOff()));
    }
    GlueUpSchedule quick = Samples.given(Samples.with(request, new Pace(60, 400, 30, 6)));
    assertTrue(quick.batches().size() < plan.batches().size());
  }

  @Test
  void saysHowManyPeopleCloseItInOneGo() {
    GlueUpRequest request =
        Samples.with(
            Samples.request(Samples.yellow().build(), Samples.panel(8)), new Pace(90, 400, 60, 1));
    List<Caution> cautions =
        GlueUp.plan(request).fold(Answer.Given::cautions, refused -> List.<Caution>of());
    Caution steps =
        cautions.stream().filter(each -> each.code().equals("sub-assemblies")).findFirst().get();
    int people = (int) steps.measure().quantities().get(0).value();
    for (int some = 2; some <= people; some++) {
      GlueUpSchedule plan = Samples.given(Samples.with(request, new Pace(90, 400, 60, some)));
      assertEquals(some == people, plan.batches().size() == 1);
    }
  }

  /** Fewest batches by trying every way to cut the row of joints, with clamps one joint each. */
  @ParameterizedTest
  @CsvSource({"3,5,1", "5,5,1", "7,5,2", "12,5,1", "12,9,2", "20,6,1"})
  void splitIsAsCoarseAsAnyOther(int joints, int clamps, int people) {
    GlueUpRequest request =
        Samples.with(
            Samples.with(
                Samples.request(Samples.yellow().build(), Samples.rails(joints)),
                new Clamps(clamps, 2500, 0, 0)),
            new Pace(45, 400, 60, people));
    GlueUpSchedule plan = Samples.given(request);
    double hands = people == 1 ? 1 : 1.7;
    double spread = (45 + 0.0018 * 400) / hands;
    double clamp = 60 / hands;
    int[] fewest = new int[joints + 1];
    for (int end = 1; end <= joints; end++) {
      fewest[end] = Integer.MAX_VALUE;
      for (int size = 1; size <= Math.min(end, clamps); size++) {
        double open = plan.assembly().openSecond();
        double closed = plan.assembly().closedSecond();
        boolean all = size * spread <= open && size * clamp <= closed;
        boolean each = spread <= open && (size - 1) * spread + size * clamp <= closed;
        if (all || each) {
          fewest[end] = Math.min(fewest[end], fewest[end - size] + 1);
        }
      }
    }
    assertTrue(plan.batches().size() >= fewest[joints]);
    // More batches than the fewest only where starting early on free clamps ends sooner.
    double coarse = fewest[joints] * (3600.0 * 1.0625) + joints * (spread + clamp);
    assertTrue(plan.clampsOff().afterSecond() <= coarse + 60);
  }

  @Test
  void mixedAdhesiveKeepsToItsPotLife() {
    Samples.AdhesiveBuilder adhesive = Samples.epoxy();
    adhesive.pot = Optional.of(Samples.minutes(2, 2));
    GlueUpRequest request = Samples.request(adhesive.build(), Samples.rails(12));
    for (Batch batch : Samples.given(request).batches()) {
      assertTrue(batch.spreadSecond() <= 120);
    }
    adhesive.pot = Optional.empty();
    assertEquals(
        1, Samples.given(Samples.request(adhesive.build(), Samples.rails(12))).batches().size());
  }

  @Test
  void contactAdhesiveWaitsAndNeedsNoClamps() {
    Samples.AdhesiveBuilder adhesive = Samples.yellow();
    adhesive.family = Family.CONTACT;
    adhesive.setting = Setting.SOLVENT_LOSS;
    adhesive.waterBased = false;
    adhesive.open = Samples.minutes(10, 60);
    adhesive.clamp = Samples.of(0, Unit.SECOND);
    GlueUpRequest request =
        Samples.with(Samples.request(adhesive.build(), Samples.panel(1)), new Clamps(0, 0, 0, 0));
    GlueUpSchedule plan = Samples.given(request);
    assertEquals(600, plan.assembly().waitSecond(), 1e-9);
    assertEquals(0, plan.rows().get(0).count());
    Batch batch = plan.batches().get(0);
    assertTrue(Duration.between(batch.start(), batch.tight()).seconds() / 60 >= 10);
    assertEquals(batch.tight(), batch.clampsOff());
  }

  @Test
  void coldShortensTheOpenTimeOfHotGlue() {
    Samples.AdhesiveBuilder adhesive = Samples.yellow();
    adhesive.setting = Setting.COOLING;
    GlueUpRequest request = Samples.request(adhesive.build(), Samples.panel(1));
    double cool =
        Samples.given(Samples.in(request, Climate.steady(10, 50))).assembly().openSecond();
    double warm =
        Samples.given(Samples.in(request, Climate.steady(30, 50))).assembly().openSecond();
    assertEquals(300 / 1.4, cool, 1e-6);
    assertEquals(300, warm, 1e-6);
  }

  @Test
  void laterBatchesWaitForTheNightToPass() {
    Samples.AdhesiveBuilder adhesive = Samples.yellow();
    adhesive.clamp = Samples.minutes(240, 240);
    Climate climate = Climate.swing(4, 22, 50);
    GlueUpRequest from = Samples.request(adhesive.build(), Samples.panel(12));
    GlueUpRequest request =
        Samples.with(
            new GlueUpRequest(
                from.adhesive(),
                from.joints(),
                from.wood(),
                from.clamps(),
                climate,
                Samples.NINE.date().at(11, 0),
                from.pace()),
            new Pace(60, 400, 30, 1));
    GlueUpSchedule plan = Samples.given(request);
    assertTrue(plan.batches().size() > 1);
    for (Batch batch : plan.batches()) {
      double seconds = Duration.between(batch.start(), batch.clampsOff()).seconds();
      assertTrue(AirExtremes.coldestCelsius(climate, batch.start(), seconds) >= 8);
    }
    assertTrue(codes(request).contains("cold-night"));
  }

  @ParameterizedTest
  @CsvSource({
    "8,9,,WATER_LOSS,false",
    "8,10.5,moisture-apart,WATER_LOSS,false",
    "12,13,damp-wood,WATER_LOSS,false",
    "5,6,dry-wood,WATER_LOSS,false",
    "7.9,8,too-dry-to-cure,MOISTURE_REACTION,false",
    "8,9,oily-wood,WATER_LOSS,true"
  })
  void cautionsOfTheWood(double dry, double wet, String code, Setting setting, boolean oily) {
    Samples.AdhesiveBuilder adhesive = Samples.yellow();
    adhesive.setting = setting;
    List<String> found =
        codes(
            Samples.with(
                Samples.request(adhesive.build(), Samples.panel(1)),
                new Wood(600, oily, List.of(wet, dry), 0)));
    List<String> wood =
        found.stream()
            .filter(each -> !List.of("sunken-joint", "creep", "solvent-wipe").contains(each))
            .toList();
    assertEquals(code == null ? List.of() : List.of(code), wood);
    assertEquals(oily, found.contains("solvent-wipe"));
  }

  @Test
  void weakOrStrongClampsAreTold() {
    GlueUpRequest request = Samples.request(Samples.yellow().build(), Samples.panel(1));
    assertTrue(codes(Samples.with(request, new Clamps(6, 800, 0, 0))).contains("pressure-short"));
    assertTrue(codes(Samples.with(request, new Clamps(6, 9000, 0, 0))).contains("over-clamping"));
    assertTrue(codes(Samples.in(request, Climate.steady(20, 90))).contains("humid-air"));
  }

  @Test
  void workingGivesTheBatchTimesAgain() {
    // Six clamps of little force: the pressure calls for more than the shelf holds.
    GlueUpRequest request =
        Samples.with(
            Samples.with(
                Samples.request(Samples.yellow().build(), Samples.panel(2), Samples.rails(3)),
                new Clamps(6, 1000, 0, 0)),
            Pace.usual(2));
    List<WorkingLine> lines =
        GlueUp.plan(request).fold(Answer.Given::working, refused -> List.<WorkingLine>of());
    int checked = 0;
    for (WorkingLine line : lines) {
      double[] x = line.inputs().stream().mapToDouble(each -> each.quantity().value()).toArray();
      double result = line.result().quantity().value();
      if (line.key() == QuantityKey.BATCH_CLAMPING) {
        assertEquals(x[0] * x[1] / x[2], result, 1e-9);
        checked++;
      } else if (line.key() == QuantityKey.BATCH_SPREADING) {
        assertEquals((x[0] * x[1] + x[2] * x[3]) / x[4], result, 1e-9);
        checked++;
      }
    }
    assertEquals(2 * Samples.given(request).batches().size(), checked);
  }

  @Test
  void everyLineOfWorkingHasItsFiguresAndSource() {
    GlueUpRequest request =
        Samples.request(Samples.epoxy().build(), Samples.panel(2), Samples.rails(2));
    List<WorkingLine> lines =
        GlueUp.plan(request).fold(Answer.Given::working, refused -> List.<WorkingLine>of());
    assertTrue(lines.size() >= 20);
    for (WorkingLine line : lines) {
      assertFalse(line.inputs().isEmpty(), line::toString);
      assertFalse(line.formula().isBlank());
      assertEquals(Provenance.Kind.COMPUTED, line.result().from().kind());
    }
  }
}
