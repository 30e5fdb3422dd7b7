package benchlore.schedules.air;

import benchlore.schedules.material.Solvent;
import java.util.ArrayList;
import java.util.List;

/**
 * The room's air over time: every solvent's concentration weighed on a {@link LimitScale} and
 * added.
 *
 * @param room the room
 * @param coats when each coat is begun, in order
 * @param vapours the solvents of all coats
 */
record Exposure(MixedRoom room, List<Coat> coats, List<Weighed> vapours) {
  /**
   * When a coat gives off most.
   *
   * @param startSecond when it is begun
   * @param quickEndSecond when the last of its solvents is done with leaving quickly
   */
  record Coat(double startSecond, double quickEndSecond) {}

  /**
   * One solvent of one coat.
   *
   * @param emission what is given off
   * @param ppm what 1 kg/m3 of it is on the scale of this name, and so on
   */
  record Weighed(
      Emission emission,
      double ppm,
      double health,
      double quarterHour,
      double ceiling,
      double explosive,
      double idlh) {
    static Weighed of(Release release, Release.Share share, double celsius) {
      Solvent solvent = share.solvent();
      return new Weighed(
          Emission.of(release, share),
          LimitScale.PPM.perKilogramPerCubicMetre(solvent, celsius),
          LimitScale.HEALTH.perKilogramPerCubicMetre(solvent, celsius),
          LimitScale.QUARTER_HOUR.perKilogramPerCubicMetre(solvent, celsius),
          LimitScale.CEILING.perKilogramPerCubicMetre(solvent, celsius),
          LimitScale.EXPLOSIVE.perKilogramPerCubicMetre(solvent, celsius),
          LimitScale.IDLH.perKilogramPerCubicMetre(solvent, celsius));
    }

    double weight(LimitScale scale) {
      return switch (scale) {
        case PPM -> ppm;
        case HEALTH -> health;
        case QUARTER_HOUR -> quarterHour;
        case CEILING -> ceiling;
        case EXPLOSIVE -> explosive;
        case IDLH -> idlh;
      };
    }
  }

  static Exposure of(RoomAir room, List<Release> releases) {
    List<Coat> coats = new ArrayList<>();
    List<Weighed> vapours = new ArrayList<>();
    for (Release release : releases) {
      coats.add(new Coat(release.startSecond(), release.quickEndSecond()));
      for (Release.Share share : release.shares()) {
        vapours.add(Weighed.of(release, share, room.celsius()));
      }
    }
    coats.sort((a, b) -> Double.compare(a.startSecond(), b.startSecond()));
    return new Exposure(MixedRoom.of(room), coats, vapours);
  }

  double at(LimitScale scale, double second) {
    return weigh(scale, concentrations(second));
  }

  /** Each solvent's concentration, kg/m3, in the order of the vapours. */
  double[] concentrations(double second) {
    double[] each = new double[vapours.size()];
    for (int i = 0; i < each.length; i++) {
      each[i] = room.concentration(vapours.get(i).emission(), second);
    }
    return each;
  }

  /** Concentrations of the vapours, weighed and added. */
  double weigh(LimitScale scale, double[] concentrations) {
    double sum = 0;
    for (int i = 0; i < concentrations.length; i++) {
      sum = concentrations[i] * vapours.get(i).weight(scale) + sum;
    }
    return sum;
  }

  /** Average over a window that starts at {@code fromSecond}. */
  double average(LimitScale scale, double fromSecond, double lengthSecond) {
    double sum = 0;
    for (Weighed vapour : vapours) {
      double before = room.dose(vapour.emission(), fromSecond);
      double dose = room.dose(vapour.emission(), fromSecond + lengthSecond) - before;
      sum = dose * vapour.weight(scale) + sum;
    }
    return Math.max(0, sum / lengthSecond);
  }

  /** No value at or after this moment, coats still to come included, can pass this. */
  double ceiling(LimitScale scale, double second) {
    double sum = 0;
    for (Weighed vapour : vapours) {
      sum = room.ceiling(vapour.emission(), second) * vapour.weight(scale) + sum;
    }
    return sum;
  }

  /** Release at a moment: the effective flow, m3/s, that would hold the scale at 1. */
  double releaseRate(LimitScale scale, double second) {
    double sum = 0;
    for (Weighed vapour : vapours) {
      sum = vapour.emission().kilogramPerSecond(second) * vapour.weight(scale) + sum;
    }
    return sum;
  }

  /** The greatest release: rates only fall between the breaks, so it stands at one of them. */
  double greatestReleaseRate(LimitScale scale) {
    double greatest = 0;
    for (double second : breaks()) {
      greatest = Math.max(greatest, releaseRate(scale, second));
    }
    return greatest;
  }

  /** The same coats in the same room with another flow of outdoor air, m3/s. */
  Exposure withFlow(RoomAir same, double outdoorFlow) {
    RoomAir other = new RoomAir(same.volume(), outdoorFlow, same.mixingFactor(), same.celsius());
    return new Exposure(MixedRoom.of(other), coats, vapours);
  }

  /**
   * The greatest mean supply of vapour over a window of this length that begins with a coat: what
   * is released in it, and what the room still holds of earlier coats when it begins.
   *
   * @param volume of the room, m3
   */
  double greatestMeanSupply(LimitScale scale, double lengthSecond, double volume) {
    double greatest = 0;
    for (Coat first : coats) {
      double from = first.startSecond();
      double held = at(scale, from) * volume;
      greatest =
          Math.max(greatest, (releasedFrom(scale, from, lengthSecond) + held) / lengthSecond);
    }
    return greatest;
  }

  /** The greatest mean release over a window of this length that begins with a coat. */
  double greatestMeanRelease(LimitScale scale, double lengthSecond) {
    double greatest = 0;
    for (Coat first : coats) {
      double released = releasedFrom(scale, first.startSecond(), lengthSecond);
      greatest = Math.max(greatest, released / lengthSecond);
    }
    return greatest;
  }

  private double releasedFrom(LimitScale scale, double from, double lengthSecond) {
    double sum = 0;
    for (Weighed vapour : vapours) {
      double before = vapour.emission().releasedKilogram(from);
      double released = vapour.emission().releasedKilogram(from + lengthSecond) - before;
      sum = released * vapour.weight(scale) + sum;
    }
    return sum;
  }

  /** Starts and flash-off ends, in order: between them every curve is smooth. */
  List<Double> breaks() {
    List<Double> seconds = new ArrayList<>();
    for (Coat coat : coats) {
      seconds.add(coat.startSecond());
    }
    for (Weighed vapour : vapours) {
      seconds.add(vapour.emission().quickEndSecond());
    }
    seconds.sort(Double::compare);
    return seconds;
  }

  double lastQuickEndSecond() {
    double last = 0;
    for (Coat coat : coats) {
      last = Math.max(last, coat.quickEndSecond());
    }
    return last;
  }

  /** The moment after which the vapour of all coats can only grow less. */
  double fallsFromSecond() {
    double last = 0;
    for (Weighed vapour : vapours) {
      last = Math.max(last, room.fallsFromSecond(vapour.emission()));
    }
    return last;
  }
}
