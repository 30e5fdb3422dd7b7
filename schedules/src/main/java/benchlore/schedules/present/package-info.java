/**
 * What a page shows, computed once: figures and sentences in the reader's units, the days of a plan
 * as rows to draw, its calendar as text. The site and a page's script show what this gives.
 *
 * <p>Enter at {@link benchlore.schedules.present.FigureText}, {@link
 * benchlore.schedules.present.PlanDays} or {@link benchlore.schedules.present.PlanCalendar}; {@link
 * benchlore.schedules.present.NamedUnit} is the table of units. May depend on {@code answer},
 * {@code coating}, {@code project}, {@code quantity}, {@code room} and {@code time}. All types are
 * immutable values.
 */
package benchlore.schedules.present;
