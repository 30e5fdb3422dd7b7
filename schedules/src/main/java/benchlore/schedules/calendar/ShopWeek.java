package benchlore.schedules.calendar;

import benchlore.schedules.numeric.WallTime;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The hours someone works in the shop, week after week, less the days off.
 *
 * <p>Local wall-clock time without zones: a clock change is the maker's to notice. Looks {@value
 * #MOST_DAYS} days ahead at most.
 *
 * @param days hours of each of the seven days of the week, Monday first, in order, not overlapping;
 *     a day without hours is a day off
 * @param daysOff single days without work
 */
public record ShopWeek(List<List<Span>> days, List<LocalDate> daysOff) {
  private static final int MOST_DAYS = 400;
  private static final List<String> DAYS =
      List.of("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday");

  /** Any hour of any day. */
  public static final ShopWeek ALWAYS = ShopWeek.daily(0, 24);

  /**
   * Hours within one day.
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

    Slot on(LocalDate day) {
      LocalDateTime midnight = day.atTime(0, 0);
      return new Slot(
          WallTime.plus(midnight, fromMinuteInclusive * 60.0),
          WallTime.plus(midnight, toMinuteExclusive * 60.0));
    }
  }

  /** Copies what it is given; refuses spans of a day that overlap or run backward. */
  public ShopWeek {
    if (days.size() != DAYS.size()) {
      throw new IllegalArgumentException("a week has seven days: " + days.size());
    }
    List<List<Span>> copy = new ArrayList<>();
    for (List<Span> spans : days) {
      copy.add(List.copyOf(spans));
      int end = -1;
      for (Span span : spans) {
        if (span.fromMinuteInclusive() < end) {
          throw new IllegalArgumentException(
              "spans of a day must follow each other: " + DAYS.get(copy.size() - 1));
        }
        end = span.toMinuteExclusive();
      }
    }
    days = List.copyOf(copy);
    daysOff = List.copyOf(daysOff);
  }

  /** A week by the names of its days; a day left out is a day off. */
  public static ShopWeek of(Map<DayOfWeek, List<Span>> hours, List<LocalDate> daysOff) {
    List<List<Span>> days = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      days.add(hours.getOrDefault(day, List.of()));
    }
    return new ShopWeek(days, daysOff);
  }

  private boolean off(LocalDate day) {
    for (LocalDate single : daysOff) {
      if (single.equals(day)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The same hours every day.
   *
   * @param fromHourInclusive 0 to 23
   * @param toHourExclusive 1 to 24
   */
  public static ShopWeek daily(int fromHourInclusive, int toHourExclusive) {
    List<List<Span>> days = new ArrayList<>();
    for (int i = 0; i < DAYS.size(); i++) {
      days.add(List.of(new Span(fromHourInclusive * 60, toHourExclusive * 60)));
    }
    return new ShopWeek(days, List.of());
  }

  /** True if someone is in the shop then. */
  public boolean open(LocalDateTime moment) {
    for (Slot slot : on(moment.toLocalDate())) {
      if (!moment.isBefore(slot.start()) && moment.isBefore(slot.end())) {
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
   * The first stretch in which work fits without a break.
   *
   * @param earliest not before this moment
   * @param seconds length of the work, 0 or more
   * @return empty if none in 400 days
   */
  public Optional<Slot> unbroken(LocalDateTime earliest, long seconds) {
    LocalDate day = earliest.toLocalDate();
    for (int i = 0; i < MOST_DAYS; i++) {
      for (Slot open : on(WallTime.plusDays(day, i))) {
        LocalDateTime start = open.start().isBefore(earliest) ? earliest : open.start();
        LocalDateTime end = WallTime.plus(start, seconds);
        if (start.isBefore(open.end()) && !end.isAfter(open.end())) {
          return Optional.of(new Slot(start, end));
        }
      }
    }
    return Optional.empty();
  }

  /** The hours of one day, in order; none on a day off. */
  public List<Slot> hours(LocalDate day) {
    return on(day);
  }

  private List<Slot> on(LocalDate day) {
    List<Slot> slots = new ArrayList<>();
    if (!off(day)) {
      for (Span span : days.get(WallTime.weekday(day))) {
        slots.add(span.on(day));
      }
    }
    return slots;
  }
}
