package benchlore.schedules.coating;

import benchlore.schedules.material.Sheen;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A whole sequence of coats.
 *
 * @param quantity finish, area, coats, wet film and method
 * @param climate the room's air over the day
 * @param start when the first coat goes on, local wall-clock time
 * @param sessions when the later coats may go on
 * @param sheen the sheen wanted in the end
 * @param laid coats that are on already
 * @param scuffedBelow whether what lies under the first coat is scuffed for it: another finish
 */
public record CoatingRequest(
    QuantityRequest quantity,
    Climate climate,
    Moment start,
    CoatSessions sessions,
    Sheen sheen,
    Laid laid,
    boolean scuffedBelow) {
  /**
   * Coats that are on already: they stay where they are, the others follow.
   *
   * @param starts when each went on, in order; the first is the request's start
   * @param scuffed whether the last of them is scuffed for the next already
   * @param resume no other coat goes on before this moment
   */
  public record Laid(List<Moment> starts, boolean scuffed, Optional<Moment> resume) {
    /** None yet. */
    public static final Laid NONE = new Laid(List.of(), false, Optional.empty());

    /** Copies the list; refuses null. */
    public Laid {
      starts = List.copyOf(starts);
      Objects.requireNonNull(resume, "resume");
    }
  }

  /** Refuses nulls; figures are checked by {@link Coating#plan}. */
  public CoatingRequest {
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(climate, "climate");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(sessions, "sessions");
    Objects.requireNonNull(sheen, "sheen");
    Objects.requireNonNull(laid, "laid");
  }

  /** One coat of it, put on at a moment. */
  DryingRequest coat(Moment moment) {
    return new DryingRequest(quantity.finish(), quantity.wetFilmMicron(), climate, moment);
  }

  /** The same sequence in other air. */
  CoatingRequest with(Climate air) {
    return new CoatingRequest(quantity, air, start, sessions, sheen, laid, scuffedBelow);
  }

  /** The same sequence in other hours. */
  CoatingRequest with(CoatSessions hours) {
    return new CoatingRequest(quantity, climate, start, hours, sheen, laid, scuffedBelow);
  }

  /** Whether the first coat's session holds the scuffing of what lies under it. */
  boolean scuffsBelow() {
    return scuffedBelow && !laid.scuffed();
  }

  /** A sequence on bare wood, not begun. */
  public CoatingRequest(
      QuantityRequest quantity, Climate climate, Moment start, CoatSessions sessions, Sheen sheen) {
    this(quantity, climate, start, sessions, sheen, Laid.NONE, false);
  }
}
