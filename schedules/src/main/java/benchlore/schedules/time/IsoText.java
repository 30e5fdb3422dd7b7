package benchlore.schedules.time;

/**
 * A date or moment as ISO 8601 writes it, read by places.
 *
 * @param text what is read
 */
record IsoText(String text) {
  private static final int DAY = 10;

  /** Refuses another length, or another letter at a place. */
  void holds(int length, int place, char letter) {
    if (text.length() != length || text.charAt(place) != letter) {
      throw wrong(length);
    }
  }

  /** The number between two places. */
  int number(int fromInclusive, int toExclusive) {
    int value = 0;
    for (int i = fromInclusive; i < toExclusive; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        throw wrong(text.length());
      }
      value = value * 10 + digit;
    }
    return value;
  }

  private IllegalArgumentException wrong(int length) {
    String kind = length == DAY ? "a day" : "a moment";
    String like = length == DAY ? "2027-01-12" : "2027-01-12T18:30";
    return new IllegalArgumentException("must be " + kind + " such as " + like + ": " + text);
  }

  /** With a nought before it where it has one digit. */
  static String two(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }
}
