package benchlore.schedules.air;

import benchlore.schedules.material.Solvent;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Optional;

/** Solvents for tests, from the table of published figures. */
final class Solvents {
  private static final double PASCAL_A_MILLIMETRE = 133.322;
  private static final double REL_NAPHTHAS_KILOGRAM = 350e-6;

  private Solvents() {}

  static Solvent of(String name) {
    Published.Row row =
        Published.rows("solvents.csv")
            .filter(r -> r.text("name").equals(name) && r.text("status").equals("seen"))
            .findFirst()
            .orElseThrow();
    return from(row);
  }

  private static Solvent from(Published.Row row) {
    String name = row.text("name");
    Optional<SourcedRange> niosh = range(row, "NIOSH_REL_ppm", Unit.PPM, 1);
    SourcedRange mass = range(row, "molecular_weight", Unit.KILOGRAM_PER_MOLE, 1e-3).orElseThrow();
    if (name.contains("Stoddard") || name.contains("naphtha")) {
      double ppm = Vapour.ppm(REL_NAPHTHAS_KILOGRAM, mass.high(), 25);
      niosh = Optional.of(SourcedRange.of(ppm, Unit.PPM, source(row)));
    }
    return new Solvent(
        name.equals("methylene chloride") ? "methylene-chloride" : name,
        mass,
        range(row, "specific_gravity", Unit.KILOGRAM_PER_CUBIC_METRE, 1000)
            .orElse(SourcedRange.of(780, Unit.KILOGRAM_PER_CUBIC_METRE, Provenance.fromMemory(""))),
        new Solvent.Volatility(
            range(row, "boiling_point_C", Unit.CELSIUS, 1),
            range(row, "vapor_pressure_mmHg_20C", Unit.PASCAL, PASCAL_A_MILLIMETRE),
            Optional.empty()),
        new Solvent.Fire(
            range(row, "flash_point_C", Unit.CELSIUS, 1),
            range(row, "LEL_pct", Unit.PERCENT, 1),
            range(row, "UEL_pct", Unit.PERCENT, 1)),
        new Solvent.Exposure(
            range(row, "OSHA_PEL_ppm", Unit.PPM, 1),
            niosh,
            Optional.empty(),
            Optional.empty(),
            range(row, "IDLH_ppm", Unit.PPM, 1)),
        name.equals("methylene chloride"));
  }

  private static Provenance source(Published.Row row) {
    return Provenance.source(row.text("source"), "");
  }

  private static Optional<SourcedRange> range(
      Published.Row row, String column, Unit unit, double factor) {
    String text = row.text(column).replace(" to ", "~").replaceAll("(?<=[0-9])-(?=[0-9])", "~");
    if (!text.matches("-?[0-9.]+(~-?[0-9.]+)?")) {
      return Optional.empty();
    }
    String[] ends = text.split("~", -1);
    double low = Double.parseDouble(ends[0]) * factor;
    double high = Double.parseDouble(ends[ends.length - 1]) * factor;
    return Optional.of(SourcedRange.range(low, high, unit, source(row)));
  }

  /** A made-up solvent with chosen limits; empty where zero is given. */
  static Solvent invented(String id, double gramPerMole, double limitPpm, double lowerPercent) {
    Provenance from = Provenance.input();
    return new Solvent(
        id,
        SourcedRange.of(gramPerMole / 1000, Unit.KILOGRAM_PER_MOLE, from),
        SourcedRange.of(800, Unit.KILOGRAM_PER_CUBIC_METRE, from),
        new Solvent.Volatility(Optional.empty(), Optional.empty(), Optional.empty()),
        new Solvent.Fire(Optional.empty(), when(lowerPercent, Unit.PERCENT), Optional.empty()),
        new Solvent.Exposure(
            when(limitPpm, Unit.PPM),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        false);
  }

  private static Optional<SourcedRange> when(double value, Unit unit) {
    return value > 0
        ? Optional.of(SourcedRange.of(value, unit, Provenance.input()))
        : Optional.empty();
  }
}
