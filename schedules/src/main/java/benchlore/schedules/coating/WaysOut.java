package benchlore.schedules.coating;

import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.LeastHeat;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What would do where a coat finds no air to go on in, each found by trying: other hours, heat for
 * part of the day at the least degrees that pass, a warm room. Each says when the last coat is on.
 */
final class WaysOut {
  private static final double ROOM_CELSIUS = 20;
  private static final double ROOM_HUMIDITY = 50;

  private final CoatingRequest request;

  private WaysOut(CoatingRequest request) {
    this.request = request;
  }

  /**
   * The ways that pass.
   *
   * @param request the job, from the moment it is looked for
   * @return cheapest first; empty if nothing tried would do
   */
  static List<Message> of(CoatingRequest request) {
    WaysOut ways = new WaysOut(request);
    List<Message> found = new ArrayList<>();
    ways.otherHours().ifPresent(found::add);
    ways.heat().ifPresent(found::add);
    ways.room().ifPresent(found::add);
    return found;
  }

  private Optional<Message> otherHours() {
    CoatSessions sessions = request.sessions();
    CoatingRequest always =
        request.with(new CoatSessions(ShopWeek.ALWAYS, sessions.scuff(), sessions.coat()));
    return end(always)
        .map(
            chain ->
                Message.of("Be there when the air allows: first coat at " + ends(chain) + "."));
  }

  private Optional<Message> heat() {
    Optional<Moment> session = request.sessions().first(request.start(), false);
    if (session.isEmpty()) {
      return Optional.empty();
    }
    // The surface follows the air an hour late.
    int from = session.get().plusHours(-1).startOfHour().secondOfDay() / 3600;
    double minimum = request.quantity().finish().air().minimumTemperature().high();
    return LeastHeat.of(
            request.climate(),
            from,
            minimum,
            (heated, celsius) -> {
              CoatingRequest tried = request.with(heated);
              return passes(tried, session.get()) ? end(tried) : Optional.<CoatChain>empty();
            })
        .map(this::heated);
  }

  private Message heated(LeastHeat<CoatChain> heat) {
    return Message.of(
        "Heat room and work at {0} from "
            + clock(heat.fromHour())
            + " to "
            + clock(heat.toHour())
            + " every day until the last coat is dry, with a heater that has its own flue or none"
            + " to burn: first coat at "
            + ends(heat.outcome())
            + ".",
        Quantity.of(heat.celsius(), Unit.CELSIUS));
  }

  private Optional<Message> room() {
    double celsius =
        Math.max(ROOM_CELSIUS, request.quantity().finish().air().minimumTemperature().high() + 2);
    return end(request.with(Climate.steady(celsius, ROOM_HUMIDITY)))
        .map(
            chain ->
                Message.of(
                    "Carry the work into a room held at {0} and about {1} humidity: first coat at "
                        + ends(chain)
                        + ".",
                    Quantity.of(celsius, Unit.CELSIUS),
                    Quantity.of(ROOM_HUMIDITY, Unit.PERCENT)));
  }

  private static boolean passes(CoatingRequest heated, Moment session) {
    DryingRequest coat = heated.coat(session);
    return Drying.wetTimes(coat).filter(times -> WetHours.passable(coat, times)).isPresent();
  }

  private static Optional<CoatChain> end(CoatingRequest tried) {
    return CoatChain.first(tried, tried.start()).flatMap(first -> CoatChain.from(tried, first));
  }

  private String ends(CoatChain chain) {
    String first = MomentWords.of(chain.first(), request.start());
    return chain.first().equals(chain.last())
        ? first
        : first + ", the last one at " + MomentWords.of(chain.last(), request.start());
  }

  private static String clock(int hour) {
    return (hour < 10 ? "0" : "") + hour + ":00";
  }
}
