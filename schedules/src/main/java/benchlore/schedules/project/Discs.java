package benchlore.schedules.project;

import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.SandingPass;
import java.util.ArrayList;
import java.util.List;

/** The paper of a whole project: the wear of each grade over all parts, rounded up once. */
final class Discs {
  private final List<Grit> shelf;
  private final List<Used> used = new ArrayList<>();

  /** What is used of one grade. */
  private record Used(Grit grit, double share, boolean betweenCoats) {}

  Discs(List<Grit> shelf) {
    this.shelf = shelf;
  }

  /** A pass over bare wood. */
  void count(SandingPass pass) {
    count(new Used(pass.grit(), pass.discShare(), false));
  }

  /** A light pass over the film, so many times. */
  void countBetweenCoats(SandingPass pass, int times) {
    count(new Used(pass.grit(), pass.discShare() * times, true));
  }

  private void count(Used more) {
    for (int i = 0; i < used.size(); i++) {
      Used there = used.get(i);
      if (there.grit().equals(more.grit())) {
        boolean between = there.betweenCoats() || more.betweenCoats();
        used.set(i, new Used(there.grit(), there.share() + more.share(), between));
        return;
      }
    }
    used.add(more);
  }

  /** What to have ready, coarse before fine, and what of it is not on the shelf. */
  List<Purchase> purchases() {
    used.sort((a, b) -> Double.compare(b.grit().micron(), a.grit().micron()));
    List<Purchase> purchases = new ArrayList<>();
    for (Used one : used) {
      String remark =
          one.betweenCoats()
              ? "discs or sheets, all parts, between coats too"
              : "discs or sheets, all parts";
      purchases.add(
          new Purchase(
              Purchase.Item.abrasive(one.grit()),
              one.grit().label(),
              "",
              Quantity.of(Math.max(1, Numeric.ceil(one.share())), Unit.COUNT),
              shelf.contains(one.grit()) ? remark : remark + "; not on the shelf yet"));
    }
    return purchases;
  }
}
