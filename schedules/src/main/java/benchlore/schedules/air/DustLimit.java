package benchlore.schedules.air;

import benchlore.schedules.quantity.Provenance;

/** Limits for wood dust in air, one a row, 8-hour averages. */
public enum DustLimit {
  /** US law for dust not otherwise regulated, all that hangs in the air. */
  OSHA_TOTAL(15e-6, "OSHA wood dust page, exposure levels", "15 mg/m3 total; 29 CFR 1910.1000"),
  /** US law, the part that reaches deep into the lungs. */
  OSHA_RESPIRABLE(5e-6, "OSHA wood dust page, exposure levels", "5 mg/m3 respirable"),
  /** US research institute's advice, wood dust as a cause of cancer. */
  NIOSH(1e-6, "NIOSH Pocket Guide, wood dust, reviewed 30 October 2019", "REL 1 mg/m3"),
  /** US hygienists' value for all woods but one. */
  ACGIH(1e-6, "OSHA wood dust page, exposure levels", "ACGIH 2007, all other species 1 mg/m3"),
  /** US hygienists' value for western red cedar, which causes asthma. */
  ACGIH_SENSITISER(
      0.5e-6, "OSHA wood dust page, exposure levels", "ACGIH 2007, western red cedar 0.5 mg/m3");

  private final double kilogramPerCubicMetre;
  private final String title;
  private final String where;

  DustLimit(double kilogramPerCubicMetre, String title, String where) {
    this.kilogramPerCubicMetre = kilogramPerCubicMetre;
    this.title = title;
    this.where = where;
  }

  /** The limit, kg/m3; a millionth is 1 mg/m3. */
  public double kilogramPerCubicMetre() {
    return kilogramPerCubicMetre;
  }

  /** Where it stands, with its date where known. */
  public Provenance from() {
    return Provenance.source(title, where);
  }

  /** The lowest that applies to this dust. */
  static DustLimit governing(DustSource source) {
    DustLimit lowest = OSHA_TOTAL;
    for (DustLimit limit : values()) {
      boolean applies = limit != ACGIH_SENSITISER || source == DustSource.SENSITISING_WOOD;
      if (applies && limit.kilogramPerCubicMetre < lowest.kilogramPerCubicMetre) {
        lowest = limit;
      }
    }
    return lowest;
  }
}
