package benchlore.schedules.project;

import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.air.RoomAir;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.SandingShop;
import benchlore.schedules.time.ShopWeek;
import java.util.List;
import java.util.Objects;

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
 * @param habits what it does otherwise than the rules take
 */
public record Shop(
    ShopWeek week,
    Climate climate,
    RoomAir room,
    List<IgnitionSource> ignition,
    SandingShop sanding,
    GlueUpRequest.Clamps clamps,
    int people,
    Habits habits) {
  /** A shop that goes by the rules. */
  public Shop(
      ShopWeek week,
      Climate climate,
      RoomAir room,
      List<IgnitionSource> ignition,
      SandingShop sanding,
      GlueUpRequest.Clamps clamps,
      int people) {
    this(week, climate, room, ignition, sanding, clamps, people, Habits.USUAL);
  }

  /** Copies the list; refuses nulls. */
  public Shop {
    Objects.requireNonNull(week, "week");
    Objects.requireNonNull(climate, "climate");
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(sanding, "sanding");
    Objects.requireNonNull(clamps, "clamps");
    Objects.requireNonNull(habits, "habits");
    ignition = List.copyOf(ignition);
  }
}
