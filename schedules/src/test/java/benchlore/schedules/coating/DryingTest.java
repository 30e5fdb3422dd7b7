package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** One coat: stages, monotone in temperature, humidity and thickness. */
class DryingTest {
  private static final Moment NINE = Moment.of(2026, 5, 4, 9, 0);

  private static DryingTimes times(Finish finish, double micron, Climate room) {
    return Answers.value(Coating.laid(new DryingRequest(finish, micron, room, NINE)));
  }

  private static double seconds(DryingTimes times, Stage stage) {
    return times.time(stage).orElseThrow().planned().seconds();
  }

  @Test
  void inTheReferenceAirEveryStageTakesWhatTheLabelSays() {
    for (DryingMechanism mechanism : DryingMechanism.values()) {
      FinishMaker maker = FinishMaker.of(mechanism);
      Finish finish = maker.make();
      DryingTimes times = times(finish, maker.wetFilm, Climate.steady(maker.referenceCelsius, 50));
      for (Stage stage : Stage.values()) {
        if (stage.of(finish).isPresent()) {
          double label = stage.of(finish).get().high();
          assertEquals(label, seconds(times, stage), 1, mechanism + " " + stage.words());
        }
      }
    }
  }

  @Test
  void aMixtureOpensBySlowestAndClosesByFastest() {
    FinishMaker maker = FinishMaker.oil();
    maker.mechanisms = List.of(DryingMechanism.EVAPORATION, DryingMechanism.OXIDATION);
    Climate warm = Climate.steady(25, 50);
    DryingTimes mixed = times(maker.make(), 80, warm);
    maker.mechanisms = List.of(DryingMechanism.EVAPORATION);
    DryingTimes thinner = times(maker.make(), 80, warm);
    maker.mechanisms = List.of(DryingMechanism.OXIDATION);
    DryingTimes oil = times(maker.make(), 80, warm);
    assertEquals(seconds(thinner, Stage.TOUCH_DRY), seconds(mixed, Stage.TOUCH_DRY));
    assertEquals(seconds(oil, Stage.FULL_CURE), seconds(mixed, Stage.FULL_CURE));
    assertEquals(
        Math.max(seconds(oil, Stage.RECOAT_OPENS), seconds(thinner, Stage.RECOAT_OPENS)),
        seconds(mixed, Stage.RECOAT_OPENS));
    assertEquals(
        Math.min(seconds(oil, Stage.RECOAT_CLOSES), seconds(thinner, Stage.RECOAT_CLOSES)),
        seconds(mixed, Stage.RECOAT_CLOSES));
  }

  @Property(tries = 200)
  void twiceAsThickTakesAtLeastTwiceAsLong(
      @ForAll DryingMechanism mechanism,
      @ForAll @DoubleRange(min = 1, max = 3) double thicker,
      @ForAll @DoubleRange(min = 15, max = 30) double celsius) {
    FinishMaker maker = FinishMaker.of(mechanism);
    Climate room = Climate.steady(celsius, 50);
    double micron = maker.wetFilm * thicker;
    DryingTimes once = times(maker.make(), micron, room);
    DryingTimes twice = times(maker.make(), 2 * micron, room);
    for (StageTime time : once.stages()) {
      double least = 2 * time.planned().seconds() - 2;
      assertTrue(seconds(twice, time.stage()) >= least, time.stage().words());
    }
  }

  @Property(tries = 200)
  void warmerIsNeverSlower(
      @ForAll DryingMechanism mechanism,
      @ForAll @DoubleRange(min = 15, max = 25) double celsius,
      @ForAll @DoubleRange(min = 0, max = 7) double more) {
    FinishMaker maker = FinishMaker.of(mechanism);
    DryingTimes cool = times(maker.make(), maker.wetFilm, Climate.steady(celsius, 50));
    DryingTimes warm = times(maker.make(), maker.wetFilm, Climate.steady(celsius + more, 50));
    for (StageTime time : cool.stages()) {
      assertTrue(seconds(warm, time.stage()) <= time.planned().seconds());
    }
  }

