package benchlore.schedules.caution;

import static benchlore.schedules.answer.Caution.Severity.WORK;

/** How a coat can be spoiled, and the sheen. */
public final class CoatingRows {
  public static final CautionRow COLD_WHILE_WET =
      CautionRow.practice(
          "cold-while-wet",
          "cold while wet",
          WORK,
          "The film is still wet when the work cools to {0}, below its minimum of {1}. From {when}.",
          "{instead}Keep room and work at {0} or more until it is dry.");

  public static final CautionRow HOT_WHILE_WET =
      CautionRow.practice(
          "hot-while-wet",
          "hot while wet",
          WORK,
          "The air reaches {0}, above the {1} this finish stands while wet: it drags, bubbles or"
              + " skins over. From {when}.",
          "{instead}Work in the shade or a cooler hour, under {0}.");

  public static final CautionRow DAMP_WHILE_WET =
      CautionRow.practice(
          "damp-while-wet",
          "damp while wet",
          WORK,
          "The air reaches {0} humidity, above the {1} this finish stands while wet. From {when}.",
          "{instead}Run a dehumidifier or dry heat to stay under {0}.");

  public static final CautionRow DRY_WHILE_WET =
      CautionRow.practice(
          "dry-while-wet",
          "dry while wet",
          WORK,
          "The air falls to {0} humidity, below the {1} this finish needs to cure. From {when}.",
          "{instead}Damp the air to {0} or more; never wet the film.");

  public static final CautionRow DEW_WHILE_WET =
      CautionRow.practice(
          "dew-while-wet",
          "dew while wet",
          WORK,
          "The work's margin over the dew point falls to {0}; under {1} dew may settle and dull or"
              + " lift the film. From {when}.",
          "{instead}Keep heat on the work through the night so that it stays {0} above the dew"
              + " point.");

  public static final CautionRow DEW_BEFORE_COATING =
      CautionRow.practice(
          "dew-before-coating",
          "dew before coating",
          WORK,
          "The surface is only {0} above the dew point; water may settle under or in the coat.",
          "Warm the work to {0} or more, or dry the air, before you coat.");

  public static final CautionRow BLUSH =
      CautionRow.practice(
          "blush",
          "blush",
          WORK,
          "Fast solvents chill the film, and the surface is only {0} above the dew point; under"
              + " about {1} it may blush (turn milky). From {when}.",
          "{instead}Wait for drier air, warm the work and the room, or use the slow thinner the"
              + " label allows.");

  public static final CautionRow THICK_FILM =
      CautionRow.practice(
          "thick-film",
          "thick film",
          WORK,
          "A coat of {0} is thicker than this finish is made for: it may skin over, sag or wrinkle,"
              + " and the waits are the least to count on.",
          "Put on several coats of at most {0}.");

  public static final CautionRow RECOAT_WINDOW_NARROW =
      CautionRow.practice(
          "recoat-window-narrow",
          "recoat window narrow",
          WORK,
          "In this air the recoat window may close before it is sure to be open.",
          "Plan to wait until it sands to powder, scuff it, and only then recoat.");

  public static final CautionRow RECOAT_WINDOW_MISSED =
      CautionRow.practice(
          "recoat-window-missed",
          "window missed",
          WORK,
          "The recoat window has closed: unscuffed, this coat may peel.",
          "Scuff it dull all over first, or come back while the window is open.");

  public static final CautionRow POT_LIFE =
      CautionRow.practice(
          "pot-life",
          "pot life",
          WORK,
          "Once mixed, use the batch within {0}; warmth shortens it.",
          "Mix only what this coat takes, and clean the tools before it sets.");

  public static final CautionRow FIRST_COAT_SOAKS =
      CautionRow.practice(
          "first-coat-soaks",
          "first coat soaks",
          WORK,
          "Bare wood drinks the first coat; the figure is for what takes up nothing.",
          "Have more at hand, most for end grain.");

  public static final CautionRow TRY_ON_OFFCUT =
      CautionRow.practice(
          "try-on-offcut",
          "try on offcut",
          WORK,
          "Makers' mixtures within one family differ.",
          "Try the whole stack on an offcut first; both labels win over this table.");

  public static final CautionRow BARRIER_WITHOUT_GAPS =
      CautionRow.practice(
          "barrier-without-gaps",
          "a barrier without gaps",
          WORK,
          "A barrier only works where it covers without gaps.",
          "Try the whole stack on an offcut first; both labels win over this table.");

  public static final CautionRow DOES_NOT_HOLD =
      CautionRow.practice(
          "does-not-hold",
          "does not hold on this",
          WORK,
          "This pair does not hold: it crawls, wrinkles or peels.",
          "Take the old finish off, or choose another over it.");

  public static final CautionRow RUB_THROUGH =
      CautionRow.practice(
          "rub-through",
          "rub through",
          WORK,
          "The whole film is {0}; levelling takes up to {1} and goes through at edges first.",
          "Put on another coat before rubbing, and stay off the edges until last.");

  public static final CautionRow WITNESS_LINES =
      CautionRow.practice(
          "witness-lines",
          "witness lines",
          WORK,
          "These coats lie on each other like pages: rubbing through one leaves a visible outline.",
          "Keep all the rubbing inside the last coat, or make that coat a full one.");

  public static final CautionRow STIR_FLATTING =
      CautionRow.practice(
          "stir-flatting",
          "stir flatting",
          WORK,
          "The powder that dulls a flatted finish sinks; unstirred it dries in patches.",
          "Stir from the bottom before and while you coat; use it for the last coat only.");

  private CoatingRows() {}
}
