package benchlore.schedules.movement;

import benchlore.schedules.material.Species;
import java.util.Objects;
import java.util.Optional;

/**
 * What is asked about one solid-wood part. Any number may be given; {@link Fit#plan} refuses
 * figures out of range.
 *
 * @param wood the species
 * @param rings how the growth rings stand to the wide face
 * @param widthMetre size across the grain, above 0.001, to 3
 * @param thicknessMetre 0.003 to 0.1, for the time to settle
 * @param moisturePercent of the wood as it is fitted, by meter, 3 to 25
 * @param shop air it lies in until then
 * @param seasons the year the finished part will see
 * @param opening given if it moves in an opening
 * @param panel given if it is to be fixed down
 */
public record FitRequest(
    Species wood,
    RingAngle rings,
    double widthMetre,
    double thicknessMetre,
    double moisturePercent,
    SteadyAir shop,
    Seasons seasons,
    Optional<Opening> opening,
    Optional<Panel> panel) {
  /** Refuses nulls. */
  public FitRequest {
    Objects.requireNonNull(wood, "wood");
    Objects.requireNonNull(rings, "rings");
    Objects.requireNonNull(shop, "shop");
    Objects.requireNonNull(seasons, "seasons");
    Objects.requireNonNull(opening, "opening");
    Objects.requireNonNull(panel, "panel");
  }

  /** The same part, moving in an opening. */
  public FitRequest withOpening(Opening given) {
    return new FitRequest(
        wood,
        rings,
        widthMetre,
        thicknessMetre,
        moisturePercent,
        shop,
        seasons,
        Optional.of(given),
        panel);
  }

  /** The same part, to be fixed down. */
  public FitRequest withPanel(Panel given) {
    return new FitRequest(
        wood,
        rings,
        widthMetre,
        thicknessMetre,
        moisturePercent,
        shop,
        seasons,
        opening,
        Optional.of(given));
  }
}
