package benchlore.schedules.project;

import benchlore.schedules.compatibility.OverRow;
import benchlore.schedules.material.FinishFamily;
import java.util.List;
import java.util.Objects;

/**
 * What the tables of what goes with what say of a project.
 *
 * @param glue the adhesive in its use and on its wood
 * @param finishes each finish where the parts will live, in the order of the layers; empty where no
 *     table was asked
 * @param over rows of what may go over what
 * @param barriers what a family is called in this shop, to offer it by name
 */
public record Suits(
    List<Pairing> glue, List<Pairing> finishes, List<OverRow> over, List<Barrier> barriers) {
  /** No table was asked. */
  public static final Suits NONE = new Suits(List.of(), List.of(), List.of(), List.of());

  /**
   * A finish that can be put between two others.
   *
   * @param family what it is made of
   * @param title what it is called in this shop
   */
  public record Barrier(FinishFamily family, String title) {
    /** Refuses nulls. */
    public Barrier {
      Objects.requireNonNull(family, "family");
      Objects.requireNonNull(title, "title");
    }
  }

  /** Copies the lists. */
  public Suits {
    glue = List.copyOf(glue);
    finishes = List.copyOf(finishes);
    over = List.copyOf(over);
    barriers = List.copyOf(barriers);
  }

  /** What a family is called; "another finish" where no record of it can be put on. */
  String named(FinishFamily family) {
    for (Barrier barrier : barriers) {
      if (barrier.family() == family) {
        return barrier.title();
      }
    }
    return "another finish";
  }
}
