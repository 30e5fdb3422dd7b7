package benchlore.schedules.glueup;

import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate.Reading;
import benchlore.schedules.room.EquivalentAge.Rate;

/**
 * How fast an adhesive dries, sets and lets its water go, against the air its figures hold for.
 *
 * <pre>
 * open:      r = Q10 ^ ((T - Tref) / 10) / (h m),  h, m at most 1; r at least 1/2
 * setting:   r = Q10 ^ ((T - Tref) / 10) / (h m),  h, m at least 1; r = 0 below the minimum
 * machining: r = 7 d / d(T), straight lines through d(20) = 7 d, d(50) = 4 d, d(70) = 1 d
 * h: by relative humidity, 30 % 0.75, 50 % 1, 70 % 1.5, 80 % 1.6;  m: by wood moisture, 4 % 0.7, 6 % 0.85,
 * 8 % 1, 12 % 1.25, 16 % 1.6; both for adhesives that lose water only
 * </pre>
 *
 * <p>Open time takes every effect that shortens it and of those that lengthen it only the cold, to
 * twice at most; clamp time takes every effect that lengthens it and of those that shorten it only
 * warmth. Machining waits for water to spread through the wood, which warmth hardly helps: 7 days
 * at 20 deg C become 4 at 50, where Q10 = 2 would make it one. Adhesives that set by cooling lose
 * open time in a cold room and gain none in a warm one. Ranges are used at the safer end. Valid 0
 * to 40 deg C; the spread between adhesives of one family is larger than the error of the curve.
 */
final class SettingRates {
  static final Provenance HUMIDITY_PAGE =
      Provenance.source(
          "Workshop article on wood glue dry time", "temperature and humidity effects");
  static final Provenance TEMPERATURE =
      Provenance.source("Workshop article on wood glue dry time; epoxy maker's note", "cure times");
  static final Provenance DIFFUSION =
      Provenance.source(
          "The Wood Doctor's Rx",
          "ch. 41, 7 days; 4 d at 50 deg C and 1 d at 70 deg C from memory of the Wood Handbook");
  static final SourcedRange MACHINE_AFTER = SourcedRange.of(7 * 86_400.0, Unit.SECOND, DIFFUSION);

  private static final double[] HUMIDITY = {30, 50, 70, 80};
  private static final double[] HUMIDITY_TIME = {0.75, 1, 1.5, 1.6};
  private static final double[] MOISTURE = {4, 6, 8, 12, 16};
  private static final double[] MOISTURE_TIME = {0.7, 0.85, 1, 1.25, 1.6};
  private static final double[] WARMTH = {-30, 20, 50, 70};
  private static final double[] WARMTH_DAY = {12, 7, 4, 1};
  private static final double LEAST_OPEN_RATE = 0.5;
  private static final double COOLING_PER_DEGREE = 0.04;

  private SettingRates() {}

  /** Rate at which the open time runs out. */
  static Rate open(Adhesive adhesive, GlueUpRequest.Wood wood) {
    double reference = adhesive.air().referenceTemperature().low();
    if (adhesive.setting() == Adhesive.Setting.COOLING) {
      return air -> 1 + Math.max(0, reference - air.celsius()) * COOLING_PER_DEGREE;
    }
    double slowPerDegree = perDegree(q10(adhesive).low());
    double fastPerDegree = perDegree(q10(adhesive).high());
    double dry = Math.min(1, woodFactor(adhesive, wood.driestPercent()));
    return air -> {
      double degrees = air.celsius() - reference;
      double warmth = Numeric.exp(degrees * (degrees < 0 ? slowPerDegree : fastPerDegree));
      double thin = Math.min(1, airFactor(adhesive, air)) * dry;
      return Math.max(LEAST_OPEN_RATE, warmth) / thin;
    };
  }

  /** Rate at which the joint sets; 0 below the adhesive's minimum. */
  static Rate setting(Adhesive adhesive, GlueUpRequest.Wood wood) {
    double reference = adhesive.air().referenceTemperature().high();
    double minimum = adhesive.air().minimumTemperature().high();
    boolean cooling = adhesive.setting() == Adhesive.Setting.COOLING;
    double slowPerDegree = cooling ? 0 : perDegree(q10(adhesive).low());
    double fastPerDegree = cooling ? 0 : perDegree(q10(adhesive).high());
    double damp = Math.max(1, woodFactor(adhesive, wood.wettestPercent()));
    return air -> {
      if (air.celsius() < minimum) {
        return 0;
      }
      double degrees = air.celsius() - reference;
      double warmth = Numeric.exp(degrees * (degrees < 0 ? fastPerDegree : slowPerDegree));
      double slow = Math.max(1, airFactor(adhesive, air)) * damp;
      return warmth / slow;
    };
  }

  /** Rate at which glue water spreads out of the joint; 1 at 20 deg C. */
  static Rate machining() {
    return air -> WARMTH_DAY[1] / interpolate(WARMTH, WARMTH_DAY, air.celsius());
  }

  /** The adhesive's own factor, else the usual one for how it sets. */
  static SourcedRange q10(Adhesive adhesive) {
    return adhesive
        .air()
        .rateQ10()
        .orElseGet(
            () ->
                switch (adhesive.setting()) {
                  case WATER_LOSS, REACTION -> SourcedRange.of(2, Unit.RATIO, TEMPERATURE);
                  case MOISTURE_REACTION ->
                      SourcedRange.of(2, Unit.RATIO, Provenance.fromMemory("as other reactions"));
                  case SOLVENT_LOSS ->
                      SourcedRange.of(1.6, Unit.RATIO, Provenance.fromMemory("evaporation"));
                  case COOLING ->
                      SourcedRange.of(1, Unit.RATIO, Provenance.fromMemory("no reaction"));
                });
  }

  private static double airFactor(Adhesive adhesive, Reading air) {
    return adhesive.setting() == Adhesive.Setting.WATER_LOSS
        ? interpolate(HUMIDITY, HUMIDITY_TIME, air.relativeHumidityPercent())
        : 1;
  }

  private static double woodFactor(Adhesive adhesive, double percent) {
    return adhesive.setting() == Adhesive.Setting.WATER_LOSS
        ? interpolate(MOISTURE, MOISTURE_TIME, percent)
        : 1;
  }

  private static double perDegree(double q10) {
    return Numeric.log(q10) / 10;
  }

  /** Straight lines between the points, level outside them. */
  static double interpolate(double[] at, double[] value, double x) {
    if (x <= at[0]) {
      return value[0];
    }
    for (int i = 1; i < at.length; i++) {
      if (x <= at[i]) {
        double share = (x - at[i - 1]) / (at[i] - at[i - 1]);
        double rise = value[i] - value[i - 1];
        return share * rise + value[i - 1];
      }
    }
    return value[value.length - 1];
  }
}
