package org.teavm.classlib.java.time;

import org.teavm.classlib.java.time.chrono.TChronoLocalDateTime;

/** A moment on a wall clock, without a zone. */
public final class TLocalDateTime implements TChronoLocalDateTime {
  private final TLocalDate date;
  private final int second;
  private final int nano;

  TLocalDateTime(TLocalDate date, int second, int nano) {
    this.date = date;
    this.second = second;
    this.nano = nano;
  }

  /** The day. */
  public TLocalDate toLocalDate() {
    return date;
  }

  /** The year. */
  public int getYear() {
    return date.getYear();
  }

  /** 1 to 12. */
  public int getMonthValue() {
    return date.getMonthValue();
  }

  /** 1 to 31. */
  public int getDayOfMonth() {
    return date.getDayOfMonth();
  }

  /** 0 to 23. */
  public int getHour() {
    return second / 3600;
  }

  /** 0 to 59. */
  public int getMinute() {
    return second / 60 % 60;
  }

  /** 0 to 59. */
  public int getSecond() {
    return second % 60;
  }

  /** 0 to 999,999,999. */
  public int getNano() {
    return nano;
  }

  /** True if this moment is earlier. */
  public boolean isBefore(TChronoLocalDateTime other) {
    return ((TLocalDateTime) other).isAfter(this);
  }

  /** True if this moment is later. */
  public boolean isAfter(TChronoLocalDateTime than) {
    TLocalDateTime other = (TLocalDateTime) than;
    int days = order() - other.order();
    boolean laterInDay = second > other.second || (second == other.second && nano > other.nano);
    return days > 0 || (days == 0 && laterInDay);
  }

  private int order() {
    return date.hashCode();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TLocalDateTime moment
        && order() == moment.order()
        && second == moment.second
        && nano == moment.nano;
  }

  @Override
  public int hashCode() {
    return order() * 86_400 + second;
  }
}
