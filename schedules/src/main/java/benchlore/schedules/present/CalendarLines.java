package benchlore.schedules.present;

import benchlore.schedules.time.Moment;

/** The lines of a calendar file (RFC 5545): folded at 75 octets, escaped, ending in CR LF. */
final class CalendarLines {
  /** Octets of a line, its end not counted. RFC 5545, section 3.1. */
  private static final int MOST_OCTETS = 75;

  private static final String END = "\r\n";

  private final StringBuilder out = new StringBuilder();

  /** A line as it is: a name of the standard with its value. */
  void line(String text) {
    int octets = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      int more = octets(c);
      if (octets + more > MOST_OCTETS) {
        out.append(END).append(' ');
        octets = 1;
      }
      octets += more;
      out.append(c);
      if (Character.isHighSurrogate(c) && i + 1 < text.length()) {
        i++;
        out.append(text.charAt(i));
      }
    }
    out.append(END);
  }

  /** A line of free text. */
  void text(String name, String value) {
    line(name + ":" + escaped(value));
  }

  /** A wall-clock time that belongs to no zone. */
  void moment(String name, Moment moment) {
    line(name + ":" + compact(moment));
  }

  /** {@code 20270112T183000}. */
  static String compact(Moment moment) {
    return moment.toString().replace("-", "").replace(":", "");
  }

  /** Octets of a letter in UTF-8; of a pair that is one letter, all four at its first half. */
  private static int octets(char c) {
    if (Character.isHighSurrogate(c)) {
      return 4;
    }
    if (c < 0x80) {
      return 1;
    }
    return c < 0x800 ? 2 : 3;
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\\\")
        .replace(";", "\\;")
        .replace(",", "\\,")
        .replace("\r", "")
        .replace("\n", "\\n");
  }

  String whole() {
    return out.toString();
  }
}
