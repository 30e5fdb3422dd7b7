package benchlore.schedules.sanding;

import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Optional;

/**
 * Steps beside the face passes. Where the shelf lacks a grade for one, a P grade to buy is named.
 */
final class SandingExtrasPlan {
  static final SourcedRange WET =
      SourcedRange.of(
          120, Unit.SECOND_PER_SQUARE_METRE, Provenance.fromMemory("sponge on, wipe off"));

  static final SourcedRange DRY =
      SourcedRange.range(
          4 * 3600.0,
          16 * 3600.0,
          Unit.SECOND,
          Provenance.commonPractice("guides say overnight; a warm dry room takes some hours"));

  static final SourcedRange PACK =
      SourcedRange.of(
          900, Unit.SECOND_PER_SQUARE_METRE, Provenance.fromMemory("pack, wait, wipe off"));

  /** Finest grain for knocking off raised grain: P400. Finer only polishes the fibres down. */
  private static final double KNOCK_OFF_FINEST_MICRON = 35;

  private final SandingRequest request;
  private final double area;
  private final int pieces;
  private final List<Grit> shelf;

  SandingExtrasPlan(SandingRequest request) {
    this.request = request;
    this.area = request.area().totalSquareMetre();
    this.pieces = request.area().pieces();
    this.shelf = request.shop().shelf();
  }

  SandingExtras of(StartDepth start, Optional<Grit> last) {
    if (start.light() || last.isEmpty()) {
      return new SandingExtras(
          Optional.empty(), Optional.empty(), Optional.empty(), betweenCoats());
    }
    return new SandingExtras(
        endGrain(last.get()), grainRaising(last.get()), poreFilling(last.get()), betweenCoats());
  }

  /** Light strokes over wood that is fine enough, so that finish goes in. */
  SandingPass opener(GritTarget target) {
    Grit grit = target.coarsestOf(shelf).orElse(target.example());
    return quickest(grit, face()).lightPass(SandingFigures.SCUFF_MICRON.low());
  }

  private SandedStock face() {
    return SandedStock.wood(request.wood(), area, false).inPieces(pieces, SandingFigures.FACES);
  }

  private Optional<SandingPass> endGrain(Grit last) {
    double ends = request.area().endGrainSquareMetre();
    if (ends <= 0) {
      return Optional.empty();
    }
    SandedStock stock = SandedStock.wood(request.wood(), ends, false).inPieces(pieces, 1);
    double depth = stock.scratchMicron(last);
    double work = depth * SandingFigures.END_GRAIN_FACTOR.low();
    return Optional.of(quickest(oneFiner(last), stock).pass(depth, work));
  }

  private Optional<GrainRaising> grainRaising(Grit last) {
    if (!request.wanted().raisesGrain()) {
      return Optional.empty();
    }
    GritTarget range = new GritTarget(last.micron(), KNOCK_OFF_FINEST_MICRON);
    Grit grit = range.finestOf(shelf).orElse(last);
    SandedStock stock = face();
    SandingPass knockOff = quickest(grit, stock).lightPass(SandingFigures.SCUFF_MICRON.low());
    return Optional.of(new GrainRaising(WET.low() * area, DRY, knockOff));
  }

  private Optional<PoreFilling> poreFilling(Grit last) {
    if (!request.wanted().poresFilled() || !request.wood().openGrained()) {
      return Optional.empty();
    }
    SandedStock stock = face();
    SandingPass level = quickest(last, stock).lightPass(SandingFigures.SCUFF_MICRON.low());
    Message when =
        Message.of(
            "After the last grade and any dye, over a thin seal coat if the filler's label allows"
                + " one, and before the first full coat; let it dry as its label says.");
    return Optional.of(new PoreFilling(PACK.low() * area, level, when));
  }

  private Optional<BetweenCoats> betweenCoats() {
    SurfaceWanted wanted = request.wanted();
    if (wanted.betweenCoatGrade().isEmpty() || wanted.coats() < 2) {
      return Optional.empty();
    }
    GritTarget target = GritTarget.of(wanted.betweenCoatGrade().get());
    Grit grit = target.finestOf(shelf).orElse(target.example());
    AbrasiveCut cutting = quickest(grit, SandedStock.film(area));
    SandingPass each = cutting.lightPass(SandingFigures.SCUFF_MICRON.low());
    return Optional.of(new BetweenCoats(each, wanted.coats() - 1));
  }

  /** The next finer grade on the shelf within the jump limit, else the next finer P grade. */
  private Grit oneFiner(Grit last) {
    double limit = last.micron() / request.shop().jumpLimitRatio();
    Optional<Grit> best = Optional.empty();
    for (Grit grit : shelf) {
      boolean fits = finer(grit, last) && grit.micron() >= limit;
      if (fits && (best.isEmpty() || grit.micron() > best.get().micron())) {
        best = Optional.of(grit);
      }
    }
    return best.orElse(nextFinerP(last));
  }

  private static Grit nextFinerP(Grit last) {
    for (Grit grit : GritTable.FEPA_P) {
      if (finer(grit, last)) {
        return grit;
      }
    }
    return last;
  }

  /** Really finer, not the same grain under another scale's number. */
  private static boolean finer(Grit grit, Grit last) {
    return grit.micron() * 1.05 < last.micron();
  }

  private AbrasiveCut quickest(Grit grit, SandedStock stock) {
    AbrasiveCut best = null;
    for (AbrasiveCut cutting : AbrasiveCut.of(grit, stock, request.shop().tools())) {
      boolean better = best == null || cutting.coverSeconds() < best.coverSeconds();
      if (cutting.tool().finishes() && better) {
        best = cutting;
      }
    }
    if (best == null) {
      throw new IllegalStateException("a checked shop has a finishing tool");
    }
    return best;
  }
}
