package benchlore.schedules.caution;

import static benchlore.schedules.answer.Caution.Severity.DANGER;
import static benchlore.schedules.answer.Caution.Severity.HEALTH;
import static benchlore.schedules.answer.Caution.Severity.WORK;

/** Adhesives, and how a glue-up can fail. */
public final class GlueUpRows {
  public static final CautionRow ISOCYANATE_ADHESIVE =
      CautionRow.practice(
          "isocyanate-adhesive",
          "isocyanate in the glue",
          HEALTH,
          "It holds isocyanate: once you are sensitised, a trace brings on asthma. It stains and"
              + " sticks to skin.",
          "Wear nitrile gloves, air the room, never heat or sand it before it has cured, and follow"
              + " its safety data sheet.");

  public static final CautionRow FORMALDEHYDE_ADHESIVE =
      CautionRow.practice(
          "formaldehyde-adhesive",
          "formaldehyde in the glue",
          HEALTH,
          "It gives off formaldehyde while it cures, and its powder and dust irritate.",
          "Air the room until it has cured, wear gloves, and a dust mask when you mix or sand.");

  public static final CautionRow INSTANT_ADHESIVE =
      CautionRow.practice(
          "instant-adhesive",
          "instant adhesive",
          HEALTH,
          "It bonds skin and eyelids in seconds; cotton soaked with it can get hot enough to burn.",
          "Wear eye protection and no cotton gloves, keep rags away; for eyes rinse and see a"
              + " doctor.");

  public static final CautionRow FLAMMABLE_VAPOUR =
      CautionRow.practice(
          "flammable-vapour",
          "flammable vapour",
          DANGER,
          "Solvent-borne kinds give off vapour that runs along the floor to a pilot light and"
              + " catches.",
          "Put out every flame and heater, open doors for cross draught, wear what the safety data"
              + " sheet names.");

  public static final CautionRow HOT_ADHESIVE =
      CautionRow.practice(
          "hot-adhesive",
          "hot adhesive",
          HEALTH,
          "It is hot enough to burn and sticks to skin.",
          "Keep cold water at hand and cool a burn at once.");

  public static final CautionRow STALE_SURFACE =
      CautionRow.practice(
          "stale-surface",
          "stale surface",
          WORK,
          "A cut face bonds less well after {0}.",
          "Take a light cut or abrade across it just before you spread.");

  public static final CautionRow OILY_WOOD =
      CautionRow.practice(
          "oily-wood",
          "oily wood",
          WORK,
          "Oil creeps back to a cleaned face and keeps the adhesive off the wood.",
          "Scrape or abrade the faces just before glueing, brush off the dust, and spread within"
              + " {0}. Glue a test piece and break it.");

  public static final CautionRow MOISTURE_APART =
      CautionRow.practice(
          "moisture-apart",
          "moisture apart",
          WORK,
          "Parts at {0} and {1} moisture will move against each other.",
          "Let them lie together until they are within {0}, or the joint opens or steps.");

  public static final CautionRow DAMP_WOOD =
      CautionRow.practice(
          "damp-wood",
          "damp wood",
          WORK,
          "Wood at {0} sets slowly and shrinks after.",
          "Dry it to {0} or less first.");

  public static final CautionRow TOO_DRY_TO_CURE =
      CautionRow.practice(
          "too-dry-to-cure",
          "too dry to cure",
          WORK,
          "This adhesive cures on moisture; wood at {0} has little to give.",
          "Wipe one face with a damp cloth, as the label says, before you spread.");

  public static final CautionRow DRY_WOOD =
      CautionRow.practice(
          "dry-wood",
          "dry wood",
          WORK,
          "Wood at {0} drinks the adhesive quickly.",
          "Spread both faces and close sooner than usual.");

  public static final CautionRow HUMID_AIR =
      CautionRow.practice(
          "humid-air",
          "humid air",
          WORK,
          "At {0} humidity the water has nowhere to go.",
          "Dry the air, or leave the clamps on longer than planned and test a scrap.");

  public static final CautionRow PRESSURE_SHORT =
      CautionRow.practice(
          "pressure-short",
          "pressure short",
          WORK,
          "\"{joint}\" gets {0} with {1} clamps; {2} would give the least advised.",
          "Use more or stronger clamps, or see that the dry joint closes by hand.");

  public static final CautionRow NO_ROW_OF_CLAMPS =
      CautionRow.practice(
          "no-row-of-clamps",
          "more than hand clamps give",
          WORK,
          "No row of these clamps presses \"{joint}\" to the {0} this wood and adhesive ask for: {1}"
              + " are all that fit side by side, over and under, and give {2} at most.",
          "Use a press or heavier screws, glue narrower strips one after the other, or an adhesive"
              + " that asks for contact alone, such as an epoxy.");

  public static final CautionRow OVER_CLAMPING =
      CautionRow.practice(
          "over-clamping",
          "over clamping",
          WORK,
          "Clamps at full force press \"{joint}\" past {0} and starve the line.",
          "Tighten to about {0} a clamp: an even thin bead along the line, then stop.");

  public static final CautionRow SUB_ASSEMBLIES =
      CautionRow.practice(
          "sub-assemblies",
          "glue in stages",
          WORK,
          "It can't all be closed in one go: glue it in {0} steps. At once it would take {1} clamps"
              + " of the {2} there are.",
          "Dry-fit the whole first; take a light cut off later joints before their turn.{hands}");

  public static final CautionRow SUNKEN_JOINT =
      CautionRow.practice(
          "sunken-joint",
          "sunken joint",
          WORK,
          "Water in the adhesive swells the wood at the joint for days.",
          "Cut flush only after {0}, or the joint sinks and shows under gloss.");

  public static final CautionRow CREEP =
      CautionRow.practice(
          "creep",
          "creep",
          WORK,
          "This adhesive gives slowly under steady load.",
          "Not for bent laminations, joints without a shoulder, or hot places.");

  public static final CautionRow KEEP_DRY =
      CautionRow.practice(
          "keep-dry",
          "keep dry",
          WORK,
          "The set joint lets go when it gets wet.",
          "Indoors and dry only; seal it if damp may reach it.");

  public static final CautionRow COLD_NIGHT =
      CautionRow.practice(
          "cold-night",
          "cold night",
          WORK,
          "The room falls below {0} {1} after the clamps come off, before the joint has its full"
              + " strength; it gains nothing while it is that cold.",
          "Leave the clamps on and keep it at {0} or more for {1} after, or don't load it before"
              + " the time planned here.");

  private GlueUpRows() {}
}
