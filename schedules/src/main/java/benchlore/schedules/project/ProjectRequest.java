package benchlore.schedules.project;

import benchlore.schedules.movement.Seasons;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Objects;

/**
 * One project.
 *
 * @param start not before this moment
 * @param parts at least one
 * @param materials wood, adhesive, finishes and how they go on
 * @param shop where
 * @param place the year the finished parts will see
 * @param settled whether the boards have already lain in the shop long enough
 * @param moisturePercent of the boards by meter, 3 to 25
 * @param progress what is done already
 */
public record ProjectRequest(
    Moment start,
    List<Part> parts,
    Materials materials,
    Shop shop,
    Seasons place,
    boolean settled,
    double moisturePercent,
    Progress progress) {
  /** Copies the list; refuses nulls. */
  public ProjectRequest {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(materials, "materials");
    Objects.requireNonNull(shop, "shop");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(progress, "progress");
    parts = List.copyOf(parts);
  }

  /** A project not begun. */
  public ProjectRequest(
      Moment start,
      List<Part> parts,
      Materials materials,
      Shop shop,
      Seasons place,
      boolean settled,
      double moisturePercent) {
    this(start, parts, materials, shop, place, settled, moisturePercent, Progress.NONE);
  }

  /** The same project with this much done. */
  public ProjectRequest with(Progress done) {
    return new ProjectRequest(start, parts, materials, shop, place, settled, moisturePercent, done);
  }
}
