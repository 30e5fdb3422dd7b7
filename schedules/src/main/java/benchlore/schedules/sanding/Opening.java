package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * The grades that open a surface, a row a kind of marks: from the coarsest to the finest the trade
 * begins with. Deeper marks may open coarser; nothing opens finer than its row.
 *
 * @param grades P numbers
 */
record Opening(SourcedRange grades) {
  private static final String GUIDE = "Going Through the Grits";

  /** Saw marks. */
  static final Opening SAWN =
      row(80, 80, Provenance.source("Sanding guide", "rough or milled stock starts at 80"));

  /** Marks of planer knives, a ball-nose or a straight cutter. */
  static final Opening CUT =
      row(
          100,
          120,
          Provenance.source(GUIDE, "milling marks not very obvious: 100 or maybe even 120"));

  /** Planed with knife marks so close that the face counts as finished. */
  static final Opening FINELY_PLANED =
      row(120, 150, Provenance.commonPractice("finely planed or scraped"));

  /** Torn or chipped grain. */
  static final Opening TORN =
      row(80, 120, Provenance.source(GUIDE, "most situations 80 to 120; deep gouges 80"));

  /** Sanded before, or a film: what is there decides. */
  static final Opening ANY =
      row(12, 2500, Provenance.commonPractice("no cutter's marks to take out"));

  /** A scale's number stands for grain a tenth apart: CAMI 120 opens where P120 does. */
  private static final double SAME_NUMBER = 1.1;

  private static Opening row(double coarsest, double finest, Provenance from) {
    return new Opening(SourcedRange.range(coarsest, finest, Unit.COUNT, from));
  }

  /** The finest grain that opens such a surface. */
  double finestMicron() {
    return Grits.micronOfP(grades.high());
  }

  /** Whether a grade is coarse enough to open such a surface. */
  boolean takes(double micron) {
    return micron * SAME_NUMBER >= finestMicron();
  }
}
