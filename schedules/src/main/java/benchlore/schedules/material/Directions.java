package benchlore.schedules.material;

import java.util.Objects;
import java.util.Optional;

/**
 * How a finish or an adhesive is worked, in a teacher's words: one short sentence each.
 *
 * @param begin once, before or at the first coat or spread: thin, mix, warm
 * @param putOn how it goes on, every time, by hand
 * @param sprayed how it goes on from a gun; empty: as by hand, or never sprayed
 * @param afterwards what to do once it is on, before anything follows
 * @param lookFor the one thing to look for, to follow "Look for"
 */
public record Directions(
    Optional<String> begin,
    String putOn,
    Optional<String> sprayed,
    Optional<String> afterwards,
    String lookFor) {
  /** Refuses nulls. */
  public Directions {
    Objects.requireNonNull(begin, "begin");
    Objects.requireNonNull(putOn, "putOn");
    Objects.requireNonNull(sprayed, "sprayed");
    Objects.requireNonNull(afterwards, "afterwards");
    Objects.requireNonNull(lookFor, "lookFor");
  }

  /** How it goes on by this method. */
  public String by(ApplicationMethod method) {
    return method == ApplicationMethod.SPRAY ? sprayed.orElse(putOn) : putOn;
  }
}
