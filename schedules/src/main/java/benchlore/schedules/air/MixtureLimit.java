package benchlore.schedules.air;

import java.util.List;

/**
 * Limits of several vapours that act alike, added up.
 *
 * <pre>
 * index = C1 / L1 + C2 / L2 + ...        above 1 is too much
 * limit of a liquid's vapour = 1 / (f1 / L1 + f2 / L2 + ...)
 * </pre>
 *
 * <p>Sources: 29 CFR 1910.1000(d)(2) for the index; the hygienists' conference (ACGIH), additive
 * mixtures, for the limit of a liquid all of which evaporates, shares by mass and limits in mass a
 * volume of air.
 */
public final class MixtureLimit {
  private MixtureLimit() {}

  /**
   * One vapour of a mixture.
   *
   * @param amount its concentration, or its share of the liquid by mass; 0 or more
   * @param limit its limit in the unit of the concentration, or in kg/m3 for shares; above 0
   */
  public record Part(double amount, double limit) {
    /** Refuses what is no amount or no limit. */
    public Part {
      if (!(amount >= 0) || !(limit > 0)) {
        throw new IllegalArgumentException("amount must be 0 or more and limit above 0");
      }
    }
  }

  /**
   * How much of the limit a mixture in the air takes up.
   *
   * @param parts concentrations with their limits, each pair in one unit
   * @return 0 or more; above 1 the mixture is over the limit
   */
  public static double index(List<Part> parts) {
    double sum = 0;
    for (Part part : parts) {
      sum = part.amount() / part.limit() + sum;
    }
    return sum;
  }

  /**
   * The limit of what evaporates from a liquid of this composition.
   *
   * @param parts shares by mass that add up to 1, with their limits in one unit of mass a volume
   * @return in the unit of the limits; NaN if the shares don't add up to 1 within a hundredth
   */
  public static double ofLiquid(List<Part> parts) {
    double shares = 0;
    for (Part part : parts) {
      shares = part.amount() + shares;
    }
    return Math.abs(shares - 1) <= 0.01 ? 1 / index(parts) : Double.NaN;
  }
}
