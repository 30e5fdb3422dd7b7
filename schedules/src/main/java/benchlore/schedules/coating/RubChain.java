package benchlore.schedules.coating;

import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rub-out chain to each sheen: P grades to level and refine, then what sets the sheen.
 *
 * <pre>
 * time of a step     = area x pace
 * sheets of a step   = area / area a quarter sheet or pad lasts, rounded up
 * compound of a step = area x compound for a square metre
 * </pre>
 *
 * <p>Chains and paces from memory of general finishing practice; published only that a satin
 * rub-out without levelling took under ten minutes for a table top, and a whole one for a small
 * project under an hour. The slow end of the pace is taken.
 */
final class RubChain {
  /** Time of one step. */
  static final SourcedRange PACE =
      SourcedRange.range(
          300, 600, Unit.SECOND_PER_SQUARE_METRE, Provenance.fromMemory("hand rubbing by area"));

  /** Film that levelling and refining take. */
  static final SourcedRange TAKES =
      SourcedRange.range(10, 25, Unit.MICRON, Provenance.fromMemory("levelling with P400 to P600"));

  /** Area a quarter sheet or a pad lasts on film. */
  static final SourcedRange SHEET =
      SourcedRange.range(
          0.3, 0.6, Unit.SQUARE_METRE, Provenance.fromMemory("film clogs fine abrasive"));

  /** Pumice, rottenstone or compound for a square metre. */
  static final SourcedRange COMPOUND =
      SourcedRange.range(
          0.02, 0.05, Unit.KILOGRAM_PER_SQUARE_METRE, Provenance.fromMemory("a few spoonfuls"));

  private static final List<Integer> SATIN = List.of(400, 600);
  private static final List<Integer> SEMI_GLOSS = List.of(400, 600, 1000, 1500);
  private static final List<Integer> GLOSS = List.of(400, 600, 1000, 1500, 2000);

  private RubChain() {}

  static Provenance from() {
    return Provenance.fromMemory("general finishing practice");
  }

  /** A film not yet level, or one that has to become glossier. */
  static List<SheenStep> to(Sheen sheen, double squareMetre) {
    List<SheenStep> steps = new ArrayList<>();
    for (int grade : grades(sheen)) {
      SheenStep.Work work = steps.isEmpty() ? SheenStep.Work.LEVEL : SheenStep.Work.REFINE;
      steps.add(sand(work, grade, squareMetre));
    }
    steps.add(last(sheen, squareMetre));
    return steps;
  }

  /** Dulling a glossier film that is level already: only the scratch that sets the sheen. */
  static List<SheenStep> down(Sheen sheen, double squareMetre) {
    return List.of(last(sheen, squareMetre));
  }

  /** One sanding or scuffing step. */
  static SheenStep sand(SheenStep.Work work, int grade, double squareMetre) {
    Supplies supplies = new Supplies(0, sheets(squareMetre), 0);
    return new SheenStep(work, grade, seconds(squareMetre), supplies, Optional.empty());
  }

  static double seconds(double squareMetre) {
    return PACE.high() * squareMetre;
  }

  private static int sheets(double squareMetre) {
    return Numeric.ceil(squareMetre / SHEET.low());
  }

  private static SheenStep last(Sheen sheen, double squareMetre) {
    Supplies pads = new Supplies(0, sheets(squareMetre), 0);
    Supplies powder = new Supplies(0, 1, COMPOUND.high() * squareMetre);
    double seconds = seconds(squareMetre);
    return switch (sheen) {
      case MATT, SATIN ->
          new SheenStep(SheenStep.Work.EVEN_PAD, 0, seconds, pads, Optional.empty());
      case SEMI_GLOSS -> new SheenStep(SheenStep.Work.PUMICE, 0, seconds, powder, Optional.empty());
      case GLOSS -> new SheenStep(SheenStep.Work.POLISH, 0, seconds, powder, Optional.empty());
    };
  }

  private static List<Integer> grades(Sheen sheen) {
    return switch (sheen) {
      case MATT, SATIN -> SATIN;
      case SEMI_GLOSS -> SEMI_GLOSS;
      case GLOSS -> GLOSS;
    };
  }
}
