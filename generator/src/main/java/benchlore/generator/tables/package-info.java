/**
 * What goes with what: decides each cell of the compatibility tables from the rule rows of the
 * content, and keeps every reason.
 *
 * <p>Enter at {@link benchlore.generator.tables.Table}. May depend on {@code library} and the
 * engine's data types. Values are immutable.
 */
package benchlore.generator.tables;
