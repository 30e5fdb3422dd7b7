/**
 * Every caution the engine gives, once: one row a code with its severity, its words and where they
 * come from, a file a trade. What is dangerous in several trades stands in {@link
 * benchlore.schedules.caution.ShopRows}.
 *
 * <p>To correct the words of a caution, change its row and nothing else. May depend on {@code
 * answer} and {@code quantity}. All types are immutable values, safe to share between threads.
 */
package benchlore.schedules.caution;
