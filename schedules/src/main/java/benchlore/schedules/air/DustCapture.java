package benchlore.schedules.air;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/** How much of the dust is caught at the tool. The low end of each range is used. */
public enum DustCapture {
  /** Hand block or sander without bag. */
  NONE(0, 0, ""),
  /** The sander's own bag or box. */
  OWN_BAG(0.5, 0.7, ""),
  /** A vacuum on the sander's port. */
  VACUUM(0.86, 0.90, "Controlling wood dust from orbital hand sanders, abstract"),
  /** A vacuum on the port over a downdraught table. */
  VACUUM_AND_TABLE(0.9, 0.95, "");

  private final double low;
  private final double high;
  private final String title;

  DustCapture(double low, double high, String title) {
    this.low = low;
    this.high = high;
    this.title = title;
  }

  /** Share of the dust's mass caught, 0 to 1. */
  public SourcedRange share() {
    Provenance from =
        title.isEmpty()
            ? Provenance.fromMemory("no measured figure seen")
            : Provenance.source(title, "86 percent by mass in the shop, 90 in the laboratory");
    return SourcedRange.range(low, high, Unit.RATIO, from);
  }
}
