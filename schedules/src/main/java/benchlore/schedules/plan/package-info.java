/**
 * One project from rough boards to finished parts: every rule of the engine laid along a calendar.
 *
 * <p>Enter at {@link benchlore.schedules.plan.Plan}. May depend on every package of the engine;
 * immutable.
 */
package benchlore.schedules.plan;
