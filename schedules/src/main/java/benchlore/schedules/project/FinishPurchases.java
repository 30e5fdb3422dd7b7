package benchlore.schedules.project;

import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.CoatingSchedule;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is bought of one finish: a tin a sheen, for all coats that take it. */
final class FinishPurchases {
  private FinishPurchases() {}

  static List<Purchase> of(Layer layer, CoatingSchedule coats) {
    List<Purchase> purchases = new ArrayList<>();
    int count = coats.coats().size();
    double one = coats.liquid().value() / count;
    List<Optional<Sheen>> told = new ArrayList<>();
    for (CoatStep coat : coats.coats()) {
      if (told.contains(coat.sheen())) {
        continue;
      }
      told.add(coat.sheen());
      int same = 0;
      for (CoatStep other : coats.coats()) {
        same = other.sheen().equals(coat.sheen()) ? same + 1 : same;
      }
      purchases.add(
          new Purchase(
              new Purchase.Item(Purchase.Kind.FINISH, coat.sheen(), Optional.empty()),
              layer.title(),
              coat.sheen().map(SheenWords::of).orElse(""),
              Quantity.of(one * same, Unit.CUBIC_METRE_LIQUID),
              same == 1 ? "one coat" : same + " coats"));
    }
    return purchases;
  }
}
