package benchlore.schedules.plan;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Unit;
import benchlore.schedules.trade.ApplicationMethod;

/**
 * Hands-on times that no other rule gives. All from memory of ordinary shop pace: time yourself
 * once and correct them.
 */
final class PlanRules {
  private static final Provenance FROM = Provenance.fromMemory("ordinary shop pace");

  /** Joint and dry-clamp one joint. */
  static final Datum JOINT = Datum.of(900, Unit.SECOND, FROM);

  /** Lay out, wipe off and clean up round one glue-up. */
  static final Datum AROUND_A_GLUE_UP = Datum.of(900, Unit.SECOND, FROM);

  /** A between-coats scuff, once over, about the pace of a finishing pass. */
  static final Datum SCUFF_PACE = Datum.of(240, Unit.SECOND_PER_SQUARE_METRE, FROM);

  /** Nibs and brush marks of a brushed film, to level when it is rubbed out. */
  static final Datum LEVEL =
      Datum.of(15, Unit.MICRON, Provenance.fromMemory("nibs and brush marks of a brushed film"));

  /**
   * Time from jointing to glue: the edges are jointed at the dry clamping before, so the glue-up
   * warns and asks for a fresh light cut.
   */
  static final Datum SINCE_JOINTED = Datum.of(3_600, Unit.SECOND, FROM);

  /** Side hardness where a species states none, about that of cherry; the working says so. */
  static final Datum HARDNESS =
      Datum.of(4_000, Unit.NEWTON, Provenance.fromMemory("a middling hardwood; none is stated"));

  /** Take the clamps off one blank and scrape the squeeze-out. */
  static final Datum UNCLAMP = Datum.of(900, Unit.SECOND, FROM);

  /** Test-fit one part, tape on, and mark it. */
  static final Datum FIT = Datum.of(1_200, Unit.SECOND, FROM);

  /** Set out, wipe the dust off, and clean up after a coat. */
  static final Datum AROUND_A_COAT = Datum.of(2_400, Unit.SECOND, FROM);

  /** Install one finished part. */
  static final Datum INSTALL = Datum.of(1_800, Unit.SECOND, FROM);

  /** Room to slide left on each side of a moving part in the damp season. */
  static final Datum SLIP = Datum.of(0.0005, Unit.METRE, FROM);

  /** Until a grain filler can be sanded: a waterborne one within hours, an oil-based one a day. */
  static final Datum FILLER_DRIES =
      Datum.range(
          7_200, 86_400, Unit.SECOND, Provenance.commonPractice("grain fillers by their labels"));

  /** How far ahead the first hour fit for glue is looked for. */
  static final int GLUE_DAYS = 21;

  private PlanRules() {}

  /** Seconds to coat a square metre. */
  static Datum pace(ApplicationMethod method) {
    double seconds =
        switch (method) {
          case BRUSH -> 420;
          case WIPE -> 240;
          case PAD -> 240;
          case ROLLER -> 180;
          case FLOOD -> 300;
          case SPRAY -> 120;
        };
    return Datum.of(seconds, Unit.SECOND_PER_SQUARE_METRE, FROM);
  }
}
