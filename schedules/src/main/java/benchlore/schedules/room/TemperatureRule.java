package benchlore.schedules.room;

import benchlore.schedules.quantity.Numeric;

/**
 * How much faster a reaction runs in warmer air: one of three rules, each 1 at the temperature the
 * label's times hold for.
 *
 * <p>Over ten degrees or so about the reference the three can be made to agree; far from it Q10
 * goes on doubling, the Arrhenius rule flattens in the heat, and Nurse-Saul is a straight line that
 * stops at its datum. Sources: ASTM C1074 (Nurse-Saul and Arrhenius, as concrete practice sums
 * them); the factor for ten degrees as makers print it.
 */
public sealed interface TemperatureRule {
  /** Molar gas constant, J/(mol K). */
  double GAS_CONSTANT = 8.314462618;

  /** 0 deg C in kelvin. */
  double ZERO_KELVIN = 273.15;

  /**
   * How fast it runs.
   *
   * @param celsius temperature, above -273
   * @return 0 or more; 1 at the reference temperature
   */
  double rate(double celsius);

  /**
   * {@code r = Q10 ^ ((T - Tref) / 10)}.
   *
   * @param q10 how many times faster for each 10 deg C, above 0, usually 1.3 to 3
   * @param referenceCelsius where the rate is 1
   */
  record Q10(double q10, double referenceCelsius) implements TemperatureRule {
    /** Refuses a factor of 0 or less. */
    public Q10 {
      if (!(q10 > 0)) {
        throw new IllegalArgumentException("q10 must be above 0");
      }
    }

    @Override
    public double rate(double celsius) {
      double perDegree = Numeric.log(q10) / 10;
      return Numeric.exp(perDegree * (celsius - referenceCelsius));
    }
  }

  /**
   * {@code r = exp(E / R (1 / Tref - 1 / T))}, temperatures in kelvin.
   *
   * @param joulePerMole apparent activation energy E, 0 or more, usually 20,000 to 100,000
   * @param referenceCelsius where the rate is 1, above -273
   */
  record Arrhenius(double joulePerMole, double referenceCelsius) implements TemperatureRule {
    /** Refuses an energy below 0 and a reference below absolute zero. */
    public Arrhenius {
      if (!(joulePerMole >= 0) || !(referenceCelsius > -ZERO_KELVIN)) {
        throw new IllegalArgumentException("joulePerMole must be 0 or more, above absolute zero");
      }
    }

    @Override
    public double rate(double celsius) {
      double inverse = 1 / (referenceCelsius + ZERO_KELVIN) - 1 / (celsius + ZERO_KELVIN);
      return Numeric.exp(joulePerMole / GAS_CONSTANT * inverse);
    }
  }

  /**
   * {@code r = (T - T0) / (Tref - T0)}, 0 at and below the datum T0. Times the hours at a steady
   * temperature and times {@code Tref - T0} it is the degree hours of a maturity meter.
   *
   * @param datumCelsius where it stops
   * @param referenceCelsius where the rate is 1, above the datum
   */
  record NurseSaul(double datumCelsius, double referenceCelsius) implements TemperatureRule {
    /** Refuses a datum that is not below the reference. */
    public NurseSaul {
      if (!(datumCelsius < referenceCelsius)) {
        throw new IllegalArgumentException("datumCelsius must be below referenceCelsius");
      }
    }

    @Override
    public double rate(double celsius) {
      return Math.max(0, celsius - datumCelsius) / (referenceCelsius - datumCelsius);
    }
  }
}
