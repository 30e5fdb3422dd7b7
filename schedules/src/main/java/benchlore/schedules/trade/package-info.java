/**
 * Words of the trade that several parts use, and the figures that hang on the words alone: how a
 * finish is put on, which gun, how a wood's pores lie.
 *
 * <p>Enter at the word needed; {@link benchlore.schedules.trade.Transfer} says how much of a finish
 * lands on the work. May depend on {@code answer} and {@code numeric}. Immutable, safe to share
 * between threads.
 */
package benchlore.schedules.trade;
