package benchlore.schedules.coating;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rub-out chain to each sheen: P grades to level and refine, then what sets the sheen.
 *
 * <p>Chains and paces from memory of general finishing practice; published only: a satin rub-out
 * without levelling took under ten minutes for a table top, and under an hour for a small project
 * with it. Matt is a coat's own dullness; rubbing ends at satin.
 */
final class RubChain {
  /** Time of one grade or one compound. */
  static final Datum PACE =
      Datum.range(
          300, 600, Unit.SECOND_PER_SQUARE_METRE, Provenance.fromMemory("hand rubbing by area"));

  /** Film that levelling and refining take. */
  static final Datum TAKES =
      Datum.range(10, 25, Unit.MICRON, Provenance.fromMemory("levelling with P400 to P600"));

  private static final int[] SATIN = {400, 600};
  private static final int[] SEMI = {400, 600, 1000, 1500};
  private static final int[] GLOSS = {400, 600, 1000, 1500, 2000};

  private RubChain() {}

  static Provenance from() {
    return Provenance.fromMemory("general finishing practice");
  }

  static List<SheenStep> to(Sheen sheen, double squareMetre) {
    List<SheenStep> steps = new ArrayList<>();
    int[] grades = grades(sheen);
    double seconds = PACE.high() * squareMetre;
    for (int i = 0; i < grades.length; i++) {
      SheenStep.Work work = i == 0 ? SheenStep.Work.LEVEL : SheenStep.Work.REFINE;
      steps.add(new SheenStep(work, grades[i], seconds, 0, Optional.empty()));
    }
    steps.add(new SheenStep(last(sheen), 0, seconds, 0, Optional.empty()));
    return steps;
  }

  /** Dulling a glossier film that is level already: only the scratch that sets the sheen. */
  static List<SheenStep> down(Sheen sheen, double squareMetre) {
    double seconds = PACE.high() * squareMetre;
    return List.of(new SheenStep(last(sheen), 0, seconds, 0, Optional.empty()));
  }

  private static int[] grades(Sheen sheen) {
    return switch (sheen) {
      case MATT, SATIN -> SATIN;
      case SEMI_GLOSS -> SEMI;
      case GLOSS -> GLOSS;
    };
  }

  private static SheenStep.Work last(Sheen sheen) {
    return switch (sheen) {
      case MATT, SATIN -> SheenStep.Work.EVEN_PAD;
      case SEMI_GLOSS -> SheenStep.Work.PUMICE;
      case GLOSS -> SheenStep.Work.POLISH;
    };
  }
}
