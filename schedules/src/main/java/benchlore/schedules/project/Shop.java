package benchlore.schedules.project;

import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.air.RoomAir;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.SandingShop;
import benchlore.schedules.time.ShopWeek;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The shop the work is done in.
 *
 * @param week when someone is there
 * @param climate its air over the day
 * @param room volume and ventilation while coating
 * @param ignition what in it can light a vapour
 * @param sanding grades on the shelf and tools
 * @param clamps clamps on the shelf
 * @param people who work there, 1 to 8
 * @param transfer share of a sprayed finish that lands on the work, by the shop's own measuring,
 *     0.05 to 1; empty: the usual one
 */
public record Shop(
    ShopWeek week,
    Climate climate,
    RoomAir room,
    List<IgnitionSource> ignition,
    SandingShop sanding,
    GlueUpRequest.Clamps clamps,
    int people,
    OptionalDouble transfer) {
  /** A shop that has not measured what lands. */
  public Shop(
      ShopWeek week,
      Climate climate,
      RoomAir room,
      List<IgnitionSource> ignition,
      SandingShop sanding,
      GlueUpRequest.Clamps clamps,
      int people) {
    this(week, climate, room, ignition, sanding, clamps, people, OptionalDouble.empty());
  }

  /** Copies the list; refuses nulls. */
  public Shop {
    Objects.requireNonNull(week, "week");
    Objects.requireNonNull(climate, "climate");
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(sanding, "sanding");
    Objects.requireNonNull(clamps, "clamps");
    Objects.requireNonNull(transfer, "transfer");
    ignition = List.copyOf(ignition);
  }
}
