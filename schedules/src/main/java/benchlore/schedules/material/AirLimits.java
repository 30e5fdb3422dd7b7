package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Objects;
import java.util.Optional;

/**
 * The air a finish's times hold in, and the air it stands while wet.
 *
 * @param referenceTemperature air temperature the times hold in, deg C
 * @param referenceHumidity relative humidity the times hold in, percent
 * @param minimumTemperature coldest air and surface while wet, deg C; the high end is taken
 * @param maximumTemperature hottest air and surface while wet, deg C; the low end is taken
 * @param maximumHumidity dampest air while wet, percent; the low end is taken
 * @param minimumHumidity driest air while wet, for moisture cure, percent; the high end is taken
 */
public record AirLimits(
    SourcedRange referenceTemperature,
    SourcedRange referenceHumidity,
    SourcedRange minimumTemperature,
    SourcedRange maximumTemperature,
    SourcedRange maximumHumidity,
    Optional<SourcedRange> minimumHumidity) {
  /** Refuses nulls. */
  public AirLimits {
    Objects.requireNonNull(referenceTemperature, "referenceTemperature");
    Objects.requireNonNull(referenceHumidity, "referenceHumidity");
    Objects.requireNonNull(minimumTemperature, "minimumTemperature");
    Objects.requireNonNull(maximumTemperature, "maximumTemperature");
    Objects.requireNonNull(maximumHumidity, "maximumHumidity");
    Objects.requireNonNull(minimumHumidity, "minimumHumidity");
  }
}
