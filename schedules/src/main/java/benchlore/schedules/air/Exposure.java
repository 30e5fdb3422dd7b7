package benchlore.schedules.air;

import java.util.ArrayList;
import java.util.List;

/**
 * The room's air over time: every coat's concentration weighed on a {@link LimitScale} and added.
 *
 * @param room the room
 * @param coats the coats, in order of start
 */
record Exposure(MixedRoom room, List<Coat> coats) {
  /**
   * One coat.
   *
   * @param emission what it gives off
   * @param ppm what 1 kg/m3 of its volatile part is on the scale of this name, and so on
   */
  record Coat(Emission emission, double ppm, double health, double explosive, double idlh) {
    static Coat of(Release release, double celsius) {
      return new Coat(
          Emission.of(release),
          LimitScale.PPM.perKilogramPerCubicMetre(release, celsius),
          LimitScale.HEALTH.perKilogramPerCubicMetre(release, celsius),
          LimitScale.EXPLOSIVE.perKilogramPerCubicMetre(release, celsius),
          LimitScale.IDLH.perKilogramPerCubicMetre(release, celsius));
    }

    double weight(LimitScale scale) {
      return switch (scale) {
        case PPM -> ppm;
        case HEALTH -> health;
        case EXPLOSIVE -> explosive;
        case IDLH -> idlh;
      };
    }
  }

  static Exposure of(RoomAir room, List<Release> releases) {
    List<Coat> coats = new ArrayList<>();
    for (Release release : releases) {
      coats.add(Coat.of(release, room.celsius()));
    }
    coats.sort((a, b) -> Double.compare(a.emission().startSecond(), b.emission().startSecond()));
    return new Exposure(MixedRoom.of(room), coats);
  }

  double at(LimitScale scale, double second) {
    return weigh(scale, concentrations(second));
  }

  /** Each coat's concentration, kg/m3, in the order of the coats. */
  double[] concentrations(double second) {
    double[] each = new double[coats.size()];
    for (int i = 0; i < each.length; i++) {
      each[i] = room.concentration(coats.get(i).emission(), second);
    }
    return each;
  }

  /** Concentrations of the coats, weighed and added. */
  double weigh(LimitScale scale, double[] concentrations) {
    double sum = 0;
    for (int i = 0; i < concentrations.length; i++) {
      sum = concentrations[i] * coats.get(i).weight(scale) + sum;
    }
    return sum;
  }

  /** Average over a window that starts at {@code fromSecond}. */
  double average(LimitScale scale, double fromSecond, double lengthSecond) {
    double sum = 0;
    for (Coat coat : coats) {
      double before = room.dose(coat.emission(), fromSecond);
      double dose = room.dose(coat.emission(), fromSecond + lengthSecond) - before;
      sum = dose * coat.weight(scale) + sum;
    }
    return Math.max(0, sum / lengthSecond);
  }

  /** No value at or after this moment, coats still to come included, can pass this. */
  double ceiling(LimitScale scale, double second) {
    double sum = 0;
    for (Coat coat : coats) {
      sum = room.ceiling(coat.emission(), second) * coat.weight(scale) + sum;
    }
    return sum;
  }

  /** Release at a moment: the effective flow, m3/s, that would hold the scale at 1. */
  double releaseRate(LimitScale scale, double second) {
    double sum = 0;
    for (Coat coat : coats) {
      sum = coat.emission().kilogramPerSecond(second) * coat.weight(scale) + sum;
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
    return new Exposure(MixedRoom.of(other), coats);
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
      double from = first.emission().startSecond();
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
      double released = releasedFrom(scale, first.emission().startSecond(), lengthSecond);
      greatest = Math.max(greatest, released / lengthSecond);
    }
    return greatest;
  }

  private double releasedFrom(LimitScale scale, double from, double lengthSecond) {
    double sum = 0;
    for (Coat coat : coats) {
      double before = coat.emission().releasedKilogram(from);
      double released = coat.emission().releasedKilogram(from + lengthSecond) - before;
      sum = released * coat.weight(scale) + sum;
    }
    return sum;
  }

  /** Starts and flash-off ends, in order: between them every curve is smooth. */
  List<Double> breaks() {
    List<Double> seconds = new ArrayList<>();
    for (Coat coat : coats) {
      seconds.add(coat.emission().startSecond());
      seconds.add(coat.emission().quickEndSecond());
    }
    seconds.sort(Double::compare);
    return seconds;
  }

  double lastQuickEndSecond() {
    List<Double> seconds = breaks();
    return seconds.get(seconds.size() - 1);
  }

  /** The moment after which the vapour of all coats can only grow less. */
  double fallsFromSecond() {
    double last = 0;
    for (Coat coat : coats) {
      last = Math.max(last, room.fallsFromSecond(coat.emission()));
    }
    return last;
  }
}
