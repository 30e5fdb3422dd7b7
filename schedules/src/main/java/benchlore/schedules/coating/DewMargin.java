package benchlore.schedules.coating;

/**
 * How far a surface stands above the dew point.
 *
 * @param dewPointCelsius dew point of the air, deg C
 * @param marginCelsius surface less dew point, deg C
 * @param leastSurfaceCelsius the coldest sound surface in this air, deg C
 * @param sound whether the margin is enough to coat
 */
public record DewMargin(
    double dewPointCelsius, double marginCelsius, double leastSurfaceCelsius, boolean sound) {}
