package benchlore.schedules.material;

/** What a finish is made of, in the trade's words. Compatibility is decided between families. */
public enum FinishFamily {
  /** Dewaxed flakes dissolved in alcohol: the usual barrier. */
  SHELLAC,
  /** Shellac that still holds its wax: most finishes peel from it. */
  WAXED_SHELLAC,
  /** Cellulose nitrate lacquer: dries by solvent alone, redissolves. */
  NITROCELLULOSE_LACQUER,
  /** Lacquer cured by an acid catalyst; short life once mixed. */
  CATALYSED_LACQUER,
  /** Varnish of alkyd resin and drying oil. */
  ALKYD_VARNISH,
  /** Polyurethane modified with drying oil. */
  OIL_POLYURETHANE,
  /** Soft, oil-rich outdoor varnish. */
  SPAR_VARNISH,
  /** Clear acrylic carried in water. */
  WATERBORNE_ACRYLIC,
  /** Clear polyurethane carried in water. */
  WATERBORNE_POLYURETHANE,
  /** Polyurethane of two parts; the hardener holds isocyanate. */
  TWO_PART_POLYURETHANE,
  /** Two-part epoxy. */
  EPOXY,
  /** Linseed, tung and other drying oils, unmixed. */
  DRYING_OIL,
  /** Oil and varnish mixed thin, wiped on and off. */
  OIL_VARNISH_BLEND,
  /** Oil with hard wax. */
  HARDWAX_OIL,
  /** Paste or liquid wax. */
  WAX,
  /** Pigment or dye in an oil binder. */
  OIL_STAIN,
  /** Thick oil stain. */
  GEL_STAIN,
  /** Dye dissolved in water. */
  WATER_DYE,
  /** Dye dissolved in alcohol. */
  SPIRIT_DYE,
  /** Paste that fills open pores. */
  GRAIN_FILLER,
  /** Easily sanded first coat. */
  SANDING_SEALER,
  /** Oil or alkyd paint. */
  PAINT_OIL,
  /** Paint carried in water. */
  PAINT_WATERBORNE
}
