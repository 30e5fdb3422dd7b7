package benchlore.schedules.air;

import benchlore.schedules.quantity.Provenance;

/** Shares of the lower explosive limit, what they mean and who says so. */
enum FireRule {
  /** Above this an atmosphere counts as hazardous to be in. */
  TENTH(
      10,
      "US confined-space rules (29 CFR), as reprinted in a coating inspector's glossary",
      "hazardous atmosphere, item 1: over 10 percent of the lower flammable limit"),
  /** The design ceiling of ventilated drying and spraying enclosures. */
  QUARTER(
      25,
      "NFPA 33, section 7.2, as reprinted; mechanical code 502.7.3.3",
      "vapour in the exhaust at most 25 percent of the lower flammable limit");

  private final double percent;
  private final String title;
  private final String where;

  FireRule(double percent, String title, String where) {
    this.percent = percent;
    this.title = title;
    this.where = where;
  }

  double percent() {
    return percent;
  }

  Provenance from() {
    return Provenance.source(title, where);
  }
}
