/**
 * What goes with what: decides each cell of the compatibility tables from the rule rows of the
 * content, and keeps every reason.
 *
 * <p>Enter at {@link benchlore.generator.compatibility.Table}. May depend on {@code content}.
 * Values are immutable.
 */
package benchlore.generator.compatibility;
