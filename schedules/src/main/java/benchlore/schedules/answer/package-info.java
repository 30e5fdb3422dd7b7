/**
 * What the engine says: an answer with its working and cautions, or a refusal with its remedy.
 *
 * <p>Enter at {@link benchlore.schedules.answer.Answer}. Depends on the JDK alone. All types are
 * immutable values, safe to share between threads.
 */
package benchlore.schedules.answer;
