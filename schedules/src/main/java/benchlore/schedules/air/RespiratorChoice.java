package benchlore.schedules.air;

import benchlore.schedules.answer.Message;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Which class of respirator a hazard asks for.
 *
 * <p>Isocyanates: supplied air, never a cartridge. A letter of the US regulator (18 July 2000) lets
 * trained workplaces use cartridges on a change schedule; UK and US institute advice does not; a
 * home shop has no such schedule, so the stricter stands. Cartridge rules from the US EPA's
 * respirator sheet for spray painters.
 */
final class RespiratorChoice {
  // Up to this boiling point ordinary charcoal holds little: class AX of AS/NZS 1715, respirator
  // fit programme page on boiling points.
  private static final double LOW_BOILING_CELSIUS = 65;

  private RespiratorChoice() {}

  static RespiratorAdvice vapour(AirRequest request, double peakIndex, boolean limitsComplete) {
    if (request.isocyanate()) {
      return advice(Respirator.SUPPLIED_AIR, request);
    }
    boolean spray = request.sprays();
    if (peakIndex > Respirator.VAPOUR_HALF_MASK.protectionFactor().orElseThrow()) {
      return advice(Respirator.FULL_FACE_VAPOUR, request);
    }
    if (spray) {
      return advice(Respirator.VAPOUR_HALF_MASK_PREFILTER, request);
    }
    if (peakIndex > FlowNeeded.FINE_INDEX || !limitsComplete) {
      return advice(Respirator.VAPOUR_HALF_MASK, request);
    }
    return new RespiratorAdvice(Respirator.NONE, List.of());
  }

  static RespiratorAdvice dust(double peakRatio) {
    Respirator kind =
        peakRatio > Respirator.DUST_HALF_MASK.protectionFactor().orElseThrow()
            ? Respirator.DUST_FULL_FACE
            : Respirator.DUST_HALF_MASK;
    List<Message> limits = new ArrayList<>();
    addFit(kind, limits);
    limits.add(Message.of("A particle filter stops no vapour at all."));
    return new RespiratorAdvice(kind, limits);
  }

  private static RespiratorAdvice advice(Respirator kind, AirRequest request) {
    List<Message> limits = new ArrayList<>();
    if (kind == Respirator.SUPPLIED_AIR) {
      addSuppliedAir(limits);
    } else {
      addFit(kind, limits);
      addCartridge(request, limits);
    }
    return new RespiratorAdvice(kind, limits);
  }

  private static void addSuppliedAir(List<Message> limits) {
    limits.add(
        Message.of(
            "Isocyanates give no warning by smell below harm: no cartridge or dust mask counts."));
    limits.add(
        Message.of("The air must be tested breathing air, not that of a workshop compressor."));
  }

  private static void addCartridge(AirRequest request, List<Message> limits) {
    limits.add(
        Message.of(
            "Change the cartridges by the maker's schedule, at least weekly and at once when smell"
                + " comes through; keep them sealed between jobs."));
    limits.add(
        Message.of(
            "Never where the air is near the level dangerous to life, short of oxygen or unknown."));
    for (Solvent solvent : request.solvents()) {
      if (lowBoiling(solvent)) {
        limits.add(
            Message.of(
                "Charcoal soon lets "
                    + solvent.id()
                    + " through, since it boils low: rely on fresh air, not on the mask."));
      }
    }
  }

  static boolean lowBoiling(Solvent solvent) {
    return solvent
        .volatility()
        .boilingPoint()
        .map(d -> d.low() <= LOW_BOILING_CELSIUS)
        .orElse(false);
  }

  private static void addFit(Respirator kind, List<Message> limits) {
    limits.add(
        Message.of(
            "Good up to {0} times the exposure limit, if it fits and is fit-tested; a beard breaks"
                + " the seal.",
            Quantity.of(kind.protectionFactor().orElseThrow(), Unit.RATIO)));
  }
}
