package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;

/** How shiny a film is, dullest first. */
public enum Sheen {
  /** Hardly any reflection. */
  MATT,
  /** Soft reflection. */
  SATIN,
  /** Clear but not sharp reflection. */
  SEMI_GLOSS,
  /** Sharp reflection. */
  GLOSS;

  /** What a film of this sheen reads at 60 degrees. */
  public SourcedRange glossUnits() {
    return SheenLevels.of(this);
  }
}
