package benchlore.schedules.air;

import benchlore.schedules.material.SprayGun;
import java.util.Objects;

/**
 * Spraying in a room. Any numbers may be given; the entry refuses what makes no sense.
 *
 * @param room volume, outdoor air, mixing, temperature
 * @param gun kind of gun
 * @param solidsKilogram solids that leave the gun, kg, 1e-6 to 100
 * @param sprayingSecond how long it is sprayed, 1 to 86 400 s
 * @param isocyanate true if the finish holds isocyanates: refused
 */
public record MistRequest(
    RoomAir room, SprayGun gun, double solidsKilogram, double sprayingSecond, boolean isocyanate) {
  /** Refuses nulls. */
  public MistRequest {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(gun, "gun");
  }
}
