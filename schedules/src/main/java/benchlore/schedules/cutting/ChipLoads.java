package benchlore.schedules.cutting;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * Chip load by material and bit diameter, for a cut one diameter deep.
 *
 * <p>Rows are printed tables in thousandths of an inch. Where two tables cover a diameter (1/8 and
 * 1/4 in), the lower figure of the two is kept at each end. Between diameters the ends are read off
 * a straight line; below 1/8 in they shrink with the diameter; above 1/2 in they stay.
 */
final class ChipLoads {
  private static final double INCH = 0.0254;
  private static final double[] DIAMETERS = {0.125 * INCH, 0.25 * INCH, 0.375 * INCH, 0.5 * INCH};

  // Low and high of 1/8, 1/4, 3/8 and 1/2 in, thousandths of an inch.
  private static final double[] SOFTWOOD = {4, 6, 10, 13, 17, 20, 21, 23};
  private static final double[] HARDWOOD = {2.5, 5, 5, 10, 15, 18, 19, 21};
  private static final double[] MDF = {4, 7, 13, 16, 20, 23, 25, 27};
  private static final double[] PLYWOOD = {4, 6, 10, 13, 17, 20, 21, 23};

  private ChipLoads() {}

  /** The range for one edge and one turn, metres. */
  static SourcedRange of(CutMaterial stock, double diameterMetre) {
    double[] row = row(stock);
    Provenance from =
        diameterMetre <= DIAMETERS[1]
            ? CuttingSources.CHIP_QUARTER
            : CuttingSources.CHIP_BY_DIAMETER;
    return SourcedRange.range(
        at(row, 0, diameterMetre), at(row, 1, diameterMetre), Unit.METRE, from);
  }

  private static double[] row(CutMaterial stock) {
    return switch (stock) {
      case SOFTWOOD -> SOFTWOOD;
      case HARDWOOD -> HARDWOOD;
      case MDF -> MDF;
      case PLYWOOD -> PLYWOOD;
    };
  }

  private static double at(double[] row, int end, double diameter) {
    double thousandth = INCH / 1000;
    int last = DIAMETERS.length - 1;
    if (diameter <= DIAMETERS[0]) {
      return row[end] * thousandth * diameter / DIAMETERS[0];
    }
    if (diameter >= DIAMETERS[last]) {
      return row[2 * last + end] * thousandth;
    }
    int i = 0;
    while (diameter > DIAMETERS[i + 1]) {
      i++;
    }
    double share = (diameter - DIAMETERS[i]) / (DIAMETERS[i + 1] - DIAMETERS[i]);
    double before = row[2 * i + end];
    double after = row[2 * i + 2 + end];
    double between = before + share * (after - before);
    return between * thousandth;
  }
}
