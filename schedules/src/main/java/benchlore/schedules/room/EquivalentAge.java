package benchlore.schedules.room;

import benchlore.schedules.numeric.Numeric;
import java.time.LocalDateTime;
import java.util.OptionalDouble;

/**
 * How far a drying, curing or setting process has got in air that changes through the day.
 *
 * <pre>
 * equivalent age = integral of r(air at t) dt,  r = 1 in the air the data sheet was written for
 * Q10 rate: r = Q10 ^ ((T - Tref) / 10)
 * </pre>
 *
 * <p>The integral is the one concrete practice calls maturity or equivalent age (ASTM C1074 states
 * it as a sum over intervals). It is summed by midpoints of {@value #STEP_SECONDS} seconds; on the
 * straight lines between hourly readings the error is far below the spread of any label's hours.
 */
public final class EquivalentAge {
  /** Length of one summing interval, seconds. */
  static final int STEP_SECONDS = 600;

  private static final int STEPS_A_DAY = 86_400 / STEP_SECONDS;
  private static final int MOST_DAYS = 400;

  private EquivalentAge() {}

  /** A rate relative to the reference air. */
  @FunctionalInterface
  public interface Rate {
    /**
     * The rate in this air.
     *
     * @param air the air
     * @return 0 or more; 1 in the reference air
     */
    double in(Climate.Reading air);
  }

  /**
   * The rate that multiplies by {@code q10} for each 10 deg C.
   *
   * @param q10 above 0, usually 1.5 to 3
   * @param referenceCelsius where the rate is 1
   */
  public static Rate q10(double q10, double referenceCelsius) {
    double perDegree = Numeric.log(q10) / 10;
    return air -> Numeric.exp(perDegree * (air.celsius() - referenceCelsius));
  }

  /**
   * Seconds until the equivalent age reaches what is needed.
   *
   * @param climate the room
   * @param start when the process starts
   * @param neededSeconds the time it takes in the reference air, 0 or more
   * @param rate relative rate
   * @return seconds of clock time; empty if not reached in 400 days
   */
  public static OptionalDouble secondsUntil(
      Climate climate, LocalDateTime start, double neededSeconds, Rate rate) {
    return course(climate, start, rate).secondsUntil(neededSeconds);
  }

  /**
   * The course of a process from its start, for reckoning several stages of it: the air is looked
   * at once instead of once a stage.
   *
   * @param climate the room
   * @param start when the process starts
   * @param rate relative rate
   */
  public static Course course(Climate climate, LocalDateTime start, Rate rate) {
    return new Course(ratesFrom(climate, start, rate));
  }

  /** The rates of one day from a start on, the same every day. Immutable. */
  public static final class Course {
    private final double[] rates;
    private final double daySeconds;

    private Course(double[] rates) {
      this.rates = rates;
      double day = 0;
      for (double r : rates) {
        day = r * STEP_SECONDS + day;
      }
      this.daySeconds = day;
    }

    /**
     * Seconds until the equivalent age reaches what is needed.
     *
     * @param neededSeconds the time it takes in the reference air, 0 or more
     * @return seconds of clock time; empty if not reached in 400 days
     */
    public OptionalDouble secondsUntil(double neededSeconds) {
      if (daySeconds <= 0) {
        return neededSeconds > 0 ? OptionalDouble.empty() : OptionalDouble.of(0);
      }
      double wholeDays = Math.floor(neededSeconds / daySeconds);
      if (wholeDays > MOST_DAYS) {
        return OptionalDouble.empty();
      }
      double left = neededSeconds - wholeDays * daySeconds;
      double elapsed = wholeDays * 86_400;
      for (int i = 0; left > 0 && i < STEPS_A_DAY; i++) {
        double gained = rates[i] * STEP_SECONDS;
        if (gained >= left) {
          elapsed = left / rates[i] + elapsed;
          left = 0;
        } else {
          left = left - gained;
          elapsed = elapsed + STEP_SECONDS;
        }
      }
      return OptionalDouble.of(elapsed);
    }
  }

  /**
   * Equivalent age after some clock time.
   *
   * @param climate the room
   * @param start when the process starts
   * @param elapsedSeconds clock time since, 0 or more
   * @param rate relative rate
   * @return seconds in the reference air
   */
  public static double ageSeconds(
      Climate climate, LocalDateTime start, double elapsedSeconds, Rate rate) {
    double[] rates = ratesFrom(climate, start, rate);
    double age = 0;
    double left = elapsedSeconds;
    for (int i = 0; left > 0; i = (i + 1) % STEPS_A_DAY) {
      double step = Math.min(left, STEP_SECONDS);
      age = rates[i] * step + age;
      left = left - step;
    }
    return age;
  }

  private static double[] ratesFrom(Climate climate, LocalDateTime start, Rate rate) {
    double[] rates = new double[STEPS_A_DAY];
    for (int i = 0; i < STEPS_A_DAY; i++) {
      rates[i] = rate.in(climate.at(start, i * STEP_SECONDS + STEP_SECONDS / 2));
    }
    return rates;
  }
}
