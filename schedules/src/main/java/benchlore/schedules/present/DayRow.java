package benchlore.schedules.present;

import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One day to draw, midnight to midnight.
 *
 * @param date the day
 * @param daysPassed days without anything between the row before and this one, 0 for the first
 * @param bars what is on it, in the order it is painted
 */
public record DayRow(Date date, int daysPassed, List<Bar> bars) {
  private static final double DAY_MINUTES = 1_440;
  private static final int DAWN_HOUR = 7;
  private static final int DUSK_HOUR = 21;

  /**
   * A stretch of the day.
   *
   * @param kind what it is
   * @param fromMinute minutes after midnight, 0 to 1440
   * @param toMinute minutes after midnight, not below the first, to 1440
   * @param label a few words or the number of a step; may be empty
   * @param figure what was measured then, if anything was
   */
  public record Bar(
      DayMark.Kind kind,
      double fromMinute,
      double toMinute,
      String label,
      Optional<Quantity> figure) {}

  /** Copies the list; refuses a row without its day. */
  public DayRow {
    if (date == null) {
      throw new NullPointerException("date");
    }
    bars = List.copyOf(bars);
  }

  /**
   * The days that have work, a named moment or a night's coldest hour, in order.
   *
   * @param marks in any order; of one kind they are painted in the order given
   */
  public static List<DayRow> of(List<DayMark> marks) {
    List<Date> days = new ArrayList<>();
    for (DayMark mark : marks) {
      Date day = mark.when().start().date();
      if (mark.kind().givesRow() && !days.contains(day)) {
        days.add(day);
      }
    }
    days.sort(null);
    List<DayRow> rows = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      int passed = i == 0 ? 0 : days.get(i - 1).daysUntil(days.get(i)) - 1;
      rows.add(new DayRow(days.get(i), passed, bars(days.get(i), marks)));
    }
    return rows;
  }

  /** How many pieces of work stand on some rows. */
  public static int work(List<DayRow> rows) {
    int pieces = 0;
    for (DayRow row : rows) {
      for (Bar bar : row.bars()) {
        pieces += bar.kind().isWork() ? 1 : 0;
      }
    }
    return pieces;
  }

  private static List<Bar> bars(Date day, List<DayMark> marks) {
    List<DayMark> all = new ArrayList<>();
    Moment midnight = day.midnight();
    all.add(dark(midnight, day.at(DAWN_HOUR, 0)));
    all.add(dark(day.at(DUSK_HOUR, 0), midnight.plusDays(1)));
    all.addAll(marks);
    List<Bar> bars = new ArrayList<>();
    for (DayMark.Kind kind : DayMark.Kind.values()) {
      for (DayMark mark : all) {
        if (mark.kind() == kind && isOn(day, mark)) {
          bars.add(bar(midnight, mark));
        }
      }
    }
    return bars;
  }

  private static DayMark dark(Moment from, Moment to) {
    return DayMark.of(DayMark.Kind.DARK, new Interval(from, to), "");
  }

  private static boolean isOn(Date day, DayMark mark) {
    Interval when = mark.when();
    if (mark.kind().givesRow()) {
      return when.start().date().equals(day);
    }
    Moment midnight = day.midnight();
    return when.start().isBefore(midnight.plusDays(1))
        && when.end().isAfter(midnight)
        && when.start().isBefore(when.end());
  }

  private static Bar bar(Moment midnight, DayMark mark) {
    double from = minutes(midnight, mark.when().start());
    return new Bar(
        mark.kind(), from, minutes(midnight, mark.when().end()), mark.label(), mark.figure());
  }

  private static double minutes(Moment midnight, Moment moment) {
    double minutes = midnight.secondsUntil(moment) / 60;
    return Math.min(Math.max(minutes, 0), DAY_MINUTES);
  }
}
