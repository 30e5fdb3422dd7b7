package benchlore.schedules.caution;

import static benchlore.schedules.answer.Caution.Severity.DANGER;
import static benchlore.schedules.answer.Caution.Severity.WORK;

/** Sanding bare wood, old films and cured ones. */
public final class SandingRows {
  public static final CautionRow OLD_FILM_LEAD =
      CautionRow.practice(
          "old-film-lead",
          "lead in old paint",
          DANGER,
          "Old paint or varnish may hold lead; its dust poisons you and above all children.",
          "Test it before the first stroke. If it holds lead, don't dry-sand it: follow your local"
              + " rules or call a licensed firm.");

  public static final CautionRow TOO_DEEP_TO_SAND =
      CautionRow.practice(
          "too-deep-to-sand",
          "too deep to sand",
          WORK,
          "Marks {0} deep take long to sand and the face won't stay flat.",
          "Plane, scrape or strip first, then plan again from that surface.");

  public static final CautionRow SANDED_TOO_FINE =
      CautionRow.practice(
          "sanded-too-fine",
          "sanded too fine",
          WORK,
          "The wood is already finer than the finish asks for; it may take stain pale and hold a"
              + " film less well.",
          "Scuff it lightly with the finish's own grade, or try the finish on scrap sanded alike.");

  public static final CautionRow SOFT_WOOD =
      CautionRow.practice(
          "soft-wood",
          "soft wood",
          WORK,
          "Soft wood shows every scratch, so the finer half of the range is planned; guides"
              + " disagree where it will be stained.",
          "Use light pressure and fresh paper. For stain, try the coarser end on scrap too.");

  public static final CautionRow COARSE_KNIFE_MARKS =
      CautionRow.practice(
          "coarse-knife-marks",
          "coarse knife marks",
          WORK,
          "Knife marks further apart than {0} tear grain deeper than they look.",
          "Feed slower or take a last light cut, and look for torn grain.");

  public static final CautionRow TWO_SCALES =
      CautionRow.practice(
          "two-scales",
          "two grade scales",
          WORK,
          "A grade without a P is on another scale: above 220 the same number is much finer.",
          "Go by the label in this plan, scale and number together.");

  public static final CautionRow BELT_DIGS =
      CautionRow.practice(
          "belt-digs",
          "belt digs",
          WORK,
          "A belt sander digs in within a second if tipped or stopped, and cuts through veneer.",
          "Start and stop it off the work, keep it flat and moving, along the grain.");

  public static final CautionRow LONG_PASS =
      CautionRow.practice(
          "long-pass",
          "a long pass",
          WORK,
          "The first pass is long, and it already uses the coarsest grade on the shelf.",
          "A coarser grade may save time: ask which grade to buy.");

  public static final CautionRow FIGURED_LAST_STROKES =
      CautionRow.practice(
          "figured-last-strokes",
          "last strokes with the figure",
          WORK,
          "Figured wood shows scratches from every side.",
          "Finish by hand on a block with the last grade, along the board, and look in raking"
              + " light.");

  public static final CautionRow PORES_STAY_OPEN =
      CautionRow.practice(
          "pores-stay-open",
          "pores stay open",
          WORK,
          "The pores of this wood will show as fine pits through any film.",
          "Right for an open-pored look; for a flat film ask for filled pores.");

  public static final CautionRow KNOCK_OFF_LIGHTLY =
      CautionRow.practice(
          "knock-off-lightly",
          "knock off lightly",
          WORK,
          "Sanding hard after wetting cuts new fibres, which stand up again under the first coat.",
          "Let it dry right through, then only take off the fuzz: two or three light strokes.");

  public static final CautionRow GRADE_TO_BUY =
      CautionRow.practice(
          "grade-to-buy",
          "a grade worth buying",
          WORK,
          "{grade} is planned for a side step but is not on the shelf.",
          "Buy it before you start, or use the nearest finer grade you have.");

  public static final CautionRow NO_CLOSE_GRADE =
      CautionRow.practice(
          "no-close-grade",
          "no close grade",
          WORK,
          "No grade of this scale has grain close to what was asked for.",
          "Where scratches matter, take the finer neighbour and sand longer.");

  public static final CautionRow BEST_AT_THE_EDGE =
      CautionRow.practice(
          "best-at-the-edge",
          "best at the edge of the range",
          WORK,
          "The best stepover is at the edge of the range asked about.",
          "Widen the range to see whether it is better still beyond.");

  public static final CautionRow CURE_BEFORE_RUBBING =
      CautionRow.practice(
          "cure-before-rubbing",
          "cure before rubbing",
          WORK,
          "A film that isn't fully cured clogs paper, shrinks back and loses its gloss.",
          "Wait for the full cure on the label before rubbing out.");

  public static final CautionRow MAINS_AND_WATER =
      CautionRow.practice(
          "mains-and-water",
          "mains and water",
          DANGER,
          "Wet sanding with a mains-powered sander can kill.",
          "Wet-sand by hand on a block, or use a tool made and rated for it; dry papers need dust"
              + " extraction and a close-fitting particle respirator.");

  public static final CautionRow NO_STEEL_WOOL_ON_WATERBORNE =
      CautionRow.practice(
          "no-steel-wool-on-waterborne",
          "no steel wool under or on waterborne",
          WORK,
          "Bits of steel wool left in or under a waterborne film rust into dark specks.",
          "Use nonwoven pads on waterborne finishes.");

  public static final CautionRow HALF_THE_FILM_GOES =
      CautionRow.practice(
          "half-the-film-goes",
          "half the film goes",
          WORK,
          "Rubbing out takes more than half of this film.",
          "Add a coat first, and keep off edges and corners, where it is thinnest.");

  private SandingRows() {}
}
