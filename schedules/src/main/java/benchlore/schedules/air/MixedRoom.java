package benchlore.schedules.air;

import benchlore.schedules.quantity.Numeric;

/**
 * A well-mixed room with outdoor air and an imperfect mixing factor, solved exactly.
 *
 * <pre>
 * V dc/dt = g(t) - (Q / K) c,  c = 0 before the first coat,  a = Q / (K V)
 * even release g since s = 0:  c = g / (a V) x (1 - exp(-a s))
 * decaying release m exp(-k s) / s, k = 1 / tau, from c0:
 *   c = c0 exp(-a s) + m k / V x (exp(-a s) - exp(-k s)) / (k - a)
 * dose: integral of c dt = (released - V c) / (a V), from the balance of mass
 * </pre>
 *
 * <p>Valid for any positive volume and flow. The equation is linear, so coats add. It is the air of
 * the room on the whole: beside a wet panel and below it (most vapours are heavier than air) there
 * is more. K is how industrial-ventilation practice allows for that, 1 to 10. Source: the general
 * dilution ventilation equation, V dC = G dt - Q' C dt with Q' = Q / K.
 *
 * @param volume V, m3
 * @param changesPerSecond a, effective air changes a second
 */
record MixedRoom(double volume, double changesPerSecond) {
  static MixedRoom of(RoomAir room) {
    return new MixedRoom(room.volume(), room.effectiveChangesPerSecond());
  }

  /** Concentration from one coat at a moment, kg/m3. */
  double concentration(Emission emission, double second) {
    double since = second - emission.startSecond();
    if (since <= 0) {
      return 0;
    }
    ReleaseCurve curve = emission.curve();
    double even = Math.min(since, curve.quickSecond());
    double quickRate = curve.quickShare() * emission.kilogram() / curve.quickSecond();
    double buildUp = 1 - Numeric.exp(-changesPerSecond * even);
    double atQuickEnd = quickRate / (changesPerSecond * volume) * buildUp;
    if (since <= curve.quickSecond()) {
      return atQuickEnd;
    }
    double after = since - curve.quickSecond();
    double slowRate = (1 - curve.quickShare()) * emission.kilogram() / curve.decaySecond();
    double slow = bateman(slowRate / volume, after, 1 / curve.decaySecond());
    return atQuickEnd * Numeric.exp(-changesPerSecond * after) + slow;
  }

  /** Concentration times time from one coat until a moment, kg s/m3. */
  double dose(Emission emission, double second) {
    double released = emission.releasedKilogram(second);
    double inRoom = concentration(emission, second) * volume;
    return (released - inRoom) / (changesPerSecond * volume);
  }

  /** Nothing later can pass this: all that is in the room and all still to come, at once. */
  double ceiling(Emission emission, double second) {
    double toCome = emission.kilogram() - emission.releasedKilogram(second);
    return concentration(emission, second) + toCome / volume;
  }

  /**
   * The moment after which a coat's vapour can only grow less, s: what evaporates slowly, alone, is
   * at its highest ln(k / a) / (k - a) after the quick share, and the rest is falling by then.
   */
  double fallsFromSecond(Emission emission) {
    ReleaseCurve curve = emission.curve();
    double k = 1 / curve.decaySecond();
    double apart = k - changesPerSecond;
    double ahead = Math.abs(apart) < 1e-6 * k ? 1 / k : Numeric.log(k / changesPerSecond) / apart;
    return emission.startSecond() + curve.quickSecond() + ahead;
  }

  /** r (exp(-a s) - exp(-k s)) / (k - a), by its series where a and k nearly agree. */
  private double bateman(double r, double s, double k) {
    double x = (k - changesPerSecond) * s;
    double decayed = Numeric.exp(-changesPerSecond * s);
    if (Math.abs(x) < 1e-3) {
      double cubic = 1 - x / 4;
      double square = 1 - cubic * x / 3;
      return r * decayed * s * (1 - square * x / 2);
    }
    return r * (decayed - Numeric.exp(-k * s)) / (k - changesPerSecond);
  }
}
