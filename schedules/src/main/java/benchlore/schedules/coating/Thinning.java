package benchlore.schedules.coating;

/**
 * Wet film, dry film, solids and thinner: one relation, asked from each side.
 *
 * <pre>
 * solids once thinned = solids / (1 + thinner)
 * wet film = dry film / solids x 100 x (1 + thinner)
 * </pre>
 *
 * <p>Thinner is counted in volumes for one volume of finish: a tenth is 0.1, half and half is 1.
 * Volumes are taken to add up; some mixtures shrink by a per cent or so. Sources: coating
 * suppliers' wet and dry film formulae.
 */
public final class Thinning {
  private Thinning() {}

  /**
   * Solids by volume after thinning.
   *
   * @param solidsPercent of the finish as it comes, above 0, to 100
   * @param thinner volumes of thinner to one of finish, 0 to 10
   * @return percent by volume; NaN outside those ranges
   */
  public static double solidsPercent(double solidsPercent, double thinner) {
    boolean holds = solidsPercent > 0 && solidsPercent <= 100 && thinner >= 0 && thinner <= 10;
    return holds ? solidsPercent / (1 + thinner) : Double.NaN;
  }

  /**
   * The wet film that dries to a film.
   *
   * @param dryFilmMicron wanted, 0 or more
   * @param solidsPercent of the finish as it comes, above 0, to 100
   * @param thinner volumes of thinner to one of finish, 0 to 10
   * @return micrometres; NaN outside those ranges
   */
  public static double wetFilmMicron(double dryFilmMicron, double solidsPercent, double thinner) {
    return dryFilmMicron >= 0
        ? 100 * dryFilmMicron / solidsPercent(solidsPercent, thinner)
        : Double.NaN;
  }

  /**
   * The thinner that brings a finish down to these solids.
   *
   * @param solidsPercent of the finish as it comes, above 0, to 100
   * @param wantedPercent solids wanted, above 0, to {@code solidsPercent}
   * @return volumes of thinner to one of finish; NaN outside those ranges
   */
  public static double thinner(double solidsPercent, double wantedPercent) {
    boolean holds = solidsPercent <= 100 && wantedPercent > 0 && wantedPercent <= solidsPercent;
    return holds ? solidsPercent / wantedPercent - 1 : Double.NaN;
  }
}
