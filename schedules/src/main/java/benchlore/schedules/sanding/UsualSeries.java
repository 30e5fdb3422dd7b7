package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.List;

/**
 * The everyday grades that are taken one after the other: P80, P100, P120, P150, P180, P220, P320,
 * and P40 and P60 before them. On bare wood no more than one of them is skipped.
 */
final class UsualSeries {
  /** Where the series and its rule come from. */
  static final Provenance FROM =
      Provenance.source(
          "What Does a Wood Sanding the Sequence Mean?",
          "recommended sequence 80, 100, 120, 150, 180, 220, 320");

  /** Most grades of the series between one pass and the next. */
  static final int MOST_SKIPPED = 1;

  /** Charts and scales differ by less than this where they mean the same grade. */
  private static final double SAME_GRADE = 1.05;

  /** The grades, coarse first. */
  static final List<Grit> SERIES = series();

  private UsualSeries() {}

  private static List<Grit> series() {
    List<Grit> series = new ArrayList<>();
    for (int number : new int[] {40, 60, 80, 100, 120, 150, 180, 220, 320}) {
      Grits.find(GritSystem.FEPA_P, number).ifPresent(series::add);
    }
    return List.copyOf(series);
  }

  /** How many grades of the series lie between two grain sizes. */
  static int skipped(double beforeMicron, double afterMicron) {
    int skipped = 0;
    for (Grit grit : SERIES) {
      if (beforeMicron > grit.micron() * SAME_GRADE && grit.micron() > afterMicron * SAME_GRADE) {
        skipped = skipped + 1;
      }
    }
    return skipped;
  }

  /** The grades of the series within a range of P numbers, coarse first. */
  static List<Grit> within(SourcedRange grades) {
    List<Grit> within = new ArrayList<>();
    for (Grit grit : SERIES) {
      if (grit.number() >= grades.low() && grit.number() <= grades.high()) {
        within.add(grit);
      }
    }
    return within;
  }
}
