package benchlore.schedules.project;

import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.sanding.Grit;
import java.util.Objects;
import java.util.Optional;

/**
 * Something to have ready.
 *
 * @param item which thing; who knows its name in this shop puts that for {@code what}
 * @param what in the trade's words: "adhesive", "finish", "P120"
 * @param detail which of its kind: "gloss"; may be empty
 * @param amount how much, losses included
 * @param remark what for, or what to look for; may be empty
 */
public record Purchase(Item item, String what, String detail, Quantity amount, String remark) {
  /** The kinds of thing a plan uses up. */
  public enum Kind {
    /** A finish of the plan, called by its title. */
    FINISH,
    /** The plan's adhesive. */
    ADHESIVE,
    /** Discs or sheets of one grade. */
    ABRASIVE
  }

  /**
   * A thing to buy.
   *
   * @param kind what it is
   * @param sheen the sheen of a finish sold in several; else empty
   * @param grit the grade of an abrasive; else empty
   */
  public record Item(Kind kind, Optional<Sheen> sheen, Optional<Grit> grit) {
    /** Refuses nulls, and an abrasive without its grade or a grade without an abrasive. */
    public Item {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(sheen, "sheen");
      Objects.requireNonNull(grit, "grit");
      if (grit.isPresent() != (kind == Kind.ABRASIVE)) {
        throw new ComponentException("grit", "must be that of an abrasive");
      }
    }

    static Item of(Kind kind) {
      return new Item(kind, Optional.empty(), Optional.empty());
    }

    static Item abrasive(Grit grit) {
      return new Item(Kind.ABRASIVE, Optional.empty(), Optional.of(grit));
    }
  }

  /** Refuses nulls. */
  public Purchase {
    Objects.requireNonNull(item, "item");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(detail, "detail");
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(remark, "remark");
  }

  /** A thing there is only one of in a plan. */
  static Purchase of(Kind kind, String what, Quantity amount, String remark) {
    return new Purchase(Item.of(kind), what, "", amount, remark);
  }

  /** Its name and which of its kind. */
  public String words() {
    return named(what);
  }

  /** This name instead of its own, and which of its kind. */
  public String named(String name) {
    return detail.isEmpty() ? name : name + ", " + detail;
  }
}
