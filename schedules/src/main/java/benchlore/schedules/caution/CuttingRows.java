package benchlore.schedules.caution;

import static benchlore.schedules.answer.Caution.Severity.DANGER;
import static benchlore.schedules.answer.Caution.Severity.HEALTH;
import static benchlore.schedules.answer.Caution.Severity.WORK;

/** The router, by hand, in a table or driven. */
public final class CuttingRows {
  public static final CautionRow ROUTER_EYES_EARS_LUNGS =
      CautionRow.practice(
          "router-eyes-ears-lungs",
          "eyes, ears, lungs",
          HEALTH,
          "Chips fly, the noise harms hearing and fine dust harms lungs.",
          "Wear glasses, ear protection and a dust mask, and use extraction.");

  public static final CautionRow UNPLUG_TO_CHANGE_BIT =
      CautionRow.practice(
          "unplug-to-change-bit",
          "unplug to change the bit",
          DANGER,
          "A bit that starts while your hand is on it cuts to the bone.",
          "Pull the plug before you touch bit or collet.");

  public static final CautionRow MDF_DUST =
      CautionRow.practice(
          "mdf-dust",
          "mdf dust",
          HEALTH,
          "Sheet made with formaldehyde resin gives very fine dust.",
          "Extract at the cut and wear a fitted particle respirator.");

  public static final CautionRow CLIMB_CUT_ONLY_HELD =
      CautionRow.practice(
          "climb-cut-only-held",
          "climb cut only where the work is held",
          WORK,
          "Cutting with the turning of the bit pulls work and machine along.",
          "Rough against the turning; climb only a skim, with the work held all over.");

  public static final CautionRow CLIMB_CUT =
      CautionRow.practice(
          "climb-cut",
          "climb cut",
          DANGER,
          "Moved with the turning of the bit, the router bolts or tears the work from your hands.",
          "Always move against the turning, as described, with work or router held firmly.");

  public static final CautionRow LARGE_BIT_IN_TABLE_ONLY =
      CautionRow.practice(
          "large-bit-in-table-only",
          "large bit in a table only",
          DANGER,
          "A bit this large is hard to hold against and may catch.",
          "Use it in a router table with a fence and guard, at low speed and small passes.");

  public static final CautionRow BIT_RUBS =
      CautionRow.practice(
          "bit-rubs",
          "bit rubs",
          WORK,
          "The chip is only {0} thick: the bit rubs, burns the wood and soon goes dull.",
          "Turn slower, use fewer flutes, or move faster; never pause in the cut.");

  public static final CautionRow DEEPER_THAN_EDGES =
      CautionRow.practice(
          "deeper-than-edges",
          "deeper than the cutting edges",
          DANGER,
          "The cut is deeper than the edges are long; the shank may rub, burn or jam.",
          "Check the bit's reach first, or use a longer bit.");

  public static final CautionRow BIT_OUT_TOO_FAR =
      CautionRow.practice(
          "bit-out-too-far",
          "bit out too far",
          DANGER,
          "A bit held by too little shank bends, slips or flies out.",
          "Do not make this cut with this bit.");

  public static final CautionRow DO_NOT_BOTTOM_THE_SHANK =
      CautionRow.practice(
          "do-not-bottom-the-shank",
          "don't bottom the shank",
          WORK,
          "A shank pushed to the bottom works loose as the collet closes.",
          "Push it home, draw it back {0}, keep the curve under the edges out of the collet.");

  public static final CautionRow SHANK_IN_THE_CUT =
      CautionRow.practice(
          "shank-in-the-cut",
          "shank in the cut",
          WORK,
          "The last of the depth is cut with the shank inside the wall already made.",
          "Step down in shallow passes; never take the whole depth at once.");

  public static final CautionRow BEARING_LARGER_THAN_BIT =
      CautionRow.practice(
          "bearing-larger-than-bit",
          "bearing larger than bit",
          WORK,
          "The work will stand {0} proud of the template all round.",
          "Make the template smaller by as much, or fit a bearing of the bit's diameter.");

  public static final CautionRow LOOSE_PART =
      CautionRow.practice(
          "loose-part",
          "loose part",
          DANGER,
          "A part that comes loose under a turning bit is thrown.",
          "Stay clear, stop the spindle before you reach in, and saw tabs, don't snap.");

  public static final CautionRow HIDDEN_SCREWS =
      CautionRow.practice(
          "hidden-screws",
          "hidden screws",
          DANGER,
          "A screw or dog in the path shatters the bit.",
          "Sink or remove all metal below the final depth first.");

  public static final CautionRow SURFACING_DUST =
      CautionRow.practice(
          "surfacing-dust",
          "surfacing dust",
          HEALTH,
          "Flattening sheet stock makes clouds of very fine dust.",
          "Extract at the bit and wear a fitted particle respirator.");

  private CuttingRows() {}
}
