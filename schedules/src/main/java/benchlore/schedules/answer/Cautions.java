package benchlore.schedules.answer;

import java.util.ArrayList;
import java.util.List;

/** Gathers cautions, the same one only once. */
public final class Cautions {
  private Cautions() {}

  /**
   * The first list with whatever the second adds: a caution whose code is already there is left
   * out.
   *
   * @param told already gathered
   * @param more to add
   * @return a new list
   */
  public static List<Caution> merged(List<Caution> told, List<Caution> more) {
    List<Caution> all = new ArrayList<>(told);
    for (Caution caution : more) {
      boolean known = false;
      for (Caution other : all) {
        known = known || other.code().equals(caution.code());
      }
      if (!known) {
        all.add(caution);
      }
    }
    return List.copyOf(all);
  }
}
