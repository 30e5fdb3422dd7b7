package org.teavm.classlib.java.time;

/** A length of time in whole seconds. */
public final class TDuration implements Comparable<TDuration> {
  /** No time at all. */
  public static final TDuration ZERO = new TDuration(0);

  private final long seconds;

  private TDuration(long seconds) {
    this.seconds = seconds;
  }

  /** So many seconds, which may be negative. */
  public static TDuration ofSeconds(long seconds) {
    return new TDuration(seconds);
  }

  /** Whole seconds. */
  public long getSeconds() {
    return seconds;
  }

  /** True below no time at all. */
  public boolean isNegative() {
    return seconds < 0;
  }

  @Override
  public int compareTo(TDuration other) {
    return Long.compare(seconds, other.seconds);
  }
}
