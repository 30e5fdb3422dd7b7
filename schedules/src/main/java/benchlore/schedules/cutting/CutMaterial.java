package benchlore.schedules.cutting;

/** What is cut, as chip-load tables class it. */
public enum CutMaterial {
  /** Conifers: pine, fir, cedar. */
  SOFTWOOD,
  /** Broadleaf trees: oak, ash, cherry, sapele. */
  HARDWOOD,
  /** Medium-density fibreboard and particle board. */
  MDF,
  /** Plywood. */
  PLYWOOD
}
