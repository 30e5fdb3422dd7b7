/**
 * Air in the shop: solvent vapour, fire, sanding dust and re-entry.
 *
 * <p>Enter at {@link benchlore.schedules.air.Air}, for dust at {@link
 * benchlore.schedules.air.Dust}, for overspray at {@link benchlore.schedules.air.Mist}. May depend
 * on {@code answer}, {@code caution}, {@code material} and {@code quantity}. All types are
 * immutable values, safe to share between threads.
 */
package benchlore.schedules.air;
