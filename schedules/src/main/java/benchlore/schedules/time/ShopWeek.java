package benchlore.schedules.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The hours someone works in the shop, week after week, less the days off.
 *
 * <p>Looks {@value #MOST_DAYS} days ahead at most.
 *
 * @param days hours of each of the seven days of the week, Monday first, in order, not overlapping;
 *     a day without hours is a day off
 * @param daysOff single days without work
 */
public record ShopWeek(List<List<Span>> days, List<Date> daysOff) {
  static final int MOST_DAYS = 400;

  /** Any hour of any day. */
  public static final ShopWeek ALWAYS = ShopWeek.daily(0, 24);

  /**
   * Hours within any one day.
   *
   * @param fromMinuteInclusive minutes after midnight, 0 to 1439
   * @param toMinuteExclusive minutes after midnight, above the first, to 1440
   */
  public record Span(int fromMinuteInclusive, int toMinuteExclusive) {
    /** Refuses hours that are none. */
    public Span {
      if (fromMinuteInclusive < 0
          || toMinuteExclusive > 1440
          || fromMinuteInclusive >= toMinuteExclusive) {
        throw new IllegalArgumentException(
            "a span runs from 0 to 1440 minutes, upward: "
                + fromMinuteInclusive
                + ", "
                + toMinuteExclusive);
      }
    }

    Interval on(Date day) {
      Moment midnight = day.midnight();
      return new Interval(
          midnight.plusMinutes(fromMinuteInclusive), midnight.plusMinutes(toMinuteExclusive));
    }
  }

  /** Copies what it is given; refuses spans of a day that overlap or run backward. */
  public ShopWeek {
    Weekday[] names = Weekday.values();
    if (days.size() != names.length) {
      throw new IllegalArgumentException("a week has seven days: " + days.size());
    }
    List<List<Span>> copy = new ArrayList<>();
    for (List<Span> spans : days) {
      copy.add(List.copyOf(spans));
      int end = -1;
      for (Span span : spans) {
        if (span.fromMinuteInclusive() < end) {
          throw new IllegalArgumentException(
              "spans of a day must follow each other: " + names[copy.size() - 1].words());
        }
        end = span.toMinuteExclusive();
      }
    }
    days = List.copyOf(copy);
    daysOff = List.copyOf(daysOff);
  }

  /** A week by the names of its days; a day left out is a day off. */
  public static ShopWeek of(Map<Weekday, List<Span>> hours, List<Date> daysOff) {
    List<List<Span>> days = new ArrayList<>();
    for (Weekday day : Weekday.values()) {
      days.add(hours.getOrDefault(day, List.of()));
    }
    return new ShopWeek(days, daysOff);
  }

  /**
   * The same hours every day.
   *
   * @param fromHourInclusive 0 to 23
   * @param toHourExclusive 1 to 24
   */
  public static ShopWeek daily(int fromHourInclusive, int toHourExclusive) {
    List<List<Span>> days = new ArrayList<>();
    for (int i = 0; i < Weekday.values().length; i++) {
      days.add(List.of(new Span(fromHourInclusive * 60, toHourExclusive * 60)));
    }
    return new ShopWeek(days, List.of());
  }

  /** True if someone is in the shop then. */
  public boolean open(Moment moment) {
    for (Interval hours : hours(moment.date())) {
      if (!moment.isBefore(hours.start()) && moment.isBefore(hours.end())) {
        return true;
      }
    }
    return false;
  }

  /** True if there is no hour of work in any week. */
  public boolean empty() {
    for (List<Span> spans : days) {
      if (!spans.isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /**
   * The first interval in which work fits without a break.
   *
   * @param earliest not before this moment
   * @param seconds length of the work, 0 or more
   * @return empty if none in 400 days
   */
  public Optional<Interval> unbroken(Moment earliest, double seconds) {
    Date day = earliest.date();
    for (int i = 0; i < MOST_DAYS; i++) {
      for (Interval open : hours(day.plusDays(i))) {
        Moment start = earliest.orLater(open.start());
        Moment end = start.plusSeconds(seconds);
        if (start.isBefore(open.end()) && !end.isAfter(open.end())) {
          return Optional.of(new Interval(start, end));
        }
      }
    }
    return Optional.empty();
  }

  /** The hours of one day, in order; none on a day off. */
  public List<Interval> hours(Date day) {
    List<Interval> hours = new ArrayList<>();
    if (!daysOff.contains(day)) {
      for (Span span : days.get(day.weekday().daysAfterMonday())) {
        hours.add(span.on(day));
      }
    }
    return hours;
  }
}
