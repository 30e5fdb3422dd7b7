package benchlore.schedules.answer;

import benchlore.schedules.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A sentence with quantities in it, kept apart so that a page can show them in the reader's units.
 *
 * @param pattern the sentence; {@code {0}}, {@code {1}} … stand for the quantities
 * @param quantities what to put there, in order
 */
public record Message(String pattern, List<Quantity> quantities) {
  /** Copies the list; refuses a place in the pattern without a quantity, or one never used. */
  public Message {
    Objects.requireNonNull(pattern, "pattern");
    quantities = List.copyOf(quantities);
    for (int i = 0; i < quantities.size(); i++) {
      if (!pattern.contains("{" + i + "}")) {
        throw new IllegalArgumentException("pattern has no place {" + i + "}: " + pattern);
      }
    }
    if (pattern.contains("{" + quantities.size() + "}")) {
      throw new IllegalArgumentException("no quantity for a place in: " + pattern);
    }
  }

  /**
   * Several ways in one text, "one Or: another", their quantities numbered through.
   *
   * @param ways at least one
   */
  public static Message either(List<Message> ways) {
    StringBuilder pattern = new StringBuilder();
    List<Quantity> quantities = new ArrayList<>();
    for (Message way : ways) {
      String text = way.pattern();
      for (int i = way.quantities().size() - 1; i >= 0; i--) {
        text = text.replace("{" + i + "}", "{" + (i + quantities.size()) + "}");
      }
      pattern.append(pattern.length() == 0 ? "" : " Or: ").append(text);
      quantities.addAll(way.quantities());
    }
    return new Message(pattern.toString(), quantities);
  }

  /** A sentence with its quantities in order. */
  public static Message of(String pattern, Quantity... quantities) {
    return new Message(pattern, List.of(quantities));
  }
}
