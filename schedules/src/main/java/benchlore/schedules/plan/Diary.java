package benchlore.schedules.plan;

import benchlore.schedules.calendar.ShopWeek;
import benchlore.schedules.calendar.Slot;
import benchlore.schedules.numeric.Numeric;
import benchlore.schedules.numeric.WallTime;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The shop's hours less what is already booked: nobody does two things at once. */
final class Diary {
  private static final int MOST_DAYS = 400;
  private static final long GRAIN_SECONDS = 300;

  private final ShopWeek week;
  private final List<Slot> taken = new ArrayList<>();

  Diary(ShopWeek week) {
    this.week = week;
  }

  /** Work takes whole steps of five minutes. */
  static long whole(double seconds) {
    return Numeric.toLong(Math.ceil(seconds / GRAIN_SECONDS)) * GRAIN_SECONDS;
  }

  void take(Slot slot) {
    taken.add(slot);
  }

  /** The first free stretch from a moment on that holds this without a break. */
  Optional<Slot> unbroken(LocalDateTime from, double seconds) {
    long length = whole(seconds);
    LocalDate day = from.toLocalDate();
    for (int i = 0; i < MOST_DAYS; i++) {
      for (Slot free : free(WallTime.plusDays(day, i), from)) {
        if (free.seconds() >= length) {
          return Optional.of(new Slot(free.start(), WallTime.plus(free.start(), length)));
        }
      }
    }
    return Optional.empty();
  }

  /** The first free stretches that together hold work which can be laid down and taken up again. */
  List<Slot> pieces(LocalDateTime from, double seconds) {
    List<Slot> pieces = new ArrayList<>();
    long left = whole(seconds);
    LocalDate day = from.toLocalDate();
    for (int i = 0; i < MOST_DAYS; i++) {
      for (Slot free : free(WallTime.plusDays(day, i), from)) {
        long fits = Math.min(left, free.seconds());
        pieces.add(new Slot(free.start(), WallTime.plus(free.start(), fits)));
        left = left - fits;
        if (left <= 0) {
          return pieces;
        }
      }
    }
    return List.of();
  }

  /** Free stretches of a day after a moment, in order. */
  private List<Slot> free(LocalDate day, LocalDateTime from) {
    List<Slot> free = new ArrayList<>();
    for (Slot open : week.hours(day)) {
      LocalDateTime start = open.start().isBefore(from) ? up(from) : open.start();
      while (start.isBefore(open.end())) {
        Optional<Slot> next = nextTaken(start, open.end());
        LocalDateTime end = next.isPresent() ? next.get().start() : open.end();
        if (start.isBefore(end)) {
          free.add(new Slot(start, end));
        }
        start = next.isPresent() ? next.get().end() : open.end();
      }
    }
    return free;
  }

  private Optional<Slot> nextTaken(LocalDateTime from, LocalDateTime before) {
    Optional<Slot> first = Optional.empty();
    for (Slot slot : taken) {
      boolean meets = slot.end().isAfter(from) && slot.start().isBefore(before);
      if (meets && (first.isEmpty() || slot.start().isBefore(first.get().start()))) {
        first = Optional.of(slot);
      }
    }
    return first;
  }

  /** The next full five minutes. */
  private static LocalDateTime up(LocalDateTime moment) {
    LocalDateTime minute = WallTime.minute(moment);
    LocalDateTime whole = minute.isBefore(moment) ? WallTime.plus(minute, 60) : minute;
    int over = whole.getMinute() % 5;
    return over == 0 ? whole : WallTime.plus(whole, (5 - over) * 60.0);
  }
}
