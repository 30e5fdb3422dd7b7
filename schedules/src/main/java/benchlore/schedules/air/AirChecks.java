package benchlore.schedules.air;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Unit;

/** Refuses numbers that make no sense. */
final class AirChecks {
  private static final double LEAST_CHANGES_PER_HOUR = 0.01;
  private static final double SHARE_ROUNDING = 1e-6;
  private static final int MOST_COATS = 200;

  private AirChecks() {}

  static void room(RoomAir room, Checks checks) {
    checks
        .within("room.volume", room.volume(), 1, 100_000, Unit.CUBIC_METRE)
        .within("room.outdoorFlow", room.outdoorFlow(), 1e-6, 100, Unit.CUBIC_METRE_PER_SECOND)
        .within("room.mixingFactor", room.mixingFactor(), 1, 10, Unit.RATIO)
        .within("room.celsius", room.celsius(), -20, 50, Unit.CELSIUS);
    if (checks.isValid()) {
      checks.require(
          room.effectiveChangesPerSecond() * 3600 >= LEAST_CHANGES_PER_HOUR,
          "room.outdoorFlow",
          "The room gets next to no outdoor air for its size.",
          "Open it to the outdoors or fit an exhaust fan with a way in for fresh air.");
    }
  }

  static void releases(AirRequest request, Checks checks) {
    checks.require(
        !request.releases().isEmpty() && request.releases().size() <= MOST_COATS,
        "releases",
        "There is no coat to work out, or more than 200.",
        "Give 1 to 200 coats.");
    for (int i = 0; i < request.releases().size(); i++) {
      release("releases[" + i + "]", request.releases().get(i), checks);
    }
  }

  private static void release(String name, Release release, Checks checks) {
    checks
        .within(name + ".startSecond", release.startSecond(), 0, 2_592_000, Unit.SECOND)
        .within(name + ".volatileKilogram", release.volatileKilogram(), 1e-6, 100, Unit.KILOGRAM);
    checks.within(name + ".workSecond", release.workSecond(), 0, 86_400, Unit.SECOND);
    double sum = 0;
    for (Release.Share share : release.shares()) {
      checks.within(name + ".massShare", share.massShare(), 1e-9, 1, Unit.RATIO);
      sum = sum + share.massShare();
    }
    checks.require(
        sum <= 1 + SHARE_ROUNDING,
        name + ".shares",
        "The solvents' shares add up to more than the whole.",
        "Give shares by mass that add up to 1 or, with water in it, less.");
    if (release.curve().isPresent()) {
      curve(name + ".curve", release.curve().get(), checks);
    }
  }

  private static void curve(String name, ReleaseCurve curve, Checks checks) {
    checks
        .within(name + ".quickShare", curve.quickShare(), 0, 1, Unit.RATIO)
        .within(name + ".quickSecond", curve.quickSecond(), 1, 86_400, Unit.SECOND)
        .within(name + ".decaySecond", curve.decaySecond(), 1, 1_000_000, Unit.SECOND);
  }
}
