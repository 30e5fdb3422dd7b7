package benchlore.schedules.movement;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Objects;

/**
 * A tape or slip that stands in for film and movement at a test-fit. Any thickness may be given; a
 * plan refuses one outside 20 to 1000 µm.
 *
 * @param name generic name, shown to the reader
 * @param thicknessMicron one layer, pressed down; measure ten layers with a caliper
 * @param from where the thickness comes from
 */
public record Tape(String name, double thicknessMicron, Provenance from) {
  /** Generic tapes at the thin end of what is sold, so that the gap is never less than meant. */
  private static final List<Tape> COMMON =
      List.of(
          common("clear packing tape", 45),
          common("painter's paper tape", 120),
          common("vinyl electrical tape", 150),
          common("cloth-backed tape", 230),
          common("playing card", 280));

  /** Refuses nulls. */
  public Tape {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(from, "from");
  }

  /** A tape measured by the person asking. */
  public static Tape measured(String name, double thicknessMicron) {
    return new Tape(name, thicknessMicron, Provenance.input());
  }

  /** Tapes most shops have, thinnest first; thicknesses from memory. */
  public static List<Tape> common() {
    return COMMON;
  }

  void check(Checks checks, String input) {
    checks.within(input + ".thicknessMicron", thicknessMicron, 20, 1000, Unit.MICRON);
  }

  private static Tape common(String name, double micron) {
    return new Tape(name, micron, Provenance.fromMemory("thin end of what is sold; measure yours"));
  }
}
