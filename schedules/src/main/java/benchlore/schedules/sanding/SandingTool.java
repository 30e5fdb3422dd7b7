package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * What drives the abrasive. One row a tool. But for the pace of the random-orbit sander every
 * figure is from memory: no published removal rate for hand-held sanding of wood was found. Weigh
 * one disc's work and correct them.
 */
public enum SandingTool {
  /** Paper round a cork or rubber block, by hand, along the grain. */
  BLOCK("a block", 8.3e-8, 0.0020, 600, 0),
  /** A 125 mm random-orbit sander moved slowly, little more than its own weight on it. */
  RANDOM_ORBIT("a random-orbit sander", 3.0e-7, 0.125 * 0.025, 900, 0),
  /** A hand-held 75 mm belt sander: fast and flat, digs in; not used finer than P150 nor last. */
  BELT("a belt sander", 1.0e-6, 0.0075, 3600, 95),
  /** Paper in the fingers or on a shaped pad, for mouldings and edges. */
  HAND_PROFILE("paper by hand on the profile", 4.0e-8, 0.0008, 480, 0);

  private final String words;
  private final double removal;
  private final double cover;
  private final double discSeconds;
  private final double finestMicron;

  SandingTool(String words, double removal, double cover, double discSeconds, double finestMicron) {
    this.words = words;
    this.removal = removal;
    this.cover = cover;
    this.discSeconds = discSeconds;
    this.finestMicron = finestMicron;
  }

  /**
   * A tool's figures.
   *
   * @param removal wood removed with P80 in wood of the reference hardness, m3 a second
   * @param cover fastest even covering pass, m2 a second: pad width x pace
   * @param discLife working seconds of a disc, sheet or belt in clean wood
   */
  record Row(double removal, double cover, SourcedRange discLife) {}

  /** The tool in a sentence: "a block". */
  public String words() {
    return words;
  }

  Row row() {
    Provenance from = Provenance.fromMemory("no published disc life found");
    return new Row(removal, cover, SourcedRange.of(discSeconds, Unit.SECOND, from));
  }

  /** Where the pace of a covering pass comes from. */
  Provenance coverFrom() {
    return this == RANDOM_ORBIT
        ? SandingFigures.PACE
        : Provenance.fromMemory("pad width times an even pace");
  }

  /** True if this tool is used with grain of this size at all. */
  boolean takes(double micron) {
    return micron >= finestMicron;
  }

  /** True if the last pass may be made with this tool. */
  boolean finishes() {
    return this != BELT;
  }
}
