package benchlore.schedules.sanding;

import java.util.Objects;

/**
 * A sanding question.
 *
 * @param start the surface now
 * @param wood the wood
 * @param area how much of it
 * @param wanted what the finish asks for
 * @param shop what is to hand
 */
public record SandingRequest(
    StartSurface start,
    SandingWood wood,
    SandingArea area,
    SurfaceWanted wanted,
    SandingShop shop) {
  /** Refuses nulls; figures are checked by the plan. */
  public SandingRequest {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(wood, "wood");
    Objects.requireNonNull(area, "area");
    Objects.requireNonNull(wanted, "wanted");
    Objects.requireNonNull(shop, "shop");
  }

  /** The same question from another start surface. */
  public SandingRequest withStart(StartSurface other) {
    return new SandingRequest(other, wood, area, wanted, shop);
  }

  /** The same question in another shop. */
  public SandingRequest withShop(SandingShop other) {
    return new SandingRequest(start, wood, area, wanted, other);
  }
}
