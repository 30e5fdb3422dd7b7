/**
 * From a plan file and the shop's file to the engine's request, from any tree of values: the facts
 * of a YAML file on the JVM, a page's own object. Every problem is a value with its path, all at
 * once.
 *
 * <p>Enter at {@link benchlore.schedules.projectfile.ProjectFile}. May depend on {@code air},
 * {@code answer}, {@code exchange}, {@code glueup}, {@code material}, {@code movement}, {@code
 * present}, {@code project}, {@code quantity}, {@code room}, {@code sanding} and {@code time}.
 * Immutable but for problems while they are gathered.
 */
package benchlore.schedules.projectfile;
