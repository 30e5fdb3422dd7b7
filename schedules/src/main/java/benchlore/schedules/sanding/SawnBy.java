package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * What sawed a face, with the depth of the marks it leaves. From memory; measure where it counts.
 */
public enum SawnBy {
  /** Rough from the sawmill: plane it before sanding. */
  SAWMILL(500, 1000),
  /** A shop bandsaw. */
  BANDSAW(150, 300),
  /** A table or track saw with a clean rip blade. */
  CIRCULAR_SAW(60, 150);

  private final double lowMicron;
  private final double highMicron;

  SawnBy(double lowMicron, double highMicron) {
    this.lowMicron = lowMicron;
    this.highMicron = highMicron;
  }

  /** Depth of the marks, micrometres; the plan takes the deep end. */
  public SourcedRange depth() {
    Provenance from = Provenance.fromMemory("depth of saw marks");
    return SourcedRange.range(lowMicron, highMicron, Unit.MICRON, from);
  }
}
