package benchlore.schedules.air;

import benchlore.schedules.answer.Message;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.quantity.Provenance;
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

  /** How much richer the air is at the face over wet work than the room's on the whole. */
  static final double NEAR_WORK = 4;

  /** Where that factor comes from. */
  static final Provenance NEAR_WORK_FROM =
      Provenance.fromMemory("two-zone models of a room: near the source several times the room");

  private RespiratorChoice() {}

  /**
   * The mask for a coat, by what the finish gives off, how it goes on and what the figures say.
   *
   * @param worstIndex of the room's air, each limit over its own time
   * @param limitsComplete whether every solvent has a limit
   */
  static RespiratorAdvice vapour(AirRequest request, double worstIndex, boolean limitsComplete) {
    boolean vapour = !request.solvents().isEmpty();
    Respirator usual =
        usual(request.isocyanate(), request.formaldehyde(), request.sprays(), vapour);
    boolean always = usual != Respirator.VAPOUR_HALF_MASK;
    double face = NEAR_WORK * worstIndex;
    boolean filters = usual.protectionFactor().isPresent();
    if (filters && face > Respirator.VAPOUR_HALF_MASK.protectionFactor().orElseThrow()) {
      boolean gas = usual == Respirator.FULL_FACE_FORMALDEHYDE;
      return advice(gas ? Respirator.SUPPLIED_AIR : Respirator.FULL_FACE_VAPOUR, request);
    }
    boolean needed = always || face > FlowNeeded.FINE_INDEX || !limitsComplete;
    return needed && usual != Respirator.NONE
        ? advice(usual, request)
        : new RespiratorAdvice(Respirator.NONE, List.of());
  }

  /**
   * The mask to have at hand for a finish, before any figures: what a record page names, and the
   * one a plan names when it asks for a mask, unless the air asks for more.
   *
   * @param vapour whether anything but water evaporates
   */
  static Respirator usual(
      boolean isocyanate, boolean formaldehyde, boolean sprayed, boolean vapour) {
    if (isocyanate || (formaldehyde && sprayed)) {
      return Respirator.SUPPLIED_AIR;
    }
    if (formaldehyde) {
      return Respirator.FULL_FACE_FORMALDEHYDE;
    }
    if (sprayed) {
      return Respirator.VAPOUR_HALF_MASK_PREFILTER;
    }
    return vapour ? Respirator.VAPOUR_HALF_MASK : Respirator.NONE;
  }

  /**
   * The mask for dust.
   *
   * @param worstIndex of the room's air, each limit over its own time
   */
  static RespiratorAdvice dust(double worstIndex) {
    Respirator kind =
        worstIndex > Respirator.DUST_HALF_MASK.protectionFactor().orElseThrow()
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
      addSuppliedAir(request, limits);
    } else {
      addFit(kind, limits);
      addCartridge(request, limits);
    }
    return new RespiratorAdvice(kind, limits);
  }

  private static void addSuppliedAir(AirRequest request, List<Message> limits) {
    limits.add(
        Message.of(
            request.isocyanate()
                ? "Isocyanates give no warning by smell below harm: no cartridge or dust mask"
                    + " counts."
                : "Sprayed, or this strong, formaldehyde is more than cartridges are made for."));
    limits.add(
        Message.of("The air must be tested breathing air, not that of a workshop compressor."));
  }

  private static void addCartridge(AirRequest request, List<Message> limits) {
    limits.add(
        Message.of(
            "Change cartridges by their schedule and at once when smell comes through; seal them"
                + " between jobs."));
    for (Solvent solvent : request.solvents()) {
      if (lowBoiling(solvent)) {
        limits.add(
            Message.of(
                "Charcoal soon lets "
                    + solvent.id().replace('-', ' ')
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
            "Good up to {0} times the limit if it seals: fit-tested, no beard.",
            Quantity.of(kind.protectionFactor().orElseThrow(), Unit.RATIO)));
  }
}
