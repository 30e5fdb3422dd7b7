package benchlore.schedules.glueup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.Adhesive.Setting;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How much warmth hurries an adhesive is the adhesive's own, for film and pot apart. */
class AdhesiveSpeedTest {
  private static Samples.AdhesiveBuilder reacting() {
    Samples.AdhesiveBuilder adhesive = Samples.yellow();
    adhesive.setting = Setting.REACTION;
    adhesive.minimum = Samples.of(5, Unit.CELSIUS);
    adhesive.maximum = Optional.of(Samples.of(55, Unit.CELSIUS));
    return adhesive;
  }

  private static double clampHours(Samples.AdhesiveBuilder adhesive, double celsius) {
    GlueUpRequest request =
        Samples.in(
            Samples.request(adhesive.build(), Samples.panel(1)), Climate.steady(celsius, 50));
    return Milestones.clampSeconds(request, request.start()).orElseThrow() / 3600;
  }

  private static double potMinutes(Samples.AdhesiveBuilder adhesive, double celsius) {
    GlueUpRequest request =
        Samples.in(
            Samples.request(adhesive.build(), Samples.panel(1)), Climate.steady(celsius, 50));
    return BatchLimits.at(request, request.start()).potSecond() / 60;
  }

  @Test
  void resorcinolGainsTwoInFortyFahrenheit() {
    // Forest Products Laboratory, laminated red oak beams (1947): 16 h at 80 F or 8 h at 120 F.
    Samples.AdhesiveBuilder resorcinol = reacting();
    resorcinol.clamp = Samples.minutes(960, 960);
    resorcinol.reference = Samples.of((80 - 32) / 1.8, Unit.CELSIUS);
    resorcinol.q10 = Optional.of(Samples.range(1.4, 2, Unit.RATIO));
    double found = clampHours(resorcinol, (120 - 32) / 1.8);
    assertEquals(8, found, 0.5);
    resorcinol.q10 = Optional.empty();
    assertTrue(clampHours(resorcinol, (120 - 32) / 1.8) < 4, "the usual rule is far too hopeful");
  }

  @Test
  void epoxyHalvesItsPotLifeWhereTheFilmGainsATrifle() {
    // Epoxy question page: for each 18 F below 77 F pot life doubles, a thin film takes 1.3 times.
    Samples.AdhesiveBuilder epoxy = reacting();
    epoxy.reference = Samples.of(25, Unit.CELSIUS);
    epoxy.clamp = Samples.minutes(600, 600);
    epoxy.pot = Optional.of(Samples.minutes(30, 30));
    epoxy.q10 = Optional.of(Samples.of(1.3, Unit.RATIO));
    epoxy.potQ10 = Optional.of(Samples.of(2, Unit.RATIO));
    assertEquals(13, clampHours(epoxy, 15), 0.01);
    assertEquals(60, potMinutes(epoxy, 15), 0.01);
    assertEquals(15, potMinutes(epoxy, 35), 0.01);
    epoxy.potQ10 = Optional.empty();
    assertEquals(39, potMinutes(epoxy, 15), 0.01);
  }

  @Test
  void aRecordMayStateArrheniusOrADatumInstead() {
    Samples.AdhesiveBuilder adhesive = reacting();
    adhesive.reference = Samples.of(20, Unit.CELSIUS);
    adhesive.clamp = Samples.minutes(600, 600);
    adhesive.energy = Optional.of(Samples.of(40_000, Unit.JOULE_PER_MOLE));
    // Maturity teaching page: 24 h at 35 C count 53.35 h at 20 C with E = 40 kJ/mol.
    assertEquals(10 * 24 / 53.35, clampHours(adhesive, 35), 0.001);
    adhesive.energy = Optional.empty();
    adhesive.datum = Optional.of(Samples.of(0, Unit.CELSIUS));
    assertEquals(20, clampHours(adhesive, 10), 0.001);
    assertEquals(5, clampHours(adhesive, 40), 0.001);
  }

  @Test
  void twoRulesAtOnceAreRefused() {
    Samples.AdhesiveBuilder adhesive = reacting();
    adhesive.q10 = Optional.of(Samples.of(2, Unit.RATIO));
    adhesive.datum = Optional.of(Samples.of(0, Unit.CELSIUS));
    Answer<GlueUpSchedule> answer =
        GlueUp.plan(Samples.request(adhesive.build(), Samples.panel(1)));
    assertEquals("adhesive", answer.fold(given -> "", refused -> refused.reasons().get(0).input()));
  }

  @Test
  void aRoomThatHeatsPastTheMostBeforeTheJointIsPressedIsRefused() {
    Samples.AdhesiveBuilder adhesive = reacting();
    adhesive.maximum = Optional.of(Samples.of(25, Unit.CELSIUS));
    adhesive.open = Samples.minutes(300, 300);
    GlueUpRequest request = Samples.request(adhesive.build(), Samples.panel(8));
    GlueUpRequest slow = Samples.with(request, new GlueUpRequest.Pace(1200, 400, 20, 1));
    // 24 deg C when begun at nine, past 25 within the two hours and a half it takes.
    Climate morning = Climate.swing(16, 32, 50);
    assertTrue(morning.at(request.start()).celsius() < 25);
    Answer<GlueUpSchedule> answer = GlueUp.plan(Samples.in(slow, morning));
    assertEquals("climate", answer.fold(given -> "given", no -> no.reasons().get(0).input()));
    assertTrue(
        GlueUp.plan(Samples.in(slow, Climate.swing(16, 24, 50)))
            instanceof Answer.Given<GlueUpSchedule>);
  }
}
