package benchlore.schedules.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The shop's hours less what is already booked: nobody does two things at once. Work begins at, and
 * takes, whole steps of five minutes. Looks as far ahead as {@link ShopWeek}.
 */
public final class Bookings {
  private final ShopWeek week;
  private final List<Interval> taken = new ArrayList<>();

  /** Nothing booked yet. */
  public Bookings(ShopWeek week) {
    this.week = week;
  }

  /** Books an interval, whoever asked for it. */
  public void take(Interval interval) {
    taken.add(interval);
  }

  /** The first free interval from a moment on that holds this many seconds without a break. */
  public Optional<Interval> unbroken(Moment from, double seconds) {
    double length = Duration.ofSeconds(seconds).upToFiveMinutes().seconds();
    Date day = from.date();
    for (int i = 0; i < ShopWeek.MOST_DAYS; i++) {
      for (Interval free : free(day.plusDays(i), from)) {
        if (free.seconds() >= length) {
          return Optional.of(Interval.lasting(free.start(), length));
        }
      }
    }
    return Optional.empty();
  }

  /**
   * The first free intervals that together hold work which can be laid down and taken up again;
   * none if they never do.
   */
  public List<Interval> pieces(Moment from, double seconds) {
    List<Interval> pieces = new ArrayList<>();
    double left = Duration.ofSeconds(seconds).upToFiveMinutes().seconds();
    Date day = from.date();
    for (int i = 0; i < ShopWeek.MOST_DAYS; i++) {
      for (Interval free : free(day.plusDays(i), from)) {
        double fits = Math.min(left, free.seconds());
        pieces.add(Interval.lasting(free.start(), fits));
        left = left - fits;
        if (left <= 0) {
          return pieces;
        }
      }
    }
    return List.of();
  }

  /** Free intervals of a day after a moment, in order. */
  private List<Interval> free(Date day, Moment from) {
    List<Interval> free = new ArrayList<>();
    for (Interval open : week.hours(day)) {
      Moment start = open.start().isBefore(from) ? from.upToFiveMinutes() : open.start();
      while (start.isBefore(open.end())) {
        Optional<Interval> next = nextTaken(start, open.end());
        Moment end = next.isPresent() ? next.get().start() : open.end();
        if (start.isBefore(end)) {
          free.add(new Interval(start, end));
        }
        start = next.isPresent() ? next.get().end() : open.end();
      }
    }
    return free;
  }

  private Optional<Interval> nextTaken(Moment from, Moment before) {
    Optional<Interval> first = Optional.empty();
    for (Interval interval : taken) {
      boolean meets = interval.end().isAfter(from) && interval.start().isBefore(before);
      if (meets && (first.isEmpty() || interval.start().isBefore(first.get().start()))) {
        first = Optional.of(interval);
      }
    }
    return first;
  }
}
