package benchlore.schedules.coating;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;

/**
 * Whether a coat can be put on at all at a moment: a film must be able to form on a dry surface.
 */
final class FirstMoment {
  private FirstMoment() {}

  static void check(Checks checks, DryingRequest request) {
    Finish finish = request.finish();
    Climate climate = request.climate();
    Moment start = request.start();
    double surface = WorkSurface.celsius(climate, start);
    double minimum = finish.air().minimumTemperature().low();
    if (surface < minimum && stops(finish)) {
      checks.add(
          new Refusal(
              "start",
              Message.of(
                  "At {0} this finish can't form a film: its minimum is {1}.",
                  Quantity.of(surface, Unit.CELSIUS), Quantity.of(minimum, Unit.CELSIUS)),
              Message.of(
                  "Warm the room and the work to {0} first, and hold it there while the film is"
                      + " wet.",
                  Quantity.of(finish.air().minimumTemperature().high(), Unit.CELSIUS))));
    }
    if (WorkSurface.marginCelsius(climate, start) <= 0) {
      checks.add(
          Refusal.of(
              "start",
              "The surface is at or below the dew point: water settles on it and the coat won't"
                  + " hold.",
              "Warm the work above the air's dew point by 3 C or more, or dry the air, and wipe it"
                  + " dry first."));
    }
  }

  /** Whether {@link #check} would find nothing. */
  static boolean fine(DryingRequest request) {
    Checks checks = new Checks();
    check(checks, request);
    return checks.isValid();
  }

  private static boolean stops(Finish finish) {
    for (DryingMechanism mechanism : finish.curing().mechanisms()) {
      if (MechanismRow.of(mechanism).stopsBelowMinimum()) {
        return true;
      }
    }
    return false;
  }
}
