package benchlore.schedules.movement;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.movement.FitSchedule.Clearance;
import benchlore.schedules.movement.FitSchedule.TapeStack;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The gap between a moving part and its opening.
 *
 * <pre>
 * gap = film on the part + film on the opening + growth x share + slip        (each moving side)
 * opening - part = 2 (both films) + growth + 2 slip                           (whole width)
 * layers = gap / tape, rounded up
 * </pre>
 *
 * <p>Share is 1/2 for a part held in its middle and 1 for one held at an edge. Common practice; the
 * opening is taken not to move. No published figure is known for slip.
 */
final class ClearancePlan {
  private final Opening opening;
  private final FitSchedule.Travel travel;

  ClearancePlan(Opening opening, FitSchedule.Travel travel) {
    this.opening = opening;
    this.travel = travel;
  }

  Clearance clearance() {
    double film = opening.partFilm().dryFilmMicron() + opening.openingFilm().dryFilmMicron();
    double growth = travel.swellMetre() * opening.hanging().share();
    double filmMetre = film / 1e6;
    double gap = filmMetre + growth + opening.slipMetre();
    double fixed = filmMetre + opening.slipMetre();
    double whole = 2 * fixed + travel.swellMetre();
    double dry = widest();
    return new Clearance(film, growth, gap, whole, dry, stacks(gap * 1e6));
  }

  // A part fitted damper than its dampest season has no growth to leave room for; it only shrinks.
  private double widest() {
    double away = travel.shrinkMetre() + travel.swellMetre();
    return away * opening.hanging().share() + opening.slipMetre();
  }

  private List<TapeStack> stacks(double gapMicron) {
    List<TapeStack> stacks = new ArrayList<>();
    for (Tape tape : opening.tapes()) {
      int layers = Math.max(1, Numeric.ceil(gapMicron / tape.thicknessMicron()));
      if (layers <= FitFigures.MOST_LAYERS) {
        stacks.add(new TapeStack(tape, layers, layers * tape.thicknessMicron()));
      }
    }
    stacks.sort(
        Comparator.comparingDouble(TapeStack::gapMicron).thenComparingInt(TapeStack::layers));
    return stacks;
  }

  List<WorkingLine> working(Clearance clearance) {
    List<WorkingLine> lines = new ArrayList<>();
    lines.add(filmLine(QuantityKey.FILM_ON_PART, "film on the part's edge", opening.partFilm()));
    lines.add(
        filmLine(QuantityKey.FILM_ON_OPENING, "film on the opening's face", opening.openingFilm()));
    lines.add(gapLine(clearance));
    if (!clearance.stacks().isEmpty()) {
      lines.add(tapeLine(clearance));
    }
    return lines;
  }

  private static WorkingLine filmLine(QuantityKey key, String name, Film film) {
    return new WorkingLine(
        key,
        Figure.computed(name, film.dryFilmMicron(), Unit.MICRON),
        "dry film = coats x wet film x solids",
        List.of(
            Figure.input("coats", film.coats(), Unit.COUNT),
            Figure.input("wet film of one coat", film.wetFilmMicron(), Unit.MICRON),
            Figure.input("solids by volume", film.solidsByVolumePercent(), Unit.PERCENT)),
        FitSources.FILM);
  }

  private WorkingLine gapLine(Clearance clearance) {
    return new WorkingLine(
        QuantityKey.GAP_ON_EACH_MOVING_SIDE,
        Figure.computed("gap on each moving side", clearance.gapMetre(), Unit.METRE),
        "gap = both films + swelling x share + slip",
        List.of(
            Figure.computed("both films", clearance.filmMicron(), Unit.MICRON),
            Figure.computed("swelling", travel.swellMetre(), Unit.METRE),
            Figure.of("share at this side", opening.hanging().share(), Unit.RATIO, FitSources.GAP),
            Figure.input("slip", opening.slipMetre(), Unit.METRE)),
        FitSources.GAP);
  }

  private static WorkingLine tapeLine(Clearance clearance) {
    TapeStack stack = clearance.stacks().get(0);
    Tape tape = stack.tape();
    return new WorkingLine(
        QuantityKey.TAPE_LAYERS,
        Figure.computed("layers of " + tape.name(), stack.layers(), Unit.COUNT),
        "layers = gap / thickness of one layer, rounded up",
        List.of(
            Figure.computed("gap", clearance.gapMetre(), Unit.METRE),
            Figure.of("one layer", tape.thicknessMicron(), Unit.MICRON, tape.from())),
        FitSources.GAP);
  }
}
