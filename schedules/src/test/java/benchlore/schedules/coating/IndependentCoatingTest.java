package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.EquivalentAge;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Waits and hours against the integrator and the root finder of a general numeric library. */
class IndependentCoatingTest {
  private static final Moment MIDNIGHT = Moment.of(2026, 5, 4, 0, 0);

  /** What passed until the planned wait, integrated hour by hour, is the label's time. */
  @Property(tries = 200)
  void plannedWaitHoldsTheLabelsTime(
      @ForAll DryingMechanism mechanism,
      @ForAll @DoubleRange(min = 14, max = 20) double low,
      @ForAll @DoubleRange(min = 0, max = 10) double rise,
      @ForAll @DoubleRange(min = 40, max = 60) double humidity,
      @ForAll @DoubleRange(min = 1, max = 2) double thicker,
      @ForAll @IntRange(min = 7, max = 19) int hour) {
    FinishMaker maker = FinishMaker.of(mechanism);
    Finish finish = maker.make();
    Climate room = Climate.swing(low, low + rise, humidity);
    Moment start = MIDNIGHT.date().at(hour, 0);
    DryingRequest request = new DryingRequest(finish, maker.wetFilm * thicker, room, start);
    DryingTimes times = Answers.value(Coating.laid(request));
    double wait = times.time(Stage.RECOAT_OPENS).orElseThrow().planned().seconds();
    double label = maker.recoatOpens.high() * times.thicknessFactor();
    double passed = integral(DryingRate.of(finish, mechanism), room, start, wait);
    // Ten-minute midpoints differ a little where the swing kinks or the rate is capped.
    assertEquals(label, passed, 0.004 * label + 2);
  }

  /** The hour cooling work falls below its minimum, within one look of ten minutes. */
  @Property(tries = 200)
  void theHourItTurnsTooColdIsWhereTheCurveCrosses(
      @ForAll @DoubleRange(min = 0, max = 9) double low,
      @ForAll @DoubleRange(min = 13, max = 28) double high) {
    Climate room = Climate.swing(low, high, 40);
    FinishMaker maker = FinishMaker.oil();
    Moment start = MIDNIGHT.date().at(15, 0);
    double crossing =
        new BrentSolver(1e-6)
            .solve(1000, s -> celsius(room, start, s) - maker.minimumCelsius, 0, 14 * 3600.0);
    DryingRequest request = new DryingRequest(maker.make(), 80, room, start);
    List<WetAir.Sample> air = WetAir.of(request, Duration.ofHours(14)).samples();
    PassedLimit breach = PassedLimit.find(WetLimit.COLD, maker.make(), air).orElseThrow();
    double found = Duration.between(start, breach.first()).seconds();
    assertTrue(found >= crossing - 1e-3, found + " against " + crossing);
    assertTrue(found <= crossing + 600 + 1e-3, found + " against " + crossing);
  }

  private static double integral(
      EquivalentAge.Rate rate, Climate room, Moment start, double seconds) {
    double sum = 0;
    for (double from = 0; from < seconds; from += 3600) {
      double span = Math.min(3600, seconds - from);
      Climate.Reading before = room.at(start.plusSeconds(from));
      Climate.Reading after = room.at(start.plusSeconds(from + 3600));
      sum +=
          new SimpsonIntegrator(1e-6, 1e-6, 3, 24)
              .integrate(1_000_000, s -> rate.in(between(before, after, s / 3600)), 0, span);
    }
    return sum;
  }

  private static Climate.Reading between(
      Climate.Reading before, Climate.Reading after, double share) {
    double celsius = before.celsius() + share * (after.celsius() - before.celsius());
    double rise = after.relativeHumidityPercent() - before.relativeHumidityPercent();
    return new Climate.Reading(celsius, before.relativeHumidityPercent() + share * rise);
  }

  private static double celsius(Climate room, Moment start, double second) {
    Climate.Reading before = room.at(start.plusHours(Math.floor(second / 3600)));
    Climate.Reading after = room.at(start.plusHours(Math.floor(second / 3600) + 1));
    return between(before, after, second % 3600 / 3600).celsius();
  }
}
