package benchlore.schedules.air;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.AirRows;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Transfer;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Objects;

/**
 * Spray mist: the solids that miss the work, against the brush that leaves none in the air.
 *
 * <pre>
 * mist = solids x (1 - transfer);  V dc/dt = mist / time - (Q / K) c, solved exactly
 * </pre>
 *
 * <p>All mist is taken to hang until the air carries it off, which errs to the safe side. Solvent
 * vapour is {@link Air}'s.
 */
public final class Mist {
  private Mist() {}

  /**
   * Estimates the mist of one spraying.
   *
   * <p>Refused: numbers outside the ranges of the request, and isocyanates.
   *
   * @param request room, gun and finish
   * @return what lands, what hangs and for how long
   */
  public static Answer<MistEstimate> plan(MistRequest request) {
    Objects.requireNonNull(request, "request");
    Checks checks = new Checks();
    AirChecks.room(request.room(), checks);
    checks
        .within("solidsKilogram", request.solidsKilogram(), 1e-6, 100, Unit.KILOGRAM)
        .within("sprayingSecond", request.sprayingSecond(), 1, 86_400, Unit.SECOND);
    HomeRefusals.sprayedIsocyanate(request.isocyanate(), checks);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    MistEstimate estimate = estimate(request);
    return Answer.of(
        estimate,
        working(request, estimate),
        List.of(AirRows.SPRAY_MIST.caution(), AirRows.DEFER_TO_SDS.caution()));
  }

  private static MistEstimate estimate(MistRequest request) {
    double landed = request.solidsKilogram() * transfer(request).low();
    double mist = request.solidsKilogram() - landed;
    MixedRoom room = MixedRoom.of(request.room());
    double end = request.sprayingSecond();
    double peak = room.concentration(new Emission(0, mist, new ReleaseCurve(1, end, 1)), end);
    double index = peak / DustLimit.OSHA_RESPIRABLE.kilogramPerCubicMetre();
    double clear = index <= 1 ? 0 : Numeric.log(index) / room.changesPerSecond();
    return new MistEstimate(landed, mist, peak, index, clear);
  }

  private static SourcedRange transfer(MistRequest request) {
    return Transfer.of(ApplicationMethod.SPRAY, request.gun());
  }

  private static List<WorkingLine> working(MistRequest request, MistEstimate estimate) {
    DustLimit limit = DustLimit.OSHA_RESPIRABLE;
    Figure solids = Figure.input("solids", request.solidsKilogram(), Unit.KILOGRAM);
    SourcedRange landing = transfer(request);
    Figure transfer = Figure.of("transfer", landing.low(), Unit.RATIO, landing.from());
    Figure level =
        Figure.of(
            "limit",
            limit.kilogramPerCubicMetre(),
            Unit.AIRBORNE_KILOGRAM_PER_CUBIC_METRE,
            limit.from());
    return List.of(
        new WorkingLine(
            QuantityKey.MIST_MADE,
            Figure.computed("mist", estimate.mistKilogram(), Unit.KILOGRAM),
            "mist = solids x (1 - transfer)",
            List.of(solids, transfer),
            transfer.from()),
        new WorkingLine(
            QuantityKey.MIST_HIGHEST_SHARE,
            Figure.computed("highest share of the limit", estimate.peakIndex(), Unit.RATIO),
            "highest = mist / time / (flow / mixing factor) x (1 - exp(-changes x time)) / limit",
            List.of(level),
            AirWorking.DILUTION),
        new WorkingLine(
            QuantityKey.CLEAR_AFTER_SPRAYING,
            Figure.computed("clear after spraying", estimate.clearSecond(), Unit.SECOND),
            "time = ln(highest share) x volume x mixing factor / flow",
            List.of(),
            AirWorking.DILUTION));
  }
}
