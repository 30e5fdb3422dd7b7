package benchlore.generator.content;

import benchlore.schedules.quantity.Unit;
import java.util.Map;

/** The units a content file may use and what one of each is in the engine's unit. */
final class Units {
  /**
   * A written unit.
   *
   * @param unit the engine's unit
   * @param factor engine units in one of it
   */
  record Written(Unit unit, double factor) {}

  // Exact by definition: inch, pound-force (0.45359237 x 9.80665), psi, mmHg (conventional).
  private static final Map<String, Written> ALL =
      Map.ofEntries(
          Map.entry("m", new Written(Unit.METRE, 1)),
          Map.entry("mm", new Written(Unit.METRE, 1e-3)),
          Map.entry("in", new Written(Unit.METRE, 0.0254)),
          Map.entry("µm", new Written(Unit.MICRON, 1)),
          Map.entry("mil", new Written(Unit.MICRON, 25.4)),
          Map.entry("s", new Written(Unit.SECOND, 1)),
          Map.entry("min", new Written(Unit.SECOND, 60)),
          Map.entry("h", new Written(Unit.SECOND, 3_600)),
          Map.entry("d", new Written(Unit.SECOND, 86_400)),
          Map.entry("weeks", new Written(Unit.SECOND, 604_800)),
          Map.entry("°C", new Written(Unit.CELSIUS, 1)),
          Map.entry("%", new Written(Unit.PERCENT, 1)),
          Map.entry("ratio", new Written(Unit.RATIO, 1)),
          Map.entry("count", new Written(Unit.COUNT, 1)),
          Map.entry("°", new Written(Unit.DEGREE, 1)),
          Map.entry("N", new Written(Unit.NEWTON, 1)),
          Map.entry("lbf", new Written(Unit.NEWTON, 4.4482216152605)),
          Map.entry("Pa", new Written(Unit.PASCAL, 1)),
          Map.entry("kPa", new Written(Unit.PASCAL, 1e3)),
          Map.entry("MPa", new Written(Unit.PASCAL, 1e6)),
          Map.entry("psi", new Written(Unit.PASCAL, 6_894.757293168)),
          Map.entry("mmHg", new Written(Unit.PASCAL, 133.322387415)),
          Map.entry("kg", new Written(Unit.KILOGRAM, 1)),
          Map.entry("g", new Written(Unit.KILOGRAM, 1e-3)),
          Map.entry("kg/m3", new Written(Unit.KILOGRAM_PER_CUBIC_METRE, 1)),
          Map.entry("kg/L", new Written(Unit.KILOGRAM_PER_CUBIC_METRE, 1e3)),
          Map.entry("g/mL", new Written(Unit.KILOGRAM_PER_CUBIC_METRE, 1e3)),
          Map.entry("g/L", new Written(Unit.KILOGRAM_PER_CUBIC_METRE, 1)),
          Map.entry("g/m2", new Written(Unit.KILOGRAM_PER_SQUARE_METRE, 1e-3)),
          Map.entry("g/mol", new Written(Unit.KILOGRAM_PER_MOLE, 1e-3)),
          Map.entry("ppm", new Written(Unit.PPM, 1)),
          Map.entry("mg/m3", new Written(Unit.AIRBORNE_KILOGRAM_PER_CUBIC_METRE, 1e-6)),
          Map.entry("per-%", new Written(Unit.PER_PERCENT_MOISTURE, 1)),
          Map.entry("P", new Written(Unit.COUNT, 1)),
          Map.entry("GU", new Written(Unit.GLOSS_UNIT, 1)),
          Map.entry("rpm", new Written(Unit.RPM, 1)),
          Map.entry("L", new Written(Unit.CUBIC_METRE_LIQUID, 1e-3)),
          Map.entry("mL", new Written(Unit.CUBIC_METRE_LIQUID, 1e-6)),
          Map.entry("m3/h", new Written(Unit.CUBIC_METRE_PER_SECOND, 1 / 3_600.0)),
          Map.entry("m2", new Written(Unit.SQUARE_METRE, 1)),
          Map.entry("m3", new Written(Unit.CUBIC_METRE, 1)),
          Map.entry("per-hour", new Written(Unit.PER_HOUR, 1)),
          Map.entry("m/s", new Written(Unit.METRE_PER_SECOND, 1)));

  private Units() {}

  /** What a written unit means; the schema has already refused every other word. */
  static Written of(String unit) {
    Written written = ALL.get(unit);
    if (written == null) {
      throw new IllegalArgumentException("unit without a meaning: " + unit);
    }
    return written;
  }

  static boolean known(String unit) {
    return ALL.containsKey(unit);
  }
}
