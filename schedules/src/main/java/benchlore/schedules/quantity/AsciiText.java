package benchlore.schedules.quantity;

/**
 * Text of plain letters and digits: keys, words of closed lists, clock times. The JDK's own methods
 * know every script, whose tables are a third of the engine's script in a page.
 */
public final class AsciiText {
  private static final int TO_LOWER = 'a' - 'A';

  private AsciiText() {}

  /** Whether a letter is one of A to Z. */
  public static boolean isUpper(char letter) {
    return letter >= 'A' && letter <= 'Z';
  }

  /** A letter of A to Z in small; any other character as it is. */
  public static char lower(char letter) {
    return isUpper(letter) ? (char) (letter + TO_LOWER) : letter;
  }

  /** A text with A to Z in small. */
  public static String lower(String text) {
    StringBuilder lower = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      lower.append(lower(text.charAt(i)));
    }
    return lower.toString();
  }

  /**
   * The whole number that digits spell.
   *
   * @param digits at most nine digits 0 to 9, at least one
   * @throws IllegalArgumentException if there is anything else
   */
  public static int whole(String digits) {
    if (digits.isEmpty() || digits.length() > 9) {
      throw new IllegalArgumentException("must be one to nine digits: " + digits);
    }
    int value = 0;
    for (int i = 0; i < digits.length(); i++) {
      int digit = digits.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        throw new IllegalArgumentException("must be made of digits: " + digits);
      }
      value = value * 10 + digit;
    }
    return value;
  }
}
