package benchlore.schedules.sanding;

import benchlore.schedules.material.Sheen;
import java.util.Objects;

/**
 * A question about rubbing out a cured film.
 *
 * @param sheen the sheen wanted
 * @param filmMicron dry film there is, 5 to 2000
 * @param levelMicron depth of the nibs, brush marks or orange peel to level, 1 to 500; 5 to 20 is
 *     usual
 * @param areaSquareMetre 0.0001 to 1000
 * @param shop what is to hand
 */
public record RubOutRequest(
    Sheen sheen, double filmMicron, double levelMicron, double areaSquareMetre, SandingShop shop) {
  /** Refuses nulls; figures are checked by the plan. */
  public RubOutRequest {
    Objects.requireNonNull(sheen, "sheen");
    Objects.requireNonNull(shop, "shop");
  }
}
