package benchlore.schedules.time;

/** A day of the week, Monday first. */
public enum Weekday {
  /** The first. */
  MONDAY("Monday", 0),
  /** The second. */
  TUESDAY("Tuesday", 1),
  /** The third. */
  WEDNESDAY("Wednesday", 2),
  /** The fourth. */
  THURSDAY("Thursday", 3),
  /** The fifth. */
  FRIDAY("Friday", 4),
  /** The sixth. */
  SATURDAY("Saturday", 5),
  /** The seventh. */
  SUNDAY("Sunday", 6);

  private final String words;
  private final int daysAfterMonday;

  Weekday(String words, int daysAfterMonday) {
    this.words = words;
    this.daysAfterMonday = daysAfterMonday;
  }

  /** Its place in the week, 0 to 6. */
  public int daysAfterMonday() {
    return daysAfterMonday;
  }

  /** Its English name. */
  public String words() {
    return words;
  }
}
