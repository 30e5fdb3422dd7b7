/**
 * Draws a plan day by day.
 *
 * <p>Enter at {@link benchlore.generator.drawing.days.DayLadder}. May depend on {@code
 * drawing.svg}. It knows no file and no record. Immutable values, pure functions.
 */
package benchlore.generator.drawing.days;
