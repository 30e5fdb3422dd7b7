package benchlore.schedules.present;

import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a sentence: words, or a figure that reads one way by millimetres and another by
 * inches.
 *
 * @param metric as a reader of millimetres reads it
 * @param imperial as a reader of inches reads it; for words the same
 * @param isFigure whether it is a figure
 */
public record SentencePart(String metric, String imperial, boolean isFigure) {
  /** Refuses nulls. */
  public SentencePart {
    if (metric == null || imperial == null) {
      throw new NullPointerException("metric and imperial");
    }
  }

  /** A sentence in its pieces, in order; none of the words is empty. */
  public static List<SentencePart> of(Message message) {
    List<SentencePart> parts = new ArrayList<>();
    String pattern = message.pattern();
    int begin = 0;
    while (begin < pattern.length()) {
      int place = nextPlace(message, begin);
      if (place > begin) {
        String words = pattern.substring(begin, place);
        parts.add(new SentencePart(words, words, false));
      }
      begin = place;
      if (place < pattern.length()) {
        int end = pattern.indexOf('}', place) + 1;
        parts.add(figure(quantity(message, pattern.substring(place, end))));
        begin = end;
      }
    }
    return parts;
  }

  private static SentencePart figure(Quantity quantity) {
    return new SentencePart(
        FigureText.text(quantity, UnitSystem.METRIC),
        FigureText.text(quantity, UnitSystem.IMPERIAL),
        true);
  }

  /** Where the next place of a quantity begins; the pattern's length if there is none. */
  private static int nextPlace(Message message, int begin) {
    int next = message.pattern().length();
    for (int i = 0; i < message.quantities().size(); i++) {
      int at = message.pattern().indexOf(place(i), begin);
      next = at < 0 ? next : Math.min(next, at);
    }
    return next;
  }

  private static Quantity quantity(Message message, String place) {
    int i = 0;
    while (!place(i).equals(place)) {
      i++;
    }
    return message.quantities().get(i);
  }

  private static String place(int i) {
    return "{" + i + "}";
  }
}
