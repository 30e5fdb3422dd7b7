/**
 * What the finder in the browser searches: one document a record, and the words that lead to them.
 *
 * <p>Enter at {@link benchlore.generator.search.FinderData}. May depend on {@code content} and
 * {@code pagedata}. Values are immutable.
 */
package benchlore.generator.search;