  @Property(tries = 200)
  void damperSlowsWaterborneAndSpeedsMoistureCure(
      @ForAll @DoubleRange(min = 35, max = 70) double humidity,
      @ForAll @DoubleRange(min = 0, max = 10) double more) {
    Climate dry = Climate.steady(20, humidity);
    Climate damp = Climate.steady(20, humidity + more);
    Finish water = FinishMaker.waterborne().make();
    assertTrue(
        seconds(times(water, 80, damp), Stage.RECOAT_OPENS)
            >= seconds(times(water, 80, dry), Stage.RECOAT_OPENS));
    Finish cure = FinishMaker.moistureCure().make();
    assertTrue(
        seconds(times(cure, 80, damp), Stage.FULL_CURE)
            <= seconds(times(cure, 80, dry), Stage.FULL_CURE));
  }

  @Property(tries = 200)
  void stagesAreInOrderInAnyAir(
      @ForAll DryingMechanism mechanism,
      @ForAll @DoubleRange(min = 13, max = 20) double low,
      @ForAll @DoubleRange(min = 0, max = 15) double rise,
      @ForAll @DoubleRange(min = 35, max = 60) double humidity,
      @ForAll @IntRange(min = 8, max = 18) int hour) {
    FinishMaker maker = FinishMaker.of(mechanism);
    Climate room = Climate.swing(low, low + rise, humidity);
    DryingRequest request =
        new DryingRequest(maker.make(), maker.wetFilm, room, NINE.date().at(hour, 0));
    Coating.laid(request)
        .fold(
            given -> {
              DryingTimes times = given.value();
              double touch = seconds(times, Stage.TOUCH_DRY);
              for (StageTime time : times.stages()) {
                assertTrue(time.soonest().seconds() >= 0);
                if (time.stage() != Stage.RECOAT_CLOSES) {
                  assertTrue(time.planned().seconds() >= touch);
                  assertTrue(time.planned().seconds() <= seconds(times, Stage.FULL_CURE));
                }
              }
              return true;
            },
            refused -> !refused.reasons().isEmpty());
  }

  @Test
  void warmthShortensPotLife() {
    FinishMaker maker = FinishMaker.epoxy();
    Duration cool = times(maker.make(), 80, Climate.steady(15, 50)).potLife().orElseThrow();
    Duration warm = times(maker.make(), 80, Climate.steady(25, 50)).potLife().orElseThrow();
    assertEquals(1200, warm.seconds());
    assertEquals(2400.0, cool.seconds(), 1);
  }

  @Test
  void everyStageHasALineOfWorking() {
    DryingRequest request =
        new DryingRequest(FinishMaker.oil().make(), 80, Climate.swing(12, 24, 50), NINE);
    Set<String> names = new TreeSet<>();
    for (WorkingLine line : Answers.given(Coating.laid(request)).working()) {
      names.add(line.result().name());
      assertFalse(line.formula().isEmpty());
      assertFalse(line.inputs().isEmpty());
    }
    for (Stage stage : Stage.values()) {
      assertTrue(names.contains(stage.words()), stage.words());
    }
  }

  @Test
  void oilyRagsAreADanger() {
    FinishMaker maker = FinishMaker.oil();
    maker.rags = true;
    DryingRequest request = new DryingRequest(maker.make(), 80, Climate.steady(20, 50), NINE);
    assertEquals(
        Caution.Severity.DANGER, Answers.caution(Coating.laid(request), "oily-rags").severity());
  }

  @Test
  void aWindowThatMayCloseBeforeItOpensIsTold() {
    FinishMaker maker = FinishMaker.oil();
    maker.recoatCloses = Optional.of(FinishMaker.seconds(6 * 3600, 9 * 3600));
    DryingRequest request = new DryingRequest(maker.make(), 80, Climate.steady(20, 50), NINE);
    assertTrue(Answers.codes(Coating.laid(request)).contains("recoat-window-narrow"));
    assertFalse(Answers.value(Coating.laid(request)).windowKnown());
  }

  @Test
  void aThickCoatIsCautioned() {
    DryingRequest request =
        new DryingRequest(FinishMaker.oil().make(), 200, Climate.steady(20, 50), NINE);
    assertTrue(Answers.codes(Coating.laid(request)).contains("thick-film"));
  }
}
