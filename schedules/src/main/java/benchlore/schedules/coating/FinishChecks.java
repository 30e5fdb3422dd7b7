package benchlore.schedules.coating;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.quantity.SourcedRange;
import java.util.Optional;

/** Checks that a finish's figures are ones the rules hold for. */
final class FinishChecks {
  private FinishChecks() {}

  /** Adds a refusal for every figure outside its range. */
  static void check(Checks checks, Finish finish) {
    Finish.table().check(checks, "finish", finish);
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
}
