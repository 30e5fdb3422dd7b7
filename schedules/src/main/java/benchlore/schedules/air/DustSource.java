package benchlore.schedules.air;

/** What is sanded. */
public enum DustSource {
  /** Bare wood. */
  BARE_WOOD,
  /** Wood known to cause asthma or rashes: western red cedar and other sensitisers. */
  SENSITISING_WOOD,
  /** A fully cured film of one's own. */
  CURED_FILM,
  /** A film of drying oil or oil varnish, whose dust heats itself. */
  OIL_FILM,
  /** An old coat of unknown age or make: may hold lead. Refused. */
  OLD_COAT_UNTESTED
}
