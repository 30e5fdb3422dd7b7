package benchlore.schedules.glueup;

import benchlore.schedules.answer.Message;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.LeastHeat;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What would do where it is too cold to glue, each found by trying: another hour of the day, heat
 * until the clamps come off at the least degrees and hours that pass, a warm room. Each says how
 * long the clamps then stay on.
 */
final class GlueWays {
  private static final double ROOM_CELSIUS = 20;
  private static final double ROOM_HUMIDITY = 50;

  private final GlueUpRequest request;
  private final double minimum;

  private GlueWays(GlueUpRequest request) {
    this.request = request;
    this.minimum = request.adhesive().air().minimumTemperature().high();
  }

  /** The ways that pass, cheapest first; empty if nothing tried would do. */
  static List<Message> of(GlueUpRequest request) {
    GlueWays ways = new GlueWays(request);
    List<Message> found = new ArrayList<>();
    ways.otherHour().ifPresent(found::add);
    ways.heat().ifPresent(found::add);
    ways.room().ifPresent(found::add);
    return found;
  }

  private Optional<Message> otherHour() {
    for (int hour = 1; hour <= 24; hour++) {
      OptionalDouble clamped = warm(request.climate(), request.start().plusHours(hour));
      if (clamped.isPresent()) {
        return Optional.of(
            Message.of(
                "Begin {0} later: by this room's curve it then stays warm enough until the clamps"
                    + " come off, {1} on.",
                Quantity.of(hour * 3600.0, Unit.SECOND),
                Quantity.of(clamped.getAsDouble(), Unit.SECOND)));
      }
    }
    return Optional.empty();
  }

  private Optional<Message> heat() {
    int from = request.start().startOfHour().secondOfDay() / 3600;
    return LeastHeat.of(
            request.climate(),
            from,
            minimum,
            (heated, celsius) -> {
              OptionalDouble clamped =
                  allowed(celsius) ? warm(heated, request.start()) : OptionalDouble.empty();
              return clamped.isPresent()
                  ? Optional.of(clamped.getAsDouble())
                  : Optional.<Double>empty();
            })
        .map(heat -> heated(heat.hours(), heat.celsius(), heat.outcome()));
  }

  private static Message heated(int hours, double celsius, double clamped) {
    return Message.of(
        "Heat room, wood and adhesive to {0}, from before you spread and for {1}: clamps off {2}"
            + " after they are tight.",
        Quantity.of(celsius, Unit.CELSIUS),
        Quantity.of(hours * 3600.0, Unit.SECOND),
        Quantity.of(clamped, Unit.SECOND));
  }

  private Optional<Message> room() {
    double celsius = Math.max(ROOM_CELSIUS, Numeric.ceil(minimum) + 1.0);
    OptionalDouble clamped =
        allowed(celsius)
            ? warm(Climate.steady(celsius, ROOM_HUMIDITY), request.start())
            : OptionalDouble.empty();
    return clamped.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Message.of(
                "Carry it into a room held at {0}: clamps off {1} after they are tight.",
                Quantity.of(celsius, Unit.CELSIUS),
                Quantity.of(clamped.getAsDouble(), Unit.SECOND)));
  }

  private boolean allowed(double celsius) {
    Adhesive adhesive = request.adhesive();
    return adhesive.air().maximumTemperature().map(most -> celsius <= most.low()).orElse(true);
  }

  /** Seconds in clamps, if the air keeps to the minimum from the first glue until they are off. */
  private OptionalDouble warm(Climate climate, Moment start) {
    GlueUpRequest tried = request.with(climate);
    double assembly = BatchLimits.at(tried, start).assembly().totalSecond();
    OptionalDouble clamped =
        Milestones.clampSeconds(tried, start.plusSeconds(Numeric.ceil(assembly)));
    if (clamped.isEmpty()) {
      return clamped;
    }
    double seconds = clamped.getAsDouble() + assembly;
    return AirExtremes.coldestCelsius(climate, start, seconds) >= minimum
        ? clamped
        : OptionalDouble.empty();
  }
}
