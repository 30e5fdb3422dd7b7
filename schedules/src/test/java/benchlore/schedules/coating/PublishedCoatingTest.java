package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.SheenLevels;
import benchlore.schedules.material.SolventShare;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.EquivalentAge;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The coating rules against published figures, one row a test. */
class PublishedCoatingTest {
  private static final Moment START = Moment.of(2026, 5, 4, 9, 0);
  private static final double SQUARE_FOOT = 0.09290304;
  private static final double GALLON = 0.003785411784;

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/coating/film.csv", numLinesToSkip = 1)
  void film(ArgumentsAccessor row) {
    double solids = row.getDouble(1);
    double film = row.getDouble(2);
    double found =
        switch (row.getString(0)) {
          case "dry" -> FilmThickness.dryMicron(finish(solids), film);
          case "wet" -> film / FilmThickness.dryMicron(finish(solids), 1);
          case "spread" -> spreadingRate(solids, film) / 1000;
          case "imperial" -> spreadingRate(solids, film) / SQUARE_FOOT * GALLON;
          default -> Double.NaN;
        };
    assertEquals(row.getDouble(3), found, row.getDouble(4));
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/coating/gloss.csv", numLinesToSkip = 1)
  void gloss(ArgumentsAccessor row) {
    SourcedRange found = SheenLevels.of(Sheen.valueOf(row.getString(0)));
    assertEquals(row.getDouble(1), found.low());
    assertEquals(row.getDouble(2), found.high());
  }

  /** Vapour pressure by the heat of evaporation against Antoine's equation, within 4 %. */
  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/coating/vapour.csv", numLinesToSkip = 1)
  void vapour(ArgumentsAccessor row) {
    double to = row.getDouble(6);
    double from = row.getDouble(5);
    double published = antoine(row, to) / antoine(row, from);
    FinishMaker maker = FinishMaker.lacquer();
    maker.referenceCelsius = from;
    maker.solvents =
        List.of(
            new SolventShare(
                row.getString(0), SourcedRange.of(100, Unit.PERCENT, FinishMaker.from())));
    EquivalentAge.Rate rate = DryingRate.of(maker.make(), DryingMechanism.EVAPORATION);
    assertEquals(published, rate.in(new Climate.Reading(to, 50)), 0.04 * published);
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/coating/temperature.csv", numLinesToSkip = 1)
  void temperature(ArgumentsAccessor row) {
    DryingMechanism mechanism = DryingMechanism.valueOf(row.getString(0));
    FinishMaker maker = FinishMaker.of(mechanism);
    maker.referenceCelsius = row.getDouble(1);
    double seconds = row.getDouble(3) * FinishMaker.DAY;
    maker.fullCure = FinishMaker.seconds(seconds, seconds);
    EquivalentAge.Rate rate = DryingRate.of(maker.make(), mechanism);
    Climate room = Climate.steady(row.getDouble(2), 50);
    double found = EquivalentAge.secondsUntil(room, START, seconds, rate).orElseThrow();
    assertEquals(row.getDouble(4), found / FinishMaker.DAY, row.getDouble(5));
  }

  private static double antoine(ArgumentsAccessor row, double celsius) {
    double exponent = row.getDouble(2) - row.getDouble(3) / (celsius + row.getDouble(4));
    return row.getString(1).startsWith("ln") ? Math.exp(exponent) : Math.pow(10, exponent);
  }

  private static Finish finish(double solids) {
    FinishMaker maker = FinishMaker.oil();
    maker.solids = solids;
    return maker.make();
  }

  private static double spreadingRate(double solids, double dryMicron) {
    QuantityRequest request =
        new QuantityRequest(
            finish(solids),
            new CoatedArea(1, 0, false),
            1,
            100 * dryMicron / solids,
            ApplicationMethod.BRUSH,
            SprayGun.HVLP);
    Answer.Given<Quantity> answer = Answers.given(LiquidQuantity.plan(request));
    Optional<WorkingLine> line =
        answer.working().stream()
            .filter(l -> l.key() == QuantityKey.THEORETICAL_SPREADING_RATE)
            .findFirst();
    return line.orElseThrow().result().quantity().value();
  }
}
