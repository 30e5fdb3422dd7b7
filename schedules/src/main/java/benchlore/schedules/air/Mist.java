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
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Objects;

/**
 * Spray mist: the solids that miss the work, against the brush that leaves none in the air.
 *
 * <pre>
 * solids = liquid x solids by volume x density of a dry film
 * mist = solids x (1 - transfer);  V dc/dt = mist / time - (Q / K) c, solved exactly
 * </pre>
 *
 * <p>All mist is taken to hang until the air carries it off, which errs to the safe side. Solvent
 * vapour is {@link Air}'s.
 */
public final class Mist {
  /** Density of a dry film. */
  static final SourcedRange DRY_FILM =
      SourcedRange.of(
          1_100,
          Unit.KILOGRAM_PER_CUBIC_METRE,
          Provenance.fromMemory("a dry film of clear finish, a little heavier than water"));

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
        .within(
            "sprayed.liquidCubicMetre",
            request.sprayed().liquidCubicMetre(),
            1e-8,
            0.1,
            Unit.CUBIC_METRE_LIQUID)
        .within(
            "sprayed.solidsByVolume",
            request.sprayed().solidsByVolume().high(),
            0.1,
            100,
            Unit.PERCENT)
        .within("transfer", request.transfer().orElse(1), 0.05, 1, Unit.RATIO)
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
    double solids = request.sprayed().solidsKilogram();
    double landed = solids * transfer(request).low();
    double mist = solids - landed;
    MixedRoom room = MixedRoom.of(request.room());
    double end = request.sprayingSecond();
    double peak = room.concentration(new Emission(0, mist, new ReleaseCurve(1, end, 1)), end);
    double index = peak / DustLimit.OSHA_RESPIRABLE.kilogramPerCubicMetre();
    double clear = index <= 1 ? 0 : Numeric.log(index) / room.changesPerSecond();
    return new MistEstimate(landed, mist, peak, index, clear);
  }

  private static SourcedRange transfer(MistRequest request) {
    return request.transfer().isPresent()
        ? SourcedRange.of(request.transfer().getAsDouble(), Unit.RATIO, Provenance.input())
        : Transfer.of(ApplicationMethod.SPRAY, request.gun());
  }

  private static WorkingLine solids(MistRequest.Sprayed sprayed) {
    SourcedRange share = sprayed.solidsByVolume();
    return new WorkingLine(
        QuantityKey.SOLIDS_SPRAYED,
        Figure.computed("solids", sprayed.solidsKilogram(), Unit.KILOGRAM),
        "solids = liquid x solids by volume x density of a dry film",
        List.of(
            Figure.input("liquid", sprayed.liquidCubicMetre(), Unit.CUBIC_METRE_LIQUID),
            Figure.of("solids by volume", share.high(), Unit.PERCENT, share.from()),
            Figure.of("dry film", DRY_FILM.mid(), DRY_FILM.unit(), DRY_FILM.from())),
        DRY_FILM.from());
  }

  private static List<WorkingLine> working(MistRequest request, MistEstimate estimate) {
    DustLimit limit = DustLimit.OSHA_RESPIRABLE;
    WorkingLine sprayed = solids(request.sprayed());
    Figure solids = sprayed.result();
    SourcedRange landing = transfer(request);
    Figure transfer = Figure.of("transfer", landing.low(), Unit.RATIO, landing.from());
    Figure level =
        Figure.of(
            "limit",
            limit.kilogramPerCubicMetre(),
            Unit.AIRBORNE_KILOGRAM_PER_CUBIC_METRE,
            limit.from());
    return List.of(
        sprayed,
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
