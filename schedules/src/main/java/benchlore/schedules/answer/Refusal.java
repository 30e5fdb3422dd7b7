package benchlore.schedules.answer;

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
    if (input == null || problem == null || remedy == null) {
      throw new NullPointerException("input, problem and remedy");
    }
  }

  /** A refusal in plain sentences without quantities. */
  public static Refusal of(String input, String problem, String remedy) {
    return new Refusal(input, Message.of(problem), Message.of(remedy));
  }
}
