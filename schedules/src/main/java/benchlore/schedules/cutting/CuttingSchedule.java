package benchlore.schedules.cutting;

import benchlore.schedules.answer.Message;

/**
 * How to make one cut.
 *
 * @param speed turning speed
 * @param feed how fast to move
 * @param passes how often
 * @param direction which way round
 */
public record CuttingSchedule(Speed speed, Feed feed, Passes passes, Direction direction) {
  /**
   * Turning speed.
   *
   * @param rpm to set
   * @param highestRpm never above this: the lower of the most cautious chart and the bit's marking
   * @param rimMetrePerSecond speed of the edge at {@code rpm}
   */
  public record Speed(double rpm, double highestRpm, double rimMetrePerSecond) {}

  /**
   * How fast to move. By hand it is a feel, not a setting: the range tells whether you are far off.
   *
   * @param lowMetrePerSecond slower rubs
   * @param highMetrePerSecond faster strains the bit or is more than the machine can push
   * @param lowChipMetre chip load at the low end
   * @param highChipMetre chip load at the high end
   */
  public record Feed(
      double lowMetrePerSecond,
      double highMetrePerSecond,
      double lowChipMetre,
      double highChipMetre) {}

  /**
   * How often. Every depth is cut at every trim setting, so the whole is their product.
   *
   * @param depthPasses passes to reach the depth
   * @param depthMetre depth of each
   * @param trimPasses sideways passes, 0 if nothing is trimmed
   * @param biteMetre bite of each, never above what was asked; 0 if nothing is trimmed
   */
  public record Passes(int depthPasses, double depthMetre, int trimPasses, double biteMetre) {
    /** All passes. */
    public int all() {
      return depthPasses * Math.max(1, trimPasses);
    }
  }

  /**
   * Which way to move, for a bit turning clockwise seen from its motor's side.
   *
   * @param turn which way round
   * @param how in words
   */
  public record Direction(Turn turn, Message how) {
    /** Which way round, seen from above. */
    public enum Turn {
      /** Tool goes counter-clockwise round the part, left to right along an edge facing you. */
      COUNTER_CLOCKWISE,
      /** Tool goes clockwise round the inside. */
      CLOCKWISE,
      /** Along a groove with the guide at the right hand. */
      GUIDE_ON_RIGHT,
      /** Router table: work from right to left between you and the bit. */
      WORK_RIGHT_TO_LEFT,
      /** Router table: frame moved so that the bit goes counter-clockwise round its inside. */
      BIT_COUNTER_CLOCKWISE_INSIDE
    }
  }
}
