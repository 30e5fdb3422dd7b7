package benchlore.schedules.movement;

/** Limits and rules of thumb of this package, one a line; sources in {@link FitSources}. */
final class FitFigures {
  /** Widest panel accepted, metres. */
  static final double MOST_WIDTH_METRE = 3;

  /** Thinnest and thickest board accepted, metres: the settling rule knows no others. */
  static final double LEAST_THICKNESS_METRE = 0.003;

  static final double MOST_THICKNESS_METRE = 0.1;

  /** Moisture accepted, percent: under the driest air met, and near where movement stops. */
  static final double LEAST_MOISTURE_PERCENT = 3;

  static final double MOST_MOISTURE_PERCENT = 25;

  /** Where the straight rule is published to hold, percent. */
  static final double STRAIGHT_LOW_PERCENT = 6;

  static final double STRAIGHT_HIGH_PERCENT = 14;

  /** Where shrinkage starts and the second form ends, percent: the handbook's assumption. */
  static final double GREEN_PERCENT = 30;

  /** Where real wood leaves the line of the second form, percent. From memory of its curves. */
  static final double LINE_LOW_PERCENT = 3;

  static final double LINE_HIGH_PERCENT = 25;

  /** Off the middle of the year by more than this is worth a caution, points. From memory. */
  static final double OFF_MIDDLE_POINTS = 2;

  /** Travel that screws and joint take up by giving a little, metres. From memory. */
  static final double RIGID_METRE = 0.0008;

  /** Spare room in a slot beyond the travel, both ends together, metres. From memory. */
  static final double SLOT_SPARE_METRE = 0.001;

  /** More layers than this creep and squash, so use a slip of wood or card. From memory. */
  static final int MOST_LAYERS = 8;

  /** A gap wider than this in the dry season looks careless, metres. Common practice. */
  static final double WIDE_GAP_METRE = 0.0032;

  /** Time for the difference to fall to 1/e in 25 mm stickered boards, days. From memory. */
  static final double SETTLE_LOW_DAYS = 5;

  static final double SETTLE_HIGH_DAYS = 15;

  /** Board the settling days are for, metres; time goes with the square of thickness. */
  static final double SETTLE_THICKNESS_METRE = 0.025;

  /** As near as wood is called settled, points. */
  static final double SETTLED_POINTS = 1;

  /** Colder than this, wood settles much slower than the range says, deg C. From memory. */
  static final double SLOW_CELSIUS = 12;

  private FitFigures() {}
}
