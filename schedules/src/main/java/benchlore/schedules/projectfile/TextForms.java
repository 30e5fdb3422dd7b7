package benchlore.schedules.projectfile;

import benchlore.schedules.quantity.AsciiText;
import java.util.List;

/** The forms of texts in a file. What they mean is another question: see {@link FileChecks}. */
final class TextForms {
  private static final String DAY = "dddd-dd-dd";
  private static final String MINUTE = DAY + " dd:dd";
  private static final String SECOND = MINUTE + ":dd";
  private static final String TO = " to ";

  private TextForms() {}

  /** Whether a text is as a pattern: {@code d} a digit, anything else itself. */
  private static boolean isAs(String pattern, String text) {
    boolean fits = text.length() == pattern.length();
    for (int i = 0; fits && i < pattern.length(); i++) {
      char c = text.charAt(i);
      fits = pattern.charAt(i) == 'd' ? isDigit(c) : pattern.charAt(i) == c;
    }
    return fits;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isSmall(char c) {
    return c >= 'a' && c <= 'z';
  }

  private static boolean isDigits(String text) {
    boolean digits = !text.isEmpty();
    for (int i = 0; i < text.length(); i++) {
      digits = digits && isDigit(text.charAt(i));
    }
    return digits;
  }

  static boolean isDay(String text) {
    return isAs(DAY, text);
  }

  static boolean isMinute(String text) {
    return isAs(MINUTE, text) && isClock(text.substring(11));
  }

  static boolean isSlot(String text) {
    int to = text.indexOf(TO);
    return to > 0 && isSecond(text.substring(0, to)) && isSecond(text.substring(to + TO.length()));
  }

  private static boolean isSecond(String text) {
    return isAs(SECOND, text)
        && isMinute(text.substring(0, MINUTE.length()))
        && text.charAt(17) < '6';
  }

  /** {@code 00:00} to {@code 23:59}. */
  private static boolean isClock(String text) {
    return isAs("dd:dd", text) && text.compareTo("24") < 0 && text.charAt(3) < '6';
  }

  static boolean isSpan(String text) {
    int dash = text.indexOf('-');
    String end = text.substring(dash + 1);
    return dash > 0 && isClock(text.substring(0, dash)) && (isClock(end) || end.equals("24:00"));
  }

  /** {@code 9 h}, {@code 09 h}, {@code 22 h}. */
  static boolean isHour(String text, int most) {
    String hour = text.endsWith(" h") ? text.substring(0, text.length() - 2) : "";
    return isDigits(hour) && hour.length() <= 2 && AsciiText.whole(hour) <= most;
  }

  static boolean isGrade(String text) {
    return text.startsWith("P") && isDigits(text.substring(1));
  }

  /** Words of small letters and digits with a hyphen between each. */
  static boolean isId(String text) {
    boolean fits = !text.isEmpty() && !text.endsWith("-");
    char before = '-';
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      fits = fits && (isSmall(c) || isDigit(c) || (c == '-' && before != '-'));
      before = c;
    }
    return fits;
  }

  static boolean isName(String text) {
    boolean fits = !text.isEmpty();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = isSmall(c) || (c >= 'A' && c <= 'Z');
      fits = fits && (letter || isDigit(c) || " ,.'-".indexOf(c) >= 0);
    }
    return fits;
  }

  /** {@code 18 mm}, {@code 1.5 h}: digits, perhaps places, one space, a unit. */
  static boolean isAmount(String text, List<String> units, boolean mayBeBelowZero) {
    int space = text.indexOf(' ');
    if (space < 0 || !units.contains(text.substring(space + 1))) {
      return false;
    }
    boolean below = mayBeBelowZero && text.startsWith("-");
    String number = text.substring(below ? 1 : 0, space);
    int point = number.indexOf('.');
    return point < 0
        ? isDigits(number)
        : isDigits(number.substring(0, point)) && isDigits(number.substring(point + 1));
  }
}
