/**
 * Air in the shop: solvent vapour, fire and re-entry.
 *
 * <p>Enter at {@link benchlore.schedules.air.Air}. May depend on {@code answer} and {@code
 * numeric}. Immutable.
 */
package benchlore.schedules.air;
