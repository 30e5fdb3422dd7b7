package benchlore.generator.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Repeatable choices: the same seed gives the same requests. */
final class Dice {
  private static final double[] NONSENSE = {-1, 0, 1e9, 1e300, 1e-300, Double.NaN};
  private final Random random;

  Dice(long seed) {
    this.random = new Random(seed);
  }

  /** A figure of the range, now and then nonsense. */
  double figure(double low, double high) {
    return random.nextInt(200) == 0 ? NONSENSE[random.nextInt(NONSENSE.length)] : sound(low, high);
  }

  /** A figure of the range. */
  double sound(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  int whole(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  boolean yes() {
    return random.nextBoolean();
  }

  <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  <T> T one(T[] of) {
    return of[random.nextInt(of.length)];
  }

  /** Each of them with even chance, at least one. */
  <T> List<T> some(List<T> of) {
    List<T> some = new ArrayList<>();
    for (T item : of) {
      if (yes()) {
        some.add(item);
      }
    }
    return some.isEmpty() ? List.of(one(of)) : some;
  }
}
