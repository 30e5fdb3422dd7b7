package benchlore.schedules.glueup;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.caution.GlueUpRows;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.material.Adhesive;
import java.util.List;

/** What each kind of adhesive can do to a person. */
final class AdhesiveHazard {
  private AdhesiveHazard() {}

  /** The cautions for a kind of adhesive; none for plain water-borne ones. */
  static List<Caution> of(Adhesive.Family family) {
    return switch (family) {
      case POLYURETHANE_ONE_PART -> List.of(GlueUpRows.ISOCYANATE_ADHESIVE.caution());
      case EPOXY -> List.of(ShopRows.EPOXY_SKIN.caution());
      case UREA_FORMALDEHYDE, RESORCINOL -> List.of(GlueUpRows.FORMALDEHYDE_ADHESIVE.caution());
      case CYANOACRYLATE -> List.of(GlueUpRows.INSTANT_ADHESIVE.caution());
      case CONTACT, CONSTRUCTION -> List.of(GlueUpRows.FLAMMABLE_VAPOUR.caution());
      case HOT_HIDE, HOT_MELT -> List.of(GlueUpRows.HOT_ADHESIVE.caution());
      case PVA_WHITE, PVA_YELLOW, PVA_CROSSLINKING, LIQUID_HIDE, FISH, CASEIN -> List.of();
    };
  }
}
