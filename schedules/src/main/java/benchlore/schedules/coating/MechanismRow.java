package benchlore.schedules.coating;

import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * What the engine assumes of each drying mechanism where a finish does not say.
 *
 * @param q10 factor on the rate for 10 deg C; 1 where vapour pressure governs instead
 * @param stopsBelowMinimum below the finish's minimum temperature no film forms at all (soft
 *     particles do not flow together, the reaction is dormant), so waiting longer does not help
 * @param formsUntilRecoat the film is still forming until the recoat window opens, so the limits of
 *     air hold that long, not only until it is touch dry
 */
record MechanismRow(SourcedRange q10, boolean stopsBelowMinimum, boolean formsUntilRecoat) {
  private static final Provenance DOUBLES = Provenance.fromMemory("the rate doubles with 10 C");
  private static final Provenance EPOXY =
      Provenance.source(
          "Boatbuilding epoxy makers' literature, quoted on a boatbuilding forum",
          "full cure 5 days at 25 C, 10 days at 15 C");

  static MechanismRow of(DryingMechanism mechanism) {
    return switch (mechanism) {
      case EVAPORATION -> new MechanismRow(q10(1, Provenance.computed()), false, false);
      case COALESCENCE -> new MechanismRow(q10(1, Provenance.computed()), true, true);
      case OXIDATION -> new MechanismRow(q10(2, DOUBLES), false, false);
      case TWO_PART -> new MechanismRow(q10(2, EPOXY), true, true);
      case MOISTURE_CURE -> new MechanismRow(q10(2, DOUBLES), false, true);
    };
  }

  private static SourcedRange q10(double factor, Provenance from) {
    return SourcedRange.of(factor, Unit.RATIO, from);
  }
}
