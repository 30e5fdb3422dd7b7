package benchlore.generator.cli;

import benchlore.schedules.air.MixtureLimit;
import benchlore.schedules.air.SteadyState;
import benchlore.schedules.coating.Thinning;
import benchlore.schedules.cutting.RimSpeed;
import benchlore.schedules.movement.Movement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** A sum of the trade that {@code benchlore reckon} does: what it asks for and what it gives. */
@SuppressWarnings("ImmutableEnumChecker") // lists from List.of and rules without state
enum Sum {
  /** Wet film from dry film. */
  WET_FILM(
      "µm wet",
      a -> Thinning.wetFilmMicron(a.get(0), a.get(1), a.get(2)),
      "dry film, µm",
      "solids by volume, %",
      "volumes of thinner to one of finish, 0 for none"),
  /** Solids after thinning. */
  THINNED_SOLIDS(
      "% solids by volume",
      a -> Thinning.solidsPercent(a.get(0), a.get(1)),
      "solids by volume, %",
      "volumes of thinner to one of finish"),
  /** Thinner for wanted solids. */
  THINNER(
      "volumes of thinner to one of finish",
      a -> Thinning.thinner(a.get(0), a.get(1)),
      "solids by volume, %",
      "solids wanted, %"),
  /** Turning speed from rim speed. */
  RPM(
      "rpm",
      a -> RimSpeed.rpm(a.get(0) / 1000, a.get(1)),
      "diameter of the cutter, mm",
      "speed of its edge, m/s"),
  /** Rim speed from turning speed. */
  RIM_SPEED(
      "m/s at the edge",
      a -> RimSpeed.metrePerSecond(a.get(0) / 1000, a.get(1)),
      "diameter of the cutter, mm",
      "rpm"),
  /** Concentration a steady release comes to. */
  STEADY_AIR(
      "mg/m3",
      a -> SteadyState.kilogramPerCubicMetre(a.get(0), a.get(1), a.get(2)) * 1e3,
      "release, g/h",
      "outdoor air, m3/h",
      "mixing factor, 1 for a well stirred room to 10"),
  /** Air for a steady release. */
  AIR_FOR(
      "m3/h of outdoor air",
      a -> SteadyState.cubicMetrePerSecond(a.get(0), a.get(1) / 1e3, a.get(2)),
      "release, g/h",
      "concentration to keep to, mg/m3",
      "mixing factor, 1 for a well stirred room to 10"),
  /** Vapours added up against their limits. */
  MIXTURE(
      "of the limit; above 1 is too much",
      a -> MixtureLimit.index(pairs(a)),
      "pairs of concentration and limit, in one unit, such as 500 1000 45 200"),
  /** The limit of what evaporates from a liquid. */
  MIXTURE_LIMIT(
      "in the unit of the limits, mass a volume",
      a -> MixtureLimit.ofLiquid(pairs(a)),
      "pairs of share by mass, adding up to 1, and limit, such as 0.5 1640 0.5 170"),
  /** Movement by the handbook's two forms. */
  MOVEMENT(
      "mm, swelling if above 0",
      a ->
          Movement.acrossMetre(
              a.get(0), Movement.coefficientFromShrinkage(a.get(1)), a.get(2), a.get(3)),
      "width, mm",
      "shrinkage green to dry, %",
      "moisture now, %",
      "moisture then, %"),
  /** Movement from green dimensions. */
  MOVEMENT_FROM_GREEN(
      "mm, swelling if above 0",
      a -> Movement.changeByShrinkageMetre(a.get(0), a.get(1), a.get(2), a.get(3)),
      "width, mm",
      "shrinkage green to dry, %",
      "moisture now, %",
      "moisture then, %");

  private final String gives;
  private final ToDoubleFunction<List<Double>> rule;
  private final List<String> asks;

  Sum(String gives, ToDoubleFunction<List<Double>> rule, String... asks) {
    this.gives = gives;
    this.rule = rule;
    this.asks = List.of(asks);
  }

  /** Its word on the command line. */
  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What the figure it gives is. */
  String gives() {
    return gives;
  }

  /** What it asks for, in order. */
  List<String> asks() {
    return asks;
  }

  /** Whether so many figures are what it asks for. */
  boolean takes(int figures) {
    boolean pairs = this == MIXTURE || this == MIXTURE_LIMIT;
    return pairs ? figures >= 2 && figures % 2 == 0 : figures == asks.size();
  }

  /** The figure; NaN where the rule does not hold for what is given. */
  double of(List<Double> figures) {
    return rule.applyAsDouble(figures);
  }

  private static List<MixtureLimit.Part> pairs(List<Double> figures) {
    List<MixtureLimit.Part> parts = new ArrayList<>();
    for (int i = 0; i + 1 < figures.size(); i += 2) {
      parts.add(new MixtureLimit.Part(figures.get(i), figures.get(i + 1)));
    }
    return parts;
  }
}
