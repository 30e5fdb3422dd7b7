package benchlore.schedules.present;

/** Which units a reader measures by. */
public enum UnitSystem {
  /** Millimetres, kilograms, degrees Celsius. */
  METRIC,
  /** Inches, pounds, degrees Fahrenheit. */
  IMPERIAL
}
