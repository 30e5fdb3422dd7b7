package benchlore.schedules.coating;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import java.util.ArrayList;
import java.util.List;

/** The working of one coat's drying. */
final class DryingWorking {
  private DryingWorking() {}

  static List<WorkingLine> of(DryingRequest request, DryingTimes times) {
    List<WorkingLine> lines = new ArrayList<>();
    lines.add(thickness(request, times));
    lines.add(dryFilm(request, times));
    lines.add(dewMargin(request));
    for (StageTime time : times.stages()) {
      lines.add(stage(request, times, time));
    }
    return lines;
  }

  private static WorkingLine thickness(DryingRequest request, DryingTimes times) {
    SourcedRange usual = request.finish().film().wetFilm();
    return new WorkingLine(
        QuantityKey.THICKNESS_FACTOR,
        Figure.computed("thickness factor", times.thicknessFactor(), Unit.RATIO),
        "thickness factor = wet film / usual wet film, at least 1",
        List.of(
            Figure.input("wet film", request.wetFilmMicron(), Unit.MICRON),
            Figure.of("usual wet film", usual.mid(), Unit.MICRON, usual.from())),
        FilmThickness.RULE);
  }

  private static WorkingLine dryFilm(DryingRequest request, DryingTimes times) {
    SourcedRange solids = request.finish().liquid().solidsByVolume();
    return new WorkingLine(
        QuantityKey.DRY_FILM_OF_THIS_COAT,
        Figure.computed("dry film of this coat", times.dryFilmMicron(), Unit.MICRON),
        "dry film = wet film x solids by volume / 100",
        List.of(
            Figure.input("wet film", request.wetFilmMicron(), Unit.MICRON),
            Figure.of("solids by volume", solids.mid(), Unit.PERCENT, solids.from())),
        FilmThickness.DRY_RULE);
  }

  private static WorkingLine dewMargin(DryingRequest request) {
    Climate.Reading air = request.climate().at(request.start());
    double surface = WorkSurface.celsius(request.climate(), request.start());
    double margin = WorkSurface.marginCelsius(request.climate(), request.start());
    return new WorkingLine(
        QuantityKey.SURFACE_ABOVE_DEW_POINT_AT_THE_START,
        Figure.computed("surface above dew point at the start", margin, Unit.CELSIUS_DIFFERENCE),
        "margin = surface - dew point; sound at 3 C or more",
        List.of(
            Figure.computed("surface", surface, Unit.CELSIUS),
            Figure.computed("dew point", air.dewPointCelsius(), Unit.CELSIUS)),
        WorkSurface.MARGIN.from());
  }

  private static WorkingLine stage(DryingRequest request, DryingTimes times, StageTime time) {
    SourcedRange stated = time.stage().of(request.finish()).orElseThrow();
    boolean closes = time.stage() == Stage.RECOAT_CLOSES;
    double label = closes ? stated.low() : stated.high();
    double planned = time.planned().seconds();
    Climate.Reading air = request.climate().at(request.start());
    List<Figure> inputs = new ArrayList<>();
    inputs.add(Figure.of("stated time", label, Unit.SECOND, stated.from()));
    inputs.add(Figure.computed("thickness factor", times.thicknessFactor(), Unit.RATIO));
    inputs.add(Figure.input("air at the start", air.celsius(), Unit.CELSIUS));
    inputs.add(Figure.input("humidity at the start", air.relativeHumidityPercent(), Unit.PERCENT));
    inputs.addAll(reference(request.finish(), mechanism(request.finish(), time.stage())));
    if (planned > 0) {
      double mean = label * times.thicknessFactor() / planned;
      inputs.add(Figure.computed("mean rate over the wait", mean, Unit.RATIO));
    }
    return new WorkingLine(
        QuantityKey.DRYING_STAGE,
        Figure.computed(time.stage().words(), planned, Unit.SECOND),
        "stated time x thickness factor = sum of rate(air) x time, hour by hour",
        inputs,
        DryingRate.rule(mechanism(request.finish(), time.stage())));
  }

  /** What the rate is relative to, and the factor of a reaction. */
  private static List<Figure> reference(Finish finish, DryingMechanism mechanism) {
    SourcedRange celsius = finish.air().referenceTemperature();
    SourcedRange humidity = finish.air().referenceHumidity();
    SourcedRange q10 = finish.curing().rateQ10().orElse(MechanismRow.of(mechanism).q10());
    Figure warmth = Figure.of("reference temperature", celsius.mid(), Unit.CELSIUS, celsius.from());
    Figure damp = Figure.of("reference humidity", humidity.mid(), Unit.PERCENT, humidity.from());
    Figure factor = Figure.of("factor for 10 C", q10.mid(), Unit.RATIO, q10.from());
    return switch (mechanism) {
      case EVAPORATION -> List.of(warmth, vapour(finish));
      case COALESCENCE -> List.of(warmth, damp);
      case OXIDATION, TWO_PART -> List.of(warmth, factor);
      case MOISTURE_CURE -> List.of(warmth, damp, factor);
    };
  }

  private static Figure vapour(Finish finish) {
    double factor = DryingRate.vapourFactor(finish, finish.air().referenceTemperature().mid() + 10);
    return Figure.of("vapour pressure, 10 C warmer", factor, Unit.RATIO, SolventHeat.from());
  }

  private static DryingMechanism mechanism(Finish finish, Stage stage) {
    return stage == Stage.FULL_CURE ? finish.cureMechanism() : finish.dryingMechanism();
  }
}
