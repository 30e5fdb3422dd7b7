/**
 * What the name finder in the browser searches: one document a record, and the words that lead to
 * them.
 *
 * <p>Enter at {@link benchlore.generator.find.FinderData}. May depend on {@code library} and JSON.
 */
package benchlore.generator.find;
