/**
 * A key of simple questions that leads to one record, grown from the records themselves.
 *
 * <p>Enter at {@link benchlore.generator.key.Key}. May depend on {@code content}. Values are
 * immutable.
 */
package benchlore.generator.key;
