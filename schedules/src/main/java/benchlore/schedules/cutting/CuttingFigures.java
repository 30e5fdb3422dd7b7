package benchlore.schedules.cutting;

/** Limits and rules of thumb of this package, one a line; sources in {@link CuttingSources}. */
final class CuttingFigures {
  /** Deepest pass by hand or on a router table, metres (1/8 in). */
  static final double HAND_PASS_METRE = 0.003175;

  /** Usual pass of a stiff CNC, bit diameters. */
  static final double RIGID_PASS_DIAMETERS = 1;

  /** Usual pass of a light CNC, bit diameters. */
  static final double LIGHT_PASS_DIAMETERS = 0.5;

  /** Deepest pass anyone publishes, bit diameters. */
  static final double MOST_PASS_DIAMETERS = 3;

  /** Chip load lost for each diameter beyond the first: 25 % at 2 D, 50 % at 3 D. */
  static final double CHIP_LOST_PER_DIAMETER = 0.25;

  /** Share of the published chip load a light machine stands. */
  static final double LIGHT_CHIP_SHARE = 0.5;

  /** Thinner chips rub and burn, metres (0.002 in). */
  static final double RUBBING_METRE = 0.0000508;

  /** Larger bits than this belong in a table, metres (common practice, 1 in). */
  static final double TABLE_ONLY_DIAMETER_METRE = 0.0254;

  private CuttingFigures() {}
}
