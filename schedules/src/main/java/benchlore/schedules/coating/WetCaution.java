package benchlore.schedules.coating;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.caution.CautionRow;
import benchlore.schedules.caution.CoatingRows;
import benchlore.schedules.quantity.Quantity;
import java.util.List;

/** The caution of a passed limit: what happens, when, and what to change. */
final class WetCaution {
  private WetCaution() {}

  static Caution of(PassedLimit breach, DryingRequest request, String better) {
    Quantity worst = Quantity.of(breach.worst(), breach.limit().unit());
    Quantity bound = Quantity.of(breach.limit().bound(request.finish()), breach.limit().unit());
    boolean measured = breach.limit() != WetLimit.BLUSH;
    return row(breach.limit())
        .with("when", MomentWords.of(breach.first(), request.start()))
        .with("instead", better.isEmpty() ? "" : better + ". Otherwise: ")
        .caution(List.of(worst, bound), measured ? List.of(bound) : List.of());
  }

  private static CautionRow row(WetLimit limit) {
    return switch (limit) {
      case COLD -> CoatingRows.COLD_WHILE_WET;
      case HOT -> CoatingRows.HOT_WHILE_WET;
      case DAMP -> CoatingRows.DAMP_WHILE_WET;
      case DRY -> CoatingRows.DRY_WHILE_WET;
      case DEW -> CoatingRows.DEW_WHILE_WET;
      case BLUSH -> CoatingRows.BLUSH;
    };
  }
}
