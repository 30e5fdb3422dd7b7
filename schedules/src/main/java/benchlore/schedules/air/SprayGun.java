package benchlore.schedules.air;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Unit;

/** Kinds of spray gun by how much of the finish lands on the work. The low end is used. */
public enum SprayGun {
  /** High volume, low pressure: at most 10 psi at the cap. */
  HIGH_VOLUME_LOW_PRESSURE(0.5, 0.6),
  /** Airless; the regulation's 25 percent and the trade's 40 to 50 are kept as one range. */
  AIRLESS(0.25, 0.5),
  /** Airless with air at the tip. */
  AIR_ASSISTED_AIRLESS(0.6, 0.8),
  /** Older gun with a cup and high pressure. */
  CONVENTIONAL_CUP(0.25, 0.3);

  private final double low;
  private final double high;

  SprayGun(double low, double high) {
    this.low = low;
    this.high = high;
  }

  /** Share of the solids that lands on the work, 0 to 1. */
  public Datum transfer() {
    return Datum.range(
        low,
        high,
        Unit.RATIO,
        Provenance.source(
            "Finishing-trade primer on transfer efficiency; Wisconsin NR 440.48",
            "percent by gun; table 1"));
  }
}
