package benchlore.schedules.project;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * Hands-on times that no other rule gives. All from memory of ordinary shop pace: time yourself
 * once and correct them.
 */
final class ProjectFigures {
  private static final Provenance FROM = Provenance.fromMemory("ordinary shop pace");

  /** Joint and dry-clamp one joint. */
  static final SourcedRange JOINT = SourcedRange.of(900, Unit.SECOND, FROM);

  /** Lay out, wipe off and clean up round one glue-up. */
  static final SourcedRange AROUND_A_GLUE_UP = SourcedRange.of(900, Unit.SECOND, FROM);

  /** A between-coats scuff, once over, about the pace of a finishing pass. */
  static final SourcedRange SCUFF_PACE = SourcedRange.of(240, Unit.SECOND_PER_SQUARE_METRE, FROM);

  /** Nibs and brush marks of a brushed film, to level when it is rubbed out. */
  static final SourcedRange LEVEL =
      SourcedRange.of(
          15, Unit.MICRON, Provenance.fromMemory("nibs and brush marks of a brushed film"));

  /** The last fine pass over both edges of a joint, just before the glue; part of jointing. */
  static final SourcedRange FRESH_PASS = SourcedRange.of(120, Unit.SECOND, FROM);

  /** Longest usual time to spread and close one blank, kept free after its edges are jointed. */
  static final SourcedRange CLOSE = SourcedRange.of(1_800, Unit.SECOND, FROM);

  /** Side hardness where a species states none, about that of cherry; the working says so. */
  static final SourcedRange HARDNESS =
      SourcedRange.of(
          4_000, Unit.NEWTON, Provenance.fromMemory("a middling hardwood; none is stated"));

  /** Take the clamps off one blank and scrape the squeeze-out. */
  static final SourcedRange UNCLAMP = SourcedRange.of(900, Unit.SECOND, FROM);

  /** Set out, wipe the dust off, and clean up after a coat. */
  static final SourcedRange AROUND_A_COAT = SourcedRange.of(2_400, Unit.SECOND, FROM);

  /** Longest part one pair of hands turns wet, unless it is narrow. */
  static final SourcedRange TURNED_ALONE =
      SourcedRange.of(1.5, Unit.METRE, Provenance.commonPractice("arms reach both ends"));

  /** A part no wider is lifted at its ends like a stick. */
  static final SourcedRange NARROW =
      SourcedRange.of(0.15, Unit.METRE, Provenance.commonPractice("legs, rails, slats"));

  /** Feed of a finishing pass with a ball nose, as the planner of sanding has it too. */
  static final SourcedRange FINISHING_FEED =
      SourcedRange.of(
          0.025, Unit.METRE_PER_SECOND, Provenance.commonPractice("a small machine in hardwood"));

  /** A machining time below this share of its path is not all of it. */
  static final SourcedRange MUCH_SHORTER =
      SourcedRange.of(0.5, Unit.RATIO, Provenance.fromMemory("feeds differ by a factor of two"));

  /** As near to the shop's air as the settle rule lets boards come, points. */
  static final SourcedRange SETTLED_WITHIN =
      SourcedRange.of(1, Unit.PERCENT, Provenance.fromMemory("the end of the settle rule"));

  /** What a meter may be off and boards still be settled, points. */
  static final SourcedRange METER_OFF =
      SourcedRange.of(
          3,
          Unit.PERCENT,
          Provenance.commonPractice("a pin meter reads within two points, and one to settle"));

  /** Movement below this is left out of a fit: a fine shaving. */
  static final SourcedRange MOVEMENT_TOLD =
      SourcedRange.of(
          0.0005, Unit.METRE, Provenance.commonPractice("what is seen and felt at a fit"));

  /** Above this a gap is set with a drill bit or slip: tape in many layers squashes. */
  static final SourcedRange SET_WITH_DRILL =
      SourcedRange.of(
          0.0015,
          Unit.METRE,
          Provenance.commonPractice("drills are at hand by the half millimetre"));

  /** Room to slide left on each side of a moving part in the damp season. */
  static final SourcedRange SLIP = SourcedRange.of(0.0005, Unit.METRE, FROM);

  /** How far ahead the first hour fit for glue is looked for. */
  static final int GLUE_DAYS = 21;

  private ProjectFigures() {}

  /** Seconds to coat a square metre. */
  static SourcedRange pace(ApplicationMethod method) {
    double seconds =
        switch (method) {
          case BRUSH -> 420;
          case WIPE -> 240;
          case PAD -> 240;
          case ROLLER -> 180;
          case FLOOD -> 300;
          case SPRAY -> 120;
        };
    return SourcedRange.of(seconds, Unit.SECOND_PER_SQUARE_METRE, FROM);
  }
}
