/**
 * Air in the shop: solvent vapour, sanding dust, fire and re-entry.
 *
 * <p>Start from {@link benchlore.schedules.air.SolventData}. May depend on {@code answer} and
 * {@code numeric}. Immutable.
 */
package benchlore.schedules.air;
