package benchlore.schedules.project;

import benchlore.schedules.answer.Message;
import benchlore.schedules.compatibility.Verdict;
import java.util.List;
import java.util.Objects;

/**
 * What a table says of two things that a plan brings together, decided by its rows.
 *
 * @param subject what is paired with what
 * @param pair both in words: "Yellow PVA, outdoors under a roof"
 * @param verdict the strictest of the rows that apply
 * @param why the words of the rows that make it so, strictest first; empty where all is well
 * @param instead what of the same kind would do, by title, at most three; only where this does not
 */
public record Pairing(
    Subject subject, String pair, Verdict verdict, List<Message> why, List<String> instead) {
  /** What is paired with what. */
  public enum Subject {
    /** A finish with the place the parts will live in. */
    FINISH_AT_PLACE,
    /** The adhesive with the same. */
    ADHESIVE_IN_USE,
    /** The adhesive with the wood. */
    ADHESIVE_ON_WOOD
  }

  /** Copies the lists; refuses nulls. */
  public Pairing {
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(pair, "pair");
    Objects.requireNonNull(verdict, "verdict");
    why = List.copyOf(why);
    instead = List.copyOf(instead);
  }
}
