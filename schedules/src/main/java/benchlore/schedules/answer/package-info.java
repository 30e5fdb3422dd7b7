/**
 * What the engine says: an answer with its working and cautions, or a refusal with its remedy.
 *
 * <p>Enter at {@link benchlore.schedules.answer.Answer}. May depend on {@code quantity}. All types
 * are immutable values, safe to share between threads.
 */
package benchlore.schedules.answer;
