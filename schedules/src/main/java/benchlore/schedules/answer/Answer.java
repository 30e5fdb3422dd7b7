package benchlore.schedules.answer;

import benchlore.schedules.quantity.ComponentException;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * What the engine returns: {@link Given} with a value, its working and its cautions, or {@link
 * Refused} with every reason at once. Nonsense in gives a refusal out, never an exception and never
 * a silent number.
 *
 * @param <T> the value's type
 */
public sealed interface Answer<T> {
  /**
   * An answer.
   *
   * @param value the result
   * @param working how it was worked out, in order
   * @param cautions what to watch for; a caller shows all of them
   * @param <T> the value's type
   */
  record Given<T>(T value, List<WorkingLine> working, List<Caution> cautions) implements Answer<T> {
    /** Copies the lists; refuses a null value. */
    public Given {
      Objects.requireNonNull(value, "value");
      working = List.copyOf(working);
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * No answer.
   *
   * @param reasons every reason found, at least one
   * @param <T> the type the value would have had
   */
  record Refused<T>(List<Refusal> reasons) implements Answer<T> {
    /** Copies the list; refuses an empty one. */
    public Refused {
      reasons = List.copyOf(reasons);
      if (reasons.isEmpty()) {
        throw new ComponentException("reasons", "must not be empty");
      }
    }
  }

  /** An answer with working and cautions. */
  static <T> Answer<T> of(T value, List<WorkingLine> working, List<Caution> cautions) {
    return new Given<>(value, working, cautions);
  }

  /** A refusal with every reason found. */
  static <T> Answer<T> refuse(List<Refusal> reasons) {
    return new Refused<>(reasons);
  }

  /**
   * One result out of either variant.
   *
   * @param given what to make of an answer
   * @param refused what to make of a refusal
   * @param <R> the result's type
   * @return what the fitting function returned
   */
  default <R> R fold(Function<Given<T>, R> given, Function<Refused<T>, R> refused) {
    if (this instanceof Given<T> g) {
      return given.apply(g);
    }
    return refused.apply((Refused<T>) this);
  }
}
