package benchlore.schedules.present;

import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.time.Interval;
import java.util.Optional;

/**
 * Something to show on the days it touches.
 *
 * @param kind what it is
 * @param when from when to when; a moment has no length
 * @param label a few words or the number of a step; may be empty
 * @param figure what was measured then, if anything was
 */
public record DayMark(Kind kind, Interval when, String label, Optional<Quantity> figure) {
  /** What is shown, in the order it is painted. */
  public enum Kind {
    /** From 21:00 to 07:00. */
    DARK,
    /** A night that was colder or warmer than usual. */
    OTHERWISE,
    /** Hours someone is in the shop. */
    SHOP,
    /** A recoat window. */
    WINDOW,
    /** A film is wet. */
    WET,
    /** Parts stand in clamps. */
    CLAMPED,
    /** A piece of work, on the day it begins. */
    WORK,
    /** A coat goes on, on the day it begins. */
    COAT,
    /** The coldest hour of a night. */
    COLDEST,
    /** A moment worth a name. */
    MOMENT;

    /** Whether it gives its day a row; the others are shown on rows that are there anyway. */
    boolean givesRow() {
      return isWork() || this == COLDEST || this == MOMENT;
    }

    /** Whether it is a piece of work. */
    public boolean isWork() {
      return this == WORK || this == COAT;
    }
  }

  /** Refuses nulls. */
  public DayMark {
    if (kind == null || when == null) {
      throw new NullPointerException("kind and when");
    }
    if (label == null || figure == null) {
      throw new NullPointerException("label and figure");
    }
  }

  /** A mark without a figure. */
  public static DayMark of(Kind kind, Interval when, String label) {
    return new DayMark(kind, when, label, Optional.empty());
  }
}
