package benchlore.schedules.air;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Sanding in a room. Any numbers may be given; the entry refuses what makes no sense.
 *
 * @param room volume, outdoor air, mixing, temperature
 * @param source what is sanded
 * @param removedKilogram wood or film sanded off, kg, 1e-6 to 100
 * @param sandingSecond how long it takes, 1 to 86 400 s
 * @param capture how the dust is caught
 * @param airborneShare share of what is not caught that stays in the air, 0 to 1; empty for a tenth
 */
public record DustRequest(
    RoomAir room,
    DustSource source,
    double removedKilogram,
    double sandingSecond,
    DustCapture capture,
    OptionalDouble airborneShare) {
  /** Refuses nulls. */
  public DustRequest {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(capture, "capture");
    Objects.requireNonNull(airborneShare, "airborneShare");
  }
}
