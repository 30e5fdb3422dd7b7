package benchlore.schedules.caution;

import static benchlore.schedules.answer.Caution.Severity.DANGER;
import static benchlore.schedules.answer.Caution.Severity.HEALTH;

/** Vapour, fire and dust in the room. */
public final class AirRows {
  public static final CautionRow OVER_TENTH_OF_EXPLOSIVE_LIMIT =
      CautionRow.practice(
          "over-tenth-of-explosive-limit",
          "vapour near what can explode",
          DANGER,
          "The room's air reaches {0} of the lower explosive limit; above a tenth it counts as"
              + " hazardous to be in.",
          "Give {0} of outdoor air, or coat less at a time, and stay out until the film is dry; a"
              + " mask is no help against fire.");

  public static final CautionRow OVER_EXPOSURE_LIMIT =
      CautionRow.practice(
          "over-exposure-limit",
          "vapour over the exposure limit",
          HEALTH,
          "The room's air holds {0} times what may be breathed.",
          "Give {0} of outdoor air, or coat less at a time; else {mask} while you work, and stay"
              + " out until the film is dry.");

  public static final CautionRow RE_ENTRY_NOT_REACHED =
      CautionRow.practice(
          "re-entry-not-reached",
          "stay out: the air does not clear",
          HEALTH,
          "The air is not fine again before the next coat, or not within sixty days.",
          "Wait longer between coats, or give more outdoor air{mask}.");

  public static final CautionRow NO_EXPOSURE_LIMIT =
      CautionRow.practice(
          "no-exposure-limit",
          "a solvent without a limit",
          HEALTH,
          "No exposure limit is published for {solvents}; the figures leave it out.",
          "Ask the maker, and keep air moving until no smell is left.");

  public static final CautionRow NO_EXPLOSIVE_LIMIT =
      CautionRow.practice(
          "no-explosive-limit",
          "a solvent without an explosive limit",
          DANGER,
          "No lower explosive limit is on record for {solvents}; the fire figures leave it out.",
          "Look in the safety data sheet, and keep every flame and spark away.");

  public static final CautionRow DEFER_TO_SDS =
      CautionRow.practice(
          "defer-to-sds",
          "label wins",
          HEALTH,
          "The product in hand may hold more than the solvents named.",
          "Label, safety data sheet and local codes win.");

  public static final CautionRow NEAR_WET_FILM =
      CautionRow.memory(
          "near-wet-film",
          "rich air over wet work",
          HEALTH,
          "Over wet work the air is several times richer than in the room.",
          "Draw air away from your face; clear pits and floor level too.");

  public static final CautionRow SOLVENT_CONTAINER =
      CautionRow.practice(
          "solvent-container",
          "lids on",
          DANGER,
          "An open can or a bin of wet rags gives off vapour not counted here.",
          "Lids on; waste in closed metal cans, then to a collection point.");

  public static final CautionRow SPRAY_MIST =
      CautionRow.practice(
          "spray-mist",
          "spray mist",
          DANGER,
          "Spray hangs as a mist that burns well below its flash point, coats the lungs and settles"
              + " on everything.",
          "Brush or wipe where you can. Else spray only in a filtered, rated booth or outdoors, as"
              + " local fire codes allow.");

  public static final CautionRow EXHAUST_FAN =
      CautionRow.practice(
          "exhaust-fan",
          "fan motor",
          DANGER,
          "Vapour going through a fan's motor can light.",
          "Use a fan rated for it, or blow clean air in and let it out elsewhere.");

  public static final CautionRow STATIC =
      CautionRow.practice(
          "static",
          "static",
          DANGER,
          "Pouring, spraying and wiping in dry air build up charge that can spark.",
          "Bond and earth metal cans while pouring, no plastic pails, no synthetic cloths.");

  public static final CautionRow SPARKS =
      CautionRow.practice(
          "sparks",
          "no sparks or flames",
          DANGER,
          "Motors with brushes, switches and ordinary lights spark when they run or are switched.",
          "Switch them before the can is opened and leave them alone until the film is dry and the"
              + " air clear.");

  public static final CautionRow ISOCYANATE =
      CautionRow.practice(
          "isocyanate",
          "isocyanate",
          DANGER,
          "Isocyanates can sensitise skin and lungs for good, also from the brush and from sanding"
              + " a film that is not yet cured.",
          "Choose a finish without them, or follow the safety data sheet with supplied air, gloves"
              + " and goggles; never spray or heat it at home.");

  public static final CautionRow FORMALDEHYDE =
      CautionRow.practice(
          "formaldehyde",
          "formaldehyde",
          DANGER,
          "It gives off formaldehyde as it cures, for days: it sensitises and can cause cancer.",
          "Air to the outside, keep everybody out until nothing stings, and follow the safety data"
              + " sheet.");

  public static final CautionRow LOW_BOILING_SOLVENT =
      CautionRow.memory(
          "low-boiling-solvent",
          "a solvent cartridges don't hold",
          HEALTH,
          "A solvent in this mixture boils so low that vapour cartridges let it through early.",
          "Rely on fresh air, not on a cartridge, and keep the coat small.");

  public static final CautionRow FLASH_POINT_UNKNOWN =
      CautionRow.practice(
          "flash-point-unknown",
          "flash point unknown",
          DANGER,
          "A solvent in this mixture has neither a flash point nor an explosive limit on record.",
          "Take it as flammable, and shut off flames and glowing heaters, until its safety data"
              + " sheet says otherwise.");

  public static final CautionRow MIST_AND_RAGS_BURN =
      CautionRow.memory(
          "mist-and-rags-burn",
          "mist and rags burn",
          DANGER,
          "It hardly lights as vapour, but its mist and rags can still burn.",
          "Keep flames and glowing heaters off all the same.");

  public static final CautionRow DUST_NOT_CAPTURED =
      CautionRow.practice(
          "dust-not-captured",
          "dust not captured",
          HEALTH,
          "Nothing catches the dust.",
          "Put a vacuum on the sander; it takes out most of what a mask would have to hold back.");

  public static final CautionRow DUST_BEYOND_MASK =
      CautionRow.practice(
          "dust-beyond-mask",
          "more dust than a mask holds back",
          HEALTH,
          "The air would hold more dust than a filtering mask is rated for.",
          "Catch the dust at the tool, or sand outdoors, before thinking of a mask.");

  public static final CautionRow SENSITISING_WOOD =
      CautionRow.practice(
          "sensitising-wood",
          "dust of this wood sensitises",
          HEALTH,
          "This wood can cause asthma or rashes, after which any later dust sets them off.",
          "Full capture, a fitted particle mask and covered skin from the first stroke; stop at the"
              + " first tight chest.");

  public static final CautionRow DUST_FIRE =
      CautionRow.practice(
          "dust-fire",
          "dust burns",
          DANGER,
          "Fine dust burns fast; stirred up it can explode.",
          "No sparks or flame near it, earth the hose, leave none lying.");

  private AirRows() {}
}
