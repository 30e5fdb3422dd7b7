package benchlore.schedules.cutting;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Unit;
import java.util.Objects;

/**
 * What turns the bit. Any number may be given; a plan refuses figures out of range.
 *
 * @param kind how it is guided
 * @param lowestRpm slowest setting, 1000 to 60000
 * @param highestRpm fastest setting, not below {@code lowestRpm}, to 60000
 * @param highestFeedMetrePerSecond fastest it can push, 0.001 to 2; for hand feeding, how fast you
 *     can steadily move
 */
public record Machine(
    Kind kind, double lowestRpm, double highestRpm, double highestFeedMetrePerSecond) {
  /** How a machine is guided. */
  public enum Kind {
    /** Held in two hands, base on the work. */
    HAND_ROUTER(false),
    /** Router upside down under a table, work moved by hand. */
    ROUTER_TABLE(false),
    /** A CNC router with belts or a light frame. */
    LIGHT_CNC(true),
    /** A CNC router with screws and a stiff frame. */
    RIGID_CNC(true);

    private final boolean driven;

    Kind(boolean driven) {
      this.driven = driven;
    }

    /** True if a machine, not a hand, makes the feed. */
    public boolean driven() {
      return driven;
    }
  }

  /** Refuses a null kind. */
  public Machine {
    Objects.requireNonNull(kind, "kind");
  }

  void check(Checks checks) {
    checks
        .within("machine.lowestRpm", lowestRpm, 1000, 60_000, Unit.RPM)
        .within("machine.highestRpm", highestRpm, 1000, 60_000, Unit.RPM)
        .within(
            "machine.highestFeedMetrePerSecond",
            highestFeedMetrePerSecond,
            0.001,
            2,
            Unit.METRE_PER_SECOND)
        .require(
            !(lowestRpm > highestRpm),
            "machine",
            "The slowest speed is above the fastest.",
            "Give the slower setting first.");
  }
}
