package benchlore.schedules.movement;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Unit;

/**
 * The finish that will be built on one face: dry film = coats x wet film x solids by volume. Any
 * number may be given; a plan refuses coats outside 0 to 30, a wet film outside 0 to 1000 µm and
 * solids outside 0 to 100 %.
 *
 * @param coats number of coats on the face; 0 leaves it bare
 * @param wetFilmMicron thickness of one coat as laid
 * @param solidsByVolumePercent share that stays, from the data sheet
 */
public record Film(double coats, double wetFilmMicron, double solidsByVolumePercent) {
  /** A bare face. */
  public static Film none() {
    return new Film(0, 0, 0);
  }

  /** Dry film on the face, micrometres. */
  public double dryFilmMicron() {
    return coats * wetFilmMicron * solidsByVolumePercent / 100;
  }

  void check(Checks checks, String input) {
    checks
        .within(input + ".coats", coats, 0, 30, Unit.COUNT)
        .within(input + ".wetFilmMicron", wetFilmMicron, 0, 1000, Unit.MICRON)
        .within(input + ".solidsByVolumePercent", solidsByVolumePercent, 0, 100, Unit.PERCENT);
  }
}
