package benchlore.schedules.answer;

import java.util.Objects;

/**
 * Why no answer is given, and what to do instead.
 *
 * @param input which input is at fault, as the request names it: "roomCelsius"
 * @param problem what is wrong with it
 * @param remedy what to do instead
 */
public record Refusal(String input, Message problem, Message remedy) {
  /** Refuses nulls. */
  public Refusal {
    Objects.requireNonNull(input, "input");
    Objects.requireNonNull(problem, "problem");
    Objects.requireNonNull(remedy, "remedy");
  }

  /** A refusal in plain sentences without quantities. */
  public static Refusal of(String input, String problem, String remedy) {
    return new Refusal(input, Message.of(problem), Message.of(remedy));
  }
}
