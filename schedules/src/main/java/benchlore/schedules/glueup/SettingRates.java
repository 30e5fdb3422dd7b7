package benchlore.schedules.glueup;

import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate.Reading;
import benchlore.schedules.room.EquivalentAge.Rate;
import benchlore.schedules.room.TemperatureRule;
import java.util.Optional;

/**
 * How fast an adhesive dries, sets and lets its water go, against the air its figures hold for.
 *
 * <pre>
 * open:      r = w(T) / (h m),  h, m at most 1; r at least 1/2
 * setting:   r = w(T) / (h m),  h, m at least 1; r = 0 below the minimum
 * pot:       r = w(T) of the pot's own factor, else as open
 * w: the adhesive's own rule, one of {@link TemperatureRule}; else Q10 by what makes it set
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
    TemperatureRule weak = rule(adhesive, false, reference);
    TemperatureRule strong = rule(adhesive, true, reference);
    double dry = Math.min(1, woodFactor(adhesive, wood.driestPercent()));
    return air -> {
      double warmth = (air.celsius() < reference ? weak : strong).rate(air.celsius());
      double thin = Math.min(1, airFactor(adhesive, air)) * dry;
      return Math.max(LEAST_OPEN_RATE, warmth) / thin;
    };
  }

  /** Rate at which a mixed batch goes off in the pot: by its own factor, else as it lies open. */
  static Rate pot(Adhesive adhesive, GlueUpRequest.Wood wood) {
    Optional<SourcedRange> own = adhesive.air().speed().potRateQ10();
    if (own.isEmpty()) {
      return open(adhesive, wood);
    }
    double reference = adhesive.air().referenceTemperature().low();
    TemperatureRule weak = new TemperatureRule.Q10(own.get().low(), reference);
    TemperatureRule strong = new TemperatureRule.Q10(own.get().high(), reference);
    return air ->
        Math.max(LEAST_OPEN_RATE, (air.celsius() < reference ? weak : strong).rate(air.celsius()));
  }

  /** Rate at which the joint sets; 0 below the adhesive's minimum. */
  static Rate setting(Adhesive adhesive, GlueUpRequest.Wood wood) {
    double reference = adhesive.air().referenceTemperature().high();
    double minimum = adhesive.air().minimumTemperature().high();
    boolean cooling = adhesive.setting() == Adhesive.Setting.COOLING;
    TemperatureRule weak = rule(adhesive, false, reference);
    TemperatureRule strong = rule(adhesive, true, reference);
    double damp = Math.max(1, woodFactor(adhesive, wood.wettestPercent()));
    return air -> {
      if (air.celsius() < minimum) {
        return 0;
      }
      double warmth = cooling ? 1 : (air.celsius() < reference ? strong : weak).rate(air.celsius());
      double slow = Math.max(1, airFactor(adhesive, air)) * damp;
      return warmth / slow;
    };
  }

  /** Rate at which glue water spreads out of the joint; 1 at 20 deg C. */
  static Rate machining() {
    return air -> WARMTH_DAY[1] / interpolate(WARMTH, WARMTH_DAY, air.celsius());
  }

  /**
   * How warmth hurries this adhesive.
   *
   * @param strong the end of the record's range at which it is hurried and held up most
   * @param reference where the rate is 1, deg C
   */
  private static TemperatureRule rule(Adhesive adhesive, boolean strong, double reference) {
    Adhesive.Speed speed = adhesive.air().speed();
    if (speed.rateActivationEnergy().isPresent()) {
      SourcedRange energy = speed.rateActivationEnergy().get();
      return new TemperatureRule.Arrhenius(strong ? energy.high() : energy.low(), reference);
    }
    if (speed.rateDatum().isPresent()) {
      SourcedRange datum = speed.rateDatum().get();
      return new TemperatureRule.NurseSaul(strong ? datum.high() : datum.low(), reference);
    }
    SourcedRange factor = q10(adhesive);
    return new TemperatureRule.Q10(strong ? factor.high() : factor.low(), reference);
  }

  /** The adhesive's own factor, else the usual one for how it sets. */
  static SourcedRange q10(Adhesive adhesive) {
    return adhesive
        .air()
        .speed()
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
