package benchlore.schedules.coating;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Unit;
import benchlore.schedules.trade.ApplicationMethod;
import java.util.List;
import java.util.Optional;

/** Makes invented finishes for tests; every setter returns the maker. */
final class FinishMaker {
  static final double HOUR = 3600;
  static final double DAY = 86_400;

  FinishFamily family = FinishFamily.OIL_POLYURETHANE;
  FinishRole role = FinishRole.FILM;
  List<DryingMechanism> mechanisms = List.of(DryingMechanism.OXIDATION);
  CoatBond bond = CoatBond.WITHIN_WINDOW;
  Datum touchDry = seconds(4 * HOUR, 6 * HOUR);
  Datum recoatOpens = seconds(8 * HOUR, 10 * HOUR);
  Optional<Datum> recoatCloses = Optional.of(seconds(24 * HOUR, 48 * HOUR));
  Datum sandAfter = seconds(12 * HOUR, 12 * HOUR);
  Datum fullCure = seconds(7 * DAY, 30 * DAY);
  Optional<Datum> potLife = Optional.empty();
  double referenceCelsius = 20;
  double referenceHumidity = 50;
  double minimumCelsius = 10;
  double maximumHumidity = 85;
  Optional<Datum> minimumHumidity = Optional.empty();
  double solids = 38;
  double wetFilm = 80;
  Optional<Datum> maximumDryFilm = Optional.empty();
  Optional<Datum> q10 = Optional.empty();
  List<SolventShare> solvents = List.of();
  List<Sheen> sheens = List.of(Sheen.SATIN, Sheen.GLOSS);
  boolean raisesGrain;
  boolean rags;
  boolean isocyanate;
  boolean stages = true;

  static FinishMaker oil() {
    return new FinishMaker();
  }

  static FinishMaker lacquer() {
    FinishMaker maker = new FinishMaker();
    maker.family = FinishFamily.NITROCELLULOSE_LACQUER;
    maker.mechanisms = List.of(DryingMechanism.EVAPORATION);
    maker.bond = CoatBond.MELTS_IN;
    maker.touchDry = seconds(300, 1800);
    maker.recoatOpens = seconds(1800, HOUR);
    maker.recoatCloses = Optional.empty();
    maker.sandAfter = seconds(2 * HOUR, 3 * HOUR);
    maker.minimumCelsius = 5;
    maker.maximumHumidity = 95;
    maker.solids = 17;
    maker.wetFilm = 100;
    maker.maximumDryFilm = Optional.of(Datum.of(76, Unit.MICRON, from()));
    return maker;
  }

  static FinishMaker waterborne() {
    FinishMaker maker = new FinishMaker();
    maker.family = FinishFamily.WATERBORNE_POLYURETHANE;
    maker.mechanisms = List.of(DryingMechanism.COALESCENCE);
    maker.touchDry = seconds(1200, HOUR);
    maker.recoatOpens = seconds(2 * HOUR, 6 * HOUR);
    maker.recoatCloses = Optional.of(seconds(12 * HOUR, 24 * HOUR));
    maker.sandAfter = seconds(3 * HOUR, 6 * HOUR);
    maker.raisesGrain = true;
    maker.minimumCelsius = 13;
    return maker;
  }

  static FinishMaker epoxy() {
    FinishMaker maker = new FinishMaker();
    maker.family = FinishFamily.EPOXY;
    maker.mechanisms = List.of(DryingMechanism.TWO_PART);
    maker.referenceCelsius = 25;
    maker.minimumCelsius = 5;
    maker.solids = 100;
    maker.potLife = Optional.of(seconds(1200, 2400));
    maker.fullCure = seconds(5 * DAY, 5 * DAY);
    return maker;
  }

  static FinishMaker moistureCure() {
    FinishMaker maker = new FinishMaker();
    maker.mechanisms = List.of(DryingMechanism.MOISTURE_CURE);
    maker.minimumHumidity = Optional.of(Datum.of(40, Unit.PERCENT, from()));
    maker.maximumHumidity = 75;
    return maker;
  }

  static FinishMaker of(DryingMechanism mechanism) {
    return switch (mechanism) {
      case EVAPORATION -> lacquer();
      case COALESCENCE -> waterborne();
      case OXIDATION -> oil();
      case TWO_PART -> epoxy();
      case MOISTURE_CURE -> moistureCure();
    };
  }

  static Datum seconds(double low, double high) {
    return Datum.range(low, high, Unit.SECOND, from());
  }

  static Provenance from() {
    return Provenance.commonPractice("invented for a test");
  }

  private static Datum of(double value, Unit unit) {
    return Datum.of(value, unit, from());
  }

  private Optional<Datum> stage(Datum datum) {
    return stages ? Optional.of(datum) : Optional.empty();
  }

  FinishData make() {
    return new FinishData(
        family,
        role,
        mechanisms,
        bond,
        stage(touchDry),
        stage(recoatOpens),
        stage(sandAfter),
        stage(seconds(sandAfter.low() + HOUR, sandAfter.high() + HOUR)),
        stage(seconds(DAY, 3 * DAY)),
        stage(fullCure),
        recoatCloses,
        Optional.of(seconds(2 * DAY, 3 * DAY)),
        potLife,
        of(referenceCelsius, Unit.CELSIUS),
        of(referenceHumidity, Unit.PERCENT),
        of(minimumCelsius, Unit.CELSIUS),
        of(32, Unit.CELSIUS),
        of(maximumHumidity, Unit.PERCENT),
        minimumHumidity,
        of(solids, Unit.PERCENT),
        of(950, Unit.KILOGRAM_PER_CUBIC_METRE),
        of(wetFilm, Unit.MICRON),
        of(3, Unit.COUNT),
        maximumDryFilm,
        of(450, Unit.KILOGRAM_PER_CUBIC_METRE),
        q10,
        Optional.empty(),
        solvents,
        List.of(ApplicationMethod.BRUSH, ApplicationMethod.ROLLER, ApplicationMethod.SPRAY),
        sheens,
        raisesGrain,
        rags,
        isocyanate,
        Datum.range(180, 220, Unit.COUNT, from()),
        Datum.range(320, 400, Unit.COUNT, from()),
        List.of(UsePlace.INDOOR_DRY));
  }
}
