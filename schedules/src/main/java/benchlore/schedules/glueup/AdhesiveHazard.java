package benchlore.schedules.glueup;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Caution.Severity;
import benchlore.schedules.answer.Message;
import benchlore.schedules.material.Adhesive;
import java.util.ArrayList;
import java.util.List;

/** What each kind of adhesive can do to a person, and what keeps them safe. */
enum AdhesiveHazard {
  ISOCYANATE(
      Severity.HEALTH,
      "isocyanate-adhesive",
      "It holds isocyanate: once you are sensitised, a trace brings on asthma. It stains and sticks"
          + " to skin.",
      "Wear nitrile gloves, air the room, never heat or sand it before it has cured, and follow its"
          + " safety data sheet."),
  EPOXY(
      Severity.HEALTH,
      "epoxy-skin",
      "Uncured epoxy can make skin allergic for life; a large batch in a pot can get hot and smoke.",
      "Wear nitrile gloves, clean skin with soap and not with solvent, mix small and spread it"
          + " out."),
  FORMALDEHYDE(
      Severity.HEALTH,
      "formaldehyde-adhesive",
      "It gives off formaldehyde while it cures, and its powder and dust irritate.",
      "Air the room until it has cured, wear gloves, and a dust mask when you mix or sand."),
  INSTANT(
      Severity.HEALTH,
      "instant-adhesive",
      "It bonds skin and eyelids in seconds; cotton soaked with it can get hot enough to burn.",
      "Wear eye protection and no cotton gloves, keep rags away; for eyes rinse and see a doctor."),
  SOLVENT(
      Severity.DANGER,
      "flammable-vapour",
      "Solvent-borne kinds give off vapour that runs along the floor to a pilot light and catches.",
      "Put out every flame and heater, open doors for cross draught, wear what the safety data sheet"
          + " names."),
  HOT(
      Severity.HEALTH,
      "hot-adhesive",
      "It is hot enough to burn and sticks to skin.",
      "Keep cold water at hand and cool a burn at once.");

  private final Severity severity;
  private final String code;
  private final String what;
  private final String measure;

  AdhesiveHazard(Severity severity, String code, String what, String measure) {
    this.severity = severity;
    this.code = code;
    this.what = what;
    this.measure = measure;
  }

  private Caution caution() {
    return new Caution(code, severity, Message.of(what), Message.of(measure));
  }

  /** The cautions for a kind of adhesive; none for plain water-borne ones. */
  static List<Caution> of(Adhesive.Family family) {
    List<Caution> cautions = new ArrayList<>();
    switch (family) {
      case POLYURETHANE_ONE_PART -> cautions.add(ISOCYANATE.caution());
      case EPOXY -> cautions.add(EPOXY.caution());
      case UREA_FORMALDEHYDE, RESORCINOL -> cautions.add(FORMALDEHYDE.caution());
      case CYANOACRYLATE -> cautions.add(INSTANT.caution());
      case CONTACT, CONSTRUCTION -> cautions.add(SOLVENT.caution());
      case HOT_HIDE, HOT_MELT -> cautions.add(HOT.caution());
      case PVA_WHITE, PVA_YELLOW, PVA_CROSSLINKING, LIQUID_HIDE, FISH, CASEIN -> {}
    }
    return cautions;
  }
}
