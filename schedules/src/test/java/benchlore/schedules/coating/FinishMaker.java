package benchlore.schedules.coating;

import benchlore.schedules.material.AirLimits;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.Curing;
import benchlore.schedules.material.Directions;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.FilmBuild;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.FinishUse;
import benchlore.schedules.material.Hazards;
import benchlore.schedules.material.Liquid;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.SolventShare;
import benchlore.schedules.material.StatedTimes;
import benchlore.schedules.material.UsePlace;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
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
  SourcedRange touchDry = seconds(4 * HOUR, 6 * HOUR);
  SourcedRange recoatOpens = seconds(8 * HOUR, 10 * HOUR);
  Optional<SourcedRange> recoatCloses = Optional.of(seconds(24 * HOUR, 48 * HOUR));
  SourcedRange sandAfter = seconds(12 * HOUR, 12 * HOUR);
  SourcedRange fullCure = seconds(7 * DAY, 30 * DAY);
  Optional<SourcedRange> potLife = Optional.empty();
  double referenceCelsius = 20;
  double referenceHumidity = 50;
  double minimumCelsius = 10;
  double maximumHumidity = 85;
  Optional<SourcedRange> minimumHumidity = Optional.empty();
  double solids = 38;
  double wetFilm = 80;
  Optional<SourcedRange> maximumDryFilm = Optional.empty();
  Optional<SourcedRange> q10 = Optional.empty();
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
    maker.maximumDryFilm = Optional.of(SourcedRange.of(76, Unit.MICRON, from()));
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
    maker.minimumHumidity = Optional.of(SourcedRange.of(40, Unit.PERCENT, from()));
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

  static SourcedRange seconds(double low, double high) {
    return SourcedRange.range(low, high, Unit.SECOND, from());
  }

  static Provenance from() {
    return Provenance.commonPractice("invented for a test");
  }

  private static SourcedRange of(double value, Unit unit) {
    return SourcedRange.of(value, unit, from());
  }

  private Optional<SourcedRange> stage(SourcedRange datum) {
    return stages ? Optional.of(datum) : Optional.empty();
  }

  Finish make() {
    return new Finish(
        family,
        role,
        new Curing(mechanisms, q10, potLife),
        times(),
        air(),
        new Liquid(
            of(solids, Unit.PERCENT),
            of(950, Unit.KILOGRAM_PER_CUBIC_METRE),
            of(450, Unit.KILOGRAM_PER_CUBIC_METRE),
            solvents,
            new Hazards(Optional.empty(), rags, isocyanate, false)),
        new FilmBuild(bond, of(wetFilm, Unit.MICRON), of(3, Unit.COUNT), maximumDryFilm, sheens),
        new FinishUse(
            List.of(ApplicationMethod.BRUSH, ApplicationMethod.ROLLER, ApplicationMethod.SPRAY),
            List.of(UsePlace.INDOOR_DRY),
            SourcedRange.range(180, 220, Unit.COUNT, from()),
            SourcedRange.range(320, 400, Unit.COUNT, from()),
            raisesGrain,
            new Directions(
                Optional.empty(),
                "Put it on.",
                Optional.empty(),
                Optional.empty(),
                "an even coat.")));
  }

  private StatedTimes times() {
    return new StatedTimes(
        stage(touchDry),
        stage(recoatOpens),
        stage(sandAfter),
        stage(seconds(sandAfter.low() + HOUR, sandAfter.high() + HOUR)),
        stage(seconds(DAY, 3 * DAY)),
        stage(fullCure),
        recoatCloses,
        Optional.of(seconds(2 * DAY, 3 * DAY)));
  }

  private AirLimits air() {
    return new AirLimits(
        of(referenceCelsius, Unit.CELSIUS),
        of(referenceHumidity, Unit.PERCENT),
        of(minimumCelsius, Unit.CELSIUS),
        of(32, Unit.CELSIUS),
        of(maximumHumidity, Unit.PERCENT),
        minimumHumidity);
  }
}
