package benchlore.schedules.air;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What to work out: a room, the coats put on in it, and what else matters there.
 *
 * @param room volume, outdoor air, mixing, temperature
 * @param releases one for each coat, in any order, at least one
 * @param ignitionSources everything in the room, or open to it, that can light a vapour
 * @param isocyanate true if a finish holds isocyanates (two-part urethanes, moisture-cured ones)
 * @param formaldehyde true if a finish gives off formaldehyde as it cures (acid-catalysed ones)
 * @param selfHeatingRags true if a finish dries by oxidation, so that rags heat up by themselves
 */
public record AirRequest(
    RoomAir room,
    List<Release> releases,
    List<IgnitionSource> ignitionSources,
    boolean isocyanate,
    boolean formaldehyde,
    boolean selfHeatingRags) {
  /** Copies the lists; refuses nulls. */
  public AirRequest {
    Objects.requireNonNull(room, "room");
    releases = List.copyOf(releases);
    ignitionSources = List.copyOf(ignitionSources);
  }

  boolean sprays() {
    for (Release release : releases) {
      if (release.method() == ApplicationMethod.SPRAY) {
        return true;
      }
    }
    return false;
  }

  /** Every solvent once, in the order met. */
  List<Solvent> solvents() {
    List<Solvent> found = new ArrayList<>();
    for (Release release : releases) {
      for (Release.Share share : release.shares()) {
        add(found, share.solvent());
      }
    }
    return found;
  }

  private static void add(List<Solvent> found, Solvent solvent) {
    for (Solvent other : found) {
      if (other.id().equals(solvent.id())) {
        return;
      }
    }
    found.add(solvent);
  }
}
