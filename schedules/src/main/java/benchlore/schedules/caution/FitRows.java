package benchlore.schedules.caution;

import static benchlore.schedules.answer.Caution.Severity.WORK;

/** Fitting wood that moves. All are about the work; nobody is hurt by a tight drawer. */
public final class FitRows {
  public static final CautionRow SEASONS_ARE_A_GUESS =
      CautionRow.practice(
          "seasons-are-a-guess",
          "the seasons are a guess",
          WORK,
          "The air of the two seasons is a rough figure for such a place.",
          "Hang a cheap hygrometer there through the driest and dampest month.");

  public static final CautionRow MOVEMENT_OUTSIDE_STRAIGHT_RANGE =
      CautionRow.practice(
          "movement-outside-straight-range",
          "movement outside the straight range",
          WORK,
          "The year runs from {0} to {1} moisture; below {2} and above {3} wood no longer shrinks in"
              + " step with its water, as reckoned here.",
          "Leave a little more room, and check it in the damp season.");

  public static final CautionRow WOOD_OFF_SERVICE_MOISTURE =
      CautionRow.practice(
          "wood-off-service-moisture",
          "wood off service moisture",
          WORK,
          "The wood is at {0}; where it will live it averages {1}.",
          "Bring it nearer before fitting, or expect the gap to change.");

  public static final CautionRow LET_WOOD_SETTLE =
      CautionRow.memory(
          "let-wood-settle",
          "let the wood settle",
          WORK,
          "The wood and the shop's air differ; it will move after it is cut. {0} to {1} is a rule"
              + " of thumb, not a measurement.",
          "Stack it on stickers with air all round until two meter readings a week apart agree.");

  public static final CautionRow COLD_WOOD_SETTLES_SLOWLY =
      CautionRow.memory(
          "cold-wood-settles-slowly",
          "cold wood settles slowly",
          WORK,
          "In air this cold, wood takes far longer to settle than the range says.",
          "Let it lie somewhere warmer, or trust only the meter.");

  public static final CautionRow DRY_FIT_FIRST =
      CautionRow.practice(
          "dry-fit-first",
          "dry fit first",
          WORK,
          "Finish on both faces closes a gap that was right on bare wood.",
          "Test-fit with tape in place of the film; take it off before finishing.");

  public static final CautionRow GAP_TOO_WIDE_FOR_TAPE =
      CautionRow.practice(
          "gap-too-wide-for-tape",
          "gap too wide for tape",
          WORK,
          "The gap of {0} takes too many layers of tape; a thick stack squashes.",
          "Use a slip of wood or card planed to it.");

  public static final CautionRow WIDE_GAP_WHEN_DRY =
      CautionRow.practice(
          "wide-gap-when-dry",
          "a wide gap in the dry season",
          WORK,
          "In the dry season the finished gap opens to {0}.",
          "Quarter-sawn wood, a narrower part or a framed panel opens less.");

  public static final CautionRow PANEL_MUST_MOVE =
      CautionRow.practice(
          "panel-must-move",
          "the panel must be free to move",
          WORK,
          "Screwed or glued tight across the grain, this panel will split or bow its base.",
          "Fix it tight in one place only; elsewhere use the slots, with washers, screws snug but"
              + " not hard down, and no glue.");

  private FitRows() {}
}
