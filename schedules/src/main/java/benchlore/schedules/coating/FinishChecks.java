package benchlore.schedules.coating;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Optional;

/** Checks that a finish's figures are ones the rules hold for. */
final class FinishChecks {
  private static final double LONGEST_SECONDS = 400 * 86_400.0;

  private FinishChecks() {}

  /** Adds a refusal for every figure outside its range. */
  static void check(Checks checks, Finish finish) {
    both(checks, "referenceCelsius", finish.referenceCelsius(), 0, 45);
    both(checks, "referenceHumidityPercent", finish.referenceHumidityPercent(), 5, 95);
    both(checks, "minimumCelsius", finish.minimumCelsius(), -30, 45);
    both(checks, "maximumCelsius", finish.maximumCelsius(), 0, 60);
    both(checks, "maximumHumidityPercent", finish.maximumHumidityPercent(), 5, 100);
    both(checks, "solidsVolumePercent", finish.solidsVolumePercent(), 0.1, 100);
    both(checks, "densityKilogramPerCubicMetre", finish.densityKilogramPerCubicMetre(), 500, 3000);
    both(checks, "wetFilmMicron", finish.wetFilmMicron(), 1, 1000);
    finish
        .minimumHumidityPercent()
        .ifPresent(d -> both(checks, "minimumHumidityPercent", d, 0, 95));
    finish.rateQ10().ifPresent(d -> both(checks, "rateQ10", d, 1, 5));
    for (Stage stage : Stage.values()) {
      stage.of(finish).ifPresent(d -> both(checks, stage.words(), d, 0, LONGEST_SECONDS));
    }
    both(checks, "betweenCoatGrade", finish.betweenCoatGrade(), 12, 5000);
    finish.potLife().ifPresent(d -> both(checks, "potLife", d, 0, LONGEST_SECONDS));
  }

  /** Adds a refusal for every stage the finish ought to state and does not. */
  static void stages(Checks checks, Finish finish) {
    boolean coats = finish.role() == FinishRole.FILM || finish.role() == FinishRole.PENETRATING;
    for (Stage stage : Stage.values()) {
      Optional<SourcedRange> stated = stage.of(finish);
      boolean needed = coats ? stage.required() : stage == Stage.RECOAT_OPENS;
      checks.require(
          stated.isPresent() || !needed,
          "finish",
          "The finish does not say when it reaches the stage: " + stage.words() + ".",
          "Take the time from the label and add it to the finish.");
    }
  }

  private static void both(
      Checks checks, String name, SourcedRange datum, double low, double high) {
    Unit unit = datum.unit();
    checks.within(name, datum.low(), low, high, unit);
    if (datum.high() != datum.low()) {
      checks.within(name, datum.high(), low, high, unit);
    }
  }
}
