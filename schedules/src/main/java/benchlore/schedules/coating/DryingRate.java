package benchlore.schedules.coating;

import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.EquivalentAge;
import benchlore.schedules.room.Psychrometry;

/**
 * How fast a film dries in some air, relative to the air its label was written for.
 *
 * <pre>
 * evaporation    r = p(T) / p(Tref) = exp(H / R (1/Tref - 1/T)), T in kelvin, at most 2
 * coalescence    r = deficit(T, RH) / deficit(Tref, RHref), at most 2; 0 below the minimum
 * oxidation      r = Q10 ^ ((T - Tref) / 10)
 * two-part       as oxidation; 0 below the minimum
 * moisture cure  as oxidation, times RH / RHref; 0 below 30 % relative humidity
 * mixtures       the slowest of them at each moment
 * </pre>
 *
 * <p>Valid 0 to 45 deg C. The ratio of vapour pressures and deficits holds while the air at the
 * surface limits drying; in hot or dry air the film itself does, hence the cap of 2 (from memory,
 * the safe side). Moisture cure stalling below 30 % and minimum temperature as a stop: makers' data
 * sheets. Known error: labels scatter by far more than the formulas; the answer keeps their range.
 */
final class DryingRate {
  private static final double GAS_CONSTANT = 8.314462618;
  private static final double KELVIN = 273.15;
  private static final double FASTEST = 2;

  /** Below this a moisture-curing film stalls. */
  static final double STALL_HUMIDITY_PERCENT = 30;

  private DryingRate() {}

  /** Where a mechanism's rule comes from. */
  static Provenance rule(DryingMechanism mechanism) {
    return switch (mechanism) {
      case EVAPORATION -> Provenance.commonPractice("vapour pressure, Clausius-Clapeyron");
      case COALESCENCE -> Provenance.commonPractice("drying follows the vapour-pressure deficit");
      case OXIDATION, TWO_PART, MOISTURE_CURE ->
          Provenance.source(
              "ASTM C1074 (maturity, equivalent age), stated there as a sum over intervals",
              "rate taken as Q10");
    };
  }

  /** The rate of one mechanism. */
  static EquivalentAge.Rate of(Finish finish, DryingMechanism mechanism) {
    EquivalentAge.Rate free =
        switch (mechanism) {
          case EVAPORATION -> evaporation(finish);
          case COALESCENCE -> coalescence(finish);
          case OXIDATION, TWO_PART -> reaction(finish, mechanism);
          case MOISTURE_CURE -> moistureCure(finish);
        };
    if (!MechanismRow.of(mechanism).stopsBelowMinimum()) {
      return free;
    }
    double minimum = finish.air().minimumTemperature().low();
    return air -> air.celsius() < minimum ? 0 : free.in(air);
  }

  /** The slowest of all the finish's mechanisms at each moment. */
  static EquivalentAge.Rate slowest(Finish finish) {
    EquivalentAge.Rate slowest = of(finish, finish.dryingMechanism());
    for (int i = 1; i < finish.curing().mechanisms().size(); i++) {
      EquivalentAge.Rate before = slowest;
      EquivalentAge.Rate next = of(finish, finish.curing().mechanisms().get(i));
      slowest = air -> Math.min(before.in(air), next.in(air));
    }
    return slowest;
  }

  /** The fastest of all the finish's mechanisms at each moment. */
  static EquivalentAge.Rate fastest(Finish finish) {
    EquivalentAge.Rate fastest = of(finish, finish.dryingMechanism());
    for (int i = 1; i < finish.curing().mechanisms().size(); i++) {
      EquivalentAge.Rate before = fastest;
      EquivalentAge.Rate next = of(finish, finish.curing().mechanisms().get(i));
      fastest = air -> Math.max(before.in(air), next.in(air));
    }
    return fastest;
  }

  private static EquivalentAge.Rate evaporation(Finish finish) {
    return air -> Math.min(FASTEST, vapourFactor(finish, air.celsius()));
  }

  /** Vapour pressure of the finish's solvents, relative to the reference temperature. */
  static double vapourFactor(Finish finish, double celsius) {
    double perKelvin = SolventHeat.mean(finish.liquid().solvents()) / GAS_CONSTANT;
    double reference = 1 / (finish.air().referenceTemperature().mid() + KELVIN);
    double inverse = reference - 1 / (celsius + KELVIN);
    return Numeric.exp(perKelvin * inverse);
  }

  private static EquivalentAge.Rate coalescence(Finish finish) {
    double reference =
        Psychrometry.deficitPascal(
            finish.air().referenceTemperature().mid(), finish.air().referenceHumidity().mid());
    return air -> Math.min(FASTEST, deficit(air) / reference);
  }

  private static double deficit(Climate.Reading air) {
    return Psychrometry.deficitPascal(air.celsius(), air.relativeHumidityPercent());
  }

  private static EquivalentAge.Rate reaction(Finish finish, DryingMechanism mechanism) {
    double q10 = finish.curing().rateQ10().orElse(MechanismRow.of(mechanism).q10()).mid();
    return EquivalentAge.q10(q10, finish.air().referenceTemperature().mid());
  }

  private static EquivalentAge.Rate moistureCure(Finish finish) {
    EquivalentAge.Rate warm = reaction(finish, DryingMechanism.MOISTURE_CURE);
    double reference = finish.air().referenceHumidity().mid();
    return air -> {
      double humidity = air.relativeHumidityPercent();
      return humidity < STALL_HUMIDITY_PERCENT ? 0 : warm.in(air) * humidity / reference;
    };
  }
}
