package benchlore.schedules.sanding;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which grade to buy: plans again with each P grade added to the shelf and keeps those that save
 * time. The times carry the sanding model's own doubt, so a saving of a few percent is none.
 */
public final class ShelfGap {
  private static final double WORTH_SHARE = 0.98;
  private static final Provenance RULE =
      Provenance.commonPractice("each P grade tried on the shelf in turn");

  private ShelfGap() {}

  /**
   * Grades worth buying.
   *
   * @param request as for {@link Sanding#plan}, and refused alike, but a shelf from which there is
   *     no way is answered with what opens one
   * @return offers that save at least two percent, best first
   */
  public static Answer<ShelfAdvice> plan(SandingRequest request) {
    Objects.requireNonNull(request, "request");
    Checks checks = SandingChecks.of(request);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    StartDepth start = request.start().depth();
    OptionalDouble now = seconds(Sanding.facePasses(request, request.shop(), start));
    List<ShelfAdvice.Offer> offers = new ArrayList<>();
    List<WorkingLine> working = new ArrayList<>();
    for (Grit grit : GritTable.FEPA_P) {
      SandingShop more = request.shop().withGrit(grit);
      OptionalDouble then = seconds(Sanding.facePasses(request, more, start));
      if (then.isPresent()
          && (now.isEmpty() || then.getAsDouble() < now.getAsDouble() * WORTH_SHARE)) {
        offers.add(new ShelfAdvice.Offer(grit, then.getAsDouble()));
        working.add(line(grit, then.getAsDouble()));
      }
    }
    offers.sort((a, b) -> Double.compare(a.thenSeconds(), b.thenSeconds()));
    return Answer.of(new ShelfAdvice(now, offers), working, List.of());
  }

  /**
   * P grades that open a way: the one everyday grade that does it quickest, else those of the
   * cheapest path over every P grade that are not on the shelf.
   */
  static List<Grit> missing(SandingRequest request, StartDepth start) {
    List<Grit> missing = new ArrayList<>();
    oneMissing(request, start).ifPresent(missing::add);
    if (!missing.isEmpty()) {
      return missing;
    }
    SandingShop full = request.shop();
    for (Grit grit : GritTable.FEPA_P) {
      full = full.withGrit(grit);
    }
    Optional<List<SandingPass>> passes = Sanding.facePasses(request, full, start);
    if (passes.isPresent()) {
      for (SandingPass pass : passes.get()) {
        if (!request.shop().has(pass.grit())) {
          missing.add(pass.grit());
        }
      }
    }
    return missing;
  }

  private static Optional<Grit> oneMissing(SandingRequest request, StartDepth start) {
    Optional<Grit> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Grit grit : UsualSeries.SERIES) {
      OptionalDouble then =
          seconds(Sanding.facePasses(request, request.shop().withGrit(grit), start));
      if (then.isPresent() && then.getAsDouble() < least) {
        best = Optional.of(grit);
        least = then.getAsDouble();
      }
    }
    return best;
  }

  private static OptionalDouble seconds(Optional<List<SandingPass>> passes) {
    return passes.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Sanding.seconds(passes.get()));
  }

  private static WorkingLine line(Grit grit, double seconds) {
    return new WorkingLine(
        QuantityKey.PASSES_WITH_GRADE,
        Figure.computed("face passes with " + grit.label(), seconds, Unit.SECOND),
        "cheapest path over the shelf and " + grit.label(),
        List.of(Figure.of("grain of " + grit.label(), grit.micron(), Unit.MICRON, grit.from())),
        RULE);
  }
}
