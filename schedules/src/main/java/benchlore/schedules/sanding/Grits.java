package benchlore.schedules.sanding;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.SandingRows;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Grades of coated abrasive: look one up, find the nearest to a grain size, convert between scales.
 *
 * <p>Grades are compared by grain size in micrometres, never by number: CAMI 400 is about P800. Up
 * to about 220 the two scales agree within the charts' own rounding, above it they part.
 */
public final class Grits {
  private static final double COARSEST_MICRON = 3000;
  private static final double FINEST_MICRON = 1;
  private static final double CLOSE_RATIO = 1.12;
  private static final Provenance NEAREST_RULE =
      Provenance.commonPractice("grades are matched by grain size, nearest by ratio");

  private Grits() {}

  /** Every grade of a scale, coarse first. */
  public static List<Grit> all(GritSystem system) {
    Objects.requireNonNull(system, "system");
    return system == GritSystem.CAMI ? GritTable.CAMI : GritTable.FEPA_P;
  }

  /**
   * A grade by its number.
   *
   * @param system the scale
   * @param number as printed on the paper
   * @return the grade; empty if the scale has no such grade here
   */
  public static Optional<Grit> find(GritSystem system, int number) {
    for (Grit grit : all(system)) {
      if (grit.number() == number) {
        return Optional.of(grit);
      }
    }
    return Optional.empty();
  }

  /**
   * The grade whose grain is nearest to a size.
   *
   * @param system the scale to look in
   * @param micron grain size, 1 to 3000 micrometres; anything else is refused
   * @return the grade with its ratio; a caution if no grade of the scale comes close
   */
  static Answer<GritMatch> nearest(GritSystem system, double micron) {
    Objects.requireNonNull(system, "system");
    Checks checks =
        new Checks().within("micron", micron, FINEST_MICRON, COARSEST_MICRON, Unit.MICRON);
    return checks.isValid()
        ? match(system, Figure.input("grain size asked for", micron, Unit.MICRON))
        : Answer.refuse(checks.refusals());
  }

  /**
   * The grade of another scale that comes nearest to this one.
   *
   * @param grit the grade in hand
   * @param system the scale to convert to
   * @return the nearest grade; a caution if no grade of that scale comes close
   */
  public static Answer<GritMatch> convert(Grit grit, GritSystem system) {
    Objects.requireNonNull(grit, "grit");
    Objects.requireNonNull(system, "system");
    return match(system, Figure.of(grit.label(), grit.micron(), Unit.MICRON, grit.from()));
  }

  /** The grade of a scale nearest to a positive grain size, by ratio. */
  static Grit closest(GritSystem system, double micron) {
    Grit best = all(system).get(0);
    for (Grit grit : all(system)) {
      if (apart(grit.micron(), micron) < apart(best.micron(), micron)) {
        best = grit;
      }
    }
    return best;
  }

  /**
   * Grain size of a P number, which need not be a grade of the table: straight between neighbours
   * on logarithmic scales.
   *
   * @param number 12 to 2500
   * @return micrometres
   */
  static double micronOfP(double number) {
    List<Grit> grades = GritTable.FEPA_P;
    Grit coarse = grades.get(0);
    for (Grit fine : grades) {
      if (fine.number() >= number) {
        return between(coarse, fine, number);
      }
      coarse = fine;
    }
    return coarse.micron();
  }

  /** How far two grain sizes are apart: the larger over the smaller, 1 or more. */
  static double apart(double micron, double otherMicron) {
    return micron > otherMicron ? micron / otherMicron : otherMicron / micron;
  }

  private static double between(Grit coarse, Grit fine, double number) {
    if (fine.number() == number || coarse.number() == fine.number()) {
      return fine.micron();
    }
    double span = Numeric.log((double) fine.number() / coarse.number());
    double share = Numeric.log(number / coarse.number()) / span;
    return Numeric.pow(fine.micron() / coarse.micron(), share) * coarse.micron();
  }

  private static Answer<GritMatch> match(GritSystem system, Figure asked) {
    double micron = asked.quantity().value();
    Grit grit = closest(system, micron);
    WorkingLine line =
        new WorkingLine(
            QuantityKey.GRAIN_OF_GRADE,
            Figure.of("grain of " + grit.label(), grit.micron(), Unit.MICRON, grit.from()),
            "nearest grade: least ratio of the larger to the smaller grain size",
            List.of(asked),
            NEAREST_RULE);
    List<Caution> cautions = new ArrayList<>();
    if (apart(grit.micron(), micron) > CLOSE_RATIO) {
      cautions.add(SandingRows.NO_CLOSE_GRADE.caution());
    }
    return Answer.of(new GritMatch(grit, grit.micron() / micron), List.of(line), cautions);
  }
}
