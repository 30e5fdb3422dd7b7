package benchlore.schedules.compatibility;

import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.material.Finish;

/**
 * What may go over what.
 *
 * @param upper the finish to put on
 * @param under the coat already there, and when and where it was put on
 * @param rules the table's rows; several for one pair are allowed, the strictest decides
 */
public record OverRequest(Finish upper, DryingRequest under, Rules<OverReason> rules) {
  /** Refuses nulls. */
  public OverRequest {
    if (upper == null || under == null || rules == null) {
      throw new NullPointerException("upper, under and rules");
    }
  }
}
