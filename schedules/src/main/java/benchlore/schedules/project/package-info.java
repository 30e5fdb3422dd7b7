/**
 * One project from rough boards to finished parts: every rule of the engine laid along a calendar.
 *
 * <p>Enter at {@link benchlore.schedules.project.Project}. May depend on {@code air}, {@code
 * answer}, {@code caution}, {@code coating}, {@code compatibility}, {@code glueup}, {@code
 * material}, {@code movement}, {@code quantity}, {@code room}, {@code sanding} and {@code time}.
 * All types are immutable values, safe to share between threads.
 */
package benchlore.schedules.project;
