package benchlore.schedules.air;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Caution.Severity;
import benchlore.schedules.answer.Message;

/** The cautions of this package whose words never change, one a row. */
enum Warning {
  DEFER_TO_SDS(
      "defer-to-sds",
      Severity.HEALTH,
      "These figures are for the solvents named; the product in hand may hold others.",
      "Where the label, the safety data sheet or local codes ask for more, they win."),
  NEAR_WET_FILM(
      "near-wet-film",
      Severity.HEALTH,
      "Beside and below wet work the air is several times richer than the room's average, since"
          + " most solvent vapour sinks.",
      "Draw air away from your face across the work to the exhaust, and clear pits and floor"
          + " level too."),
  OILY_RAGS(
      "oily-rags",
      Severity.DANGER,
      "Rags, pads and sanding dust with drying oil heat up by themselves and can catch fire within"
          + " hours when heaped.",
      "Spread rags flat or hang them singly outdoors until hard, or sink them in water in a lidded"
          + " metal can; empty it daily."),
  SOLVENT_CONTAINER(
      "solvent-container",
      Severity.DANGER,
      "An open can or a bin of wet rags gives off vapour all the while, which is not counted here.",
      "Lid on between fillings, closed metal containers only, no more in the room than the job"
          + " needs; waste solvent goes to a collection point, never down a drain."),
  SPRAY_MIST(
      "spray-mist",
      Severity.DANGER,
      "Spray hangs as a mist that burns well below its flash point, coats the lungs and settles on"
          + " everything.",
      "Brush or wipe where you can. Else spray only in a filtered, rated booth or outdoors, as"
          + " local fire codes allow."),
  EXHAUST_FAN(
      "exhaust-fan",
      Severity.DANGER,
      "A fan with the vapour going through its motor can light it.",
      "Use a fan rated for flammable vapour, or blow clean air in and let the vapour out by another"
          + " opening."),
  STATIC(
      "static",
      Severity.DANGER,
      "Pouring, spraying and wiping in dry air build up charge that can spark.",
      "Bond and earth metal cans while pouring, no plastic pails, no synthetic cloths."),
  SPARKS(
      "sparks",
      Severity.DANGER,
      "Motors with brushes, switches and ordinary lights spark when they run or are switched.",
      "Switch them before the can is opened and leave them alone until the film is dry and the air clear."),
  ISOCYANATE(
      "isocyanate",
      Severity.DANGER,
      "Isocyanates can sensitise skin and lungs for good, also from the brush and from sanding a"
          + " film that is not yet cured.",
      "Choose a finish without them, or follow the safety data sheet with supplied air, gloves and"
          + " goggles; never spray or heat it at home."),
  LOW_BOILING(
      "low-boiling-solvent",
      Severity.HEALTH,
      "A solvent in this mixture boils so low that vapour cartridges let it through early.",
      "Rely on fresh air, not on a cartridge, and keep the coat small."),
  FLASH_UNKNOWN(
      "flash-point-unknown",
      Severity.DANGER,
      "A solvent in this mixture has neither a flash point nor an explosive limit on record.",
      "Take it as flammable, and shut off flames and glowing heaters, until its safety data sheet"
          + " says otherwise."),
  HARD_TO_LIGHT(
      "mist-and-rags-burn",
      Severity.DANGER,
      "A solvent with a high flash point, or thinned with water, hardly lights as vapour in a cool"
          + " shop, but mist and rags with it can still burn.",
      "Keep flames and glowing heaters off all the same.");

  private final String code;
  private final Severity severity;
  private final String what;
  private final String measure;

  Warning(String code, Severity severity, String what, String measure) {
    this.code = code;
    this.severity = severity;
    this.what = what;
    this.measure = measure;
  }

  Caution caution() {
    return new Caution(code, severity, Message.of(what), Message.of(measure));
  }
}
