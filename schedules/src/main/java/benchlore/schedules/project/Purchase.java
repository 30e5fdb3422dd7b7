package benchlore.schedules.project;

import benchlore.schedules.quantity.Quantity;

/**
 * Something to have ready.
 *
 * @param what in the trade's words, or the role it plays: "adhesive", "finish, gloss", "P120"
 * @param amount how much, losses included
 * @param remark what for, or what to look for; may be empty
 */
public record Purchase(String what, Quantity amount, String remark) {}
