package benchlore.schedules.room;

import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How far a drying, curing or setting process has got in air that changes through the day.
 *
 * <pre>
 * equivalent age = integral of r(air at t) dt,  r = 1 in the air the data sheet was written for
 * r by temperature: {@link TemperatureRule}
 * </pre>
 *
 * <p>The integral is the one concrete practice calls maturity or equivalent age (ASTM C1074 states
 * it as a sum over intervals). It is summed by midpoints of {@value #STEP_SECONDS} seconds; on the
 * straight lines between hourly readings the error is far below the spread of any label's hours.
 */
public final class EquivalentAge {
  /** Length of one summing interval, seconds. */
  static final int STEP_SECONDS = 600;

  private static final double DAY_SECONDS = 86_400;
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

  /** The rate by a rule of temperature alone. */
  public static Rate of(TemperatureRule rule) {
    return air -> rule.rate(air.celsius());
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
      Climate climate, Moment start, double neededSeconds, Rate rate) {
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
  public static Course course(Climate climate, Moment start, Rate rate) {
    return new Course(climate, start, rate);
  }

  /** The rates from a start on. Remembers those it has worked out; not for sharing. */
  public static final class Course {
    private final Climate climate;
    private final Moment start;
    private final Rate rate;
    private final Stretch usual;
    private final List<Stretch> others = new ArrayList<>();

    private Course(Climate climate, Moment start, Rate rate) {
      this.climate = climate;
      this.start = start;
      this.rate = rate;
      this.usual = new Stretch(0, new Climate(climate.hours()), start, rate);
    }

    /** The rates of the 24 hours of this number, where the air may be other than usual. */
    private Stretch other(int number) {
      for (Stretch made : others) {
        if (made.number == number) {
          return made;
        }
      }
      Stretch made = new Stretch(number, climate, start.plusDays(number), rate);
      others.add(made);
      return made;
    }

    /**
     * Seconds until the equivalent age reaches what is needed.
     *
     * @param neededSeconds the time it takes in the reference air, 0 or more
     * @return seconds of clock time; empty if not reached in 400 days
     */
    public OptionalDouble secondsUntil(double neededSeconds) {
      int next = climate.nextOtherwise(start.date(), 0);
      // Most stages end within the first day; the rest of it need not be looked at.
      OptionalDouble early = (next > 0 ? usual : other(0)).until(neededSeconds);
      return early.isPresent() ? early : later(neededSeconds, next);
    }

    private OptionalDouble later(double neededSeconds, int firstOther) {
      double left = neededSeconds;
      int number = 0;
      int next = firstOther;
      while (left > 0 && next <= MOST_DAYS && (next - number) * usual.seconds() <= left) {
        Stretch other = other(next);
        if (other.same(usual)) {
          next = climate.nextOtherwise(start.date(), next + 1);
          continue;
        }
        left = left - (next - number) * usual.seconds();
        if (other.seconds() >= left) {
          return OptionalDouble.of(next * DAY_SECONDS + other.ends(left));
        }
        left = left - other.seconds();
        number = next + 1;
        next = climate.nextOtherwise(start.date(), number);
      }
      if (usual.seconds() <= 0) {
        return left > 0 ? OptionalDouble.empty() : OptionalDouble.of(0);
      }
      double wholeDays = Math.floor(left / usual.seconds());
      if (wholeDays + number > MOST_DAYS) {
        return OptionalDouble.empty();
      }
      double rest = left - wholeDays * usual.seconds();
      return OptionalDouble.of((wholeDays + number) * DAY_SECONDS + usual.ends(rest));
    }
  }

  /** The rates of 24 hours, each worked out when it is first asked for. */
  private static final class Stretch {
    private final int number;
    private final Climate climate;
    private final Moment start;
    private final Rate rate;
    private final double[] rates = new double[STEPS_A_DAY];
    private int known;

    Stretch(int number, Climate climate, Moment start, Rate rate) {
      this.number = number;
      this.climate = climate;
      this.start = start;
      this.rate = rate;
    }

    private double rate(int step) {
      while (known <= step) {
        rates[known] = rate.in(climate.at(start, known * STEP_SECONDS + STEP_SECONDS / 2));
        known++;
      }
      return rates[step];
    }

    /** How much passes in all of it. */
    double seconds() {
      double sum = 0;
      for (int i = 0; i < STEPS_A_DAY; i++) {
        sum = rate(i) * STEP_SECONDS + sum;
      }
      return sum;
    }

    boolean same(Stretch other) {
      for (int i = 0; i < STEPS_A_DAY; i++) {
        if (rate(i) != other.rate(i)) {
          return false;
        }
      }
      return true;
    }

    /** The same, or the end of the day where rounding alone keeps it from being reached. */
    double ends(double needed) {
      return until(needed).orElse(DAY_SECONDS);
    }

    /** Clock time at which this much of it has passed, from its beginning; empty if it never is. */
    OptionalDouble until(double needed) {
      double left = needed;
      double elapsed = 0;
      for (int i = 0; left > 0 && i < STEPS_A_DAY; i++) {
        double gained = rate(i) * STEP_SECONDS;
        if (gained >= left) {
          return OptionalDouble.of(left / rate(i) + elapsed);
        }
        left = left - gained;
        elapsed = elapsed + STEP_SECONDS;
      }
      return left > 0 ? OptionalDouble.empty() : OptionalDouble.of(elapsed);
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
  public static double ageSeconds(Climate climate, Moment start, double elapsedSeconds, Rate rate) {
    double age = 0;
    double done = 0;
    while (done < elapsedSeconds) {
      double step = Math.min(elapsedSeconds - done, STEP_SECONDS);
      int middle = Numeric.round(done) + STEP_SECONDS / 2;
      age = rate.in(climate.at(start, middle)) * step + age;
      done = done + STEP_SECONDS;
    }
    return age;
  }
}
