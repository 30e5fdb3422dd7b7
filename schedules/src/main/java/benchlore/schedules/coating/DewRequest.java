package benchlore.schedules.coating;

/**
 * Air and surface as measured, before a coat.
 *
 * @param airCelsius air temperature, deg C, -20 to 50
 * @param humidityPercent relative humidity, 1 to 100
 * @param surfaceCelsius temperature of the work's surface, deg C, -20 to 60
 */
public record DewRequest(double airCelsius, double humidityPercent, double surfaceCelsius) {}
