package benchlore.schedules.air;

import benchlore.schedules.material.SprayGun;
import benchlore.schedules.quantity.SourcedRange;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Spraying in a room. Any numbers may be given; the entry refuses what makes no sense.
 *
 * @param room volume, outdoor air, mixing, temperature
 * @param gun kind of gun
 * @param sprayed what leaves the gun
 * @param sprayingSecond how long it is sprayed, 1 to 86 400 s
 * @param transfer share that lands, by the shop's own measuring, 0.05 to 1; empty: the gun's usual
 * @param isocyanate true if the finish holds isocyanates: refused
 */
public record MistRequest(
    RoomAir room,
    SprayGun gun,
    Sprayed sprayed,
    double sprayingSecond,
    OptionalDouble transfer,
    boolean isocyanate) {
  /**
   * Liquid that leaves the gun.
   *
   * @param liquidCubicMetre 1e-8 to 0.1
   * @param solidsByVolume what of it stays behind as a film, above 0 to 100 percent
   */
  public record Sprayed(double liquidCubicMetre, SourcedRange solidsByVolume) {
    /** Refuses a null. */
    public Sprayed {
      Objects.requireNonNull(solidsByVolume, "solidsByVolume");
    }

    /** Mass of the film it would leave if all of it landed: the more of the range. */
    double solidsKilogram() {
      return liquidCubicMetre * solidsByVolume.high() / 100 * Mist.DRY_FILM.high();
    }
  }

  /** Refuses nulls. */
  public MistRequest {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(gun, "gun");
    Objects.requireNonNull(sprayed, "sprayed");
    Objects.requireNonNull(transfer, "transfer");
  }
}
