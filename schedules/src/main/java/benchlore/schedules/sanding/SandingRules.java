package benchlore.schedules.sanding;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Unit;

/** Constants of the sanding rules, one a row, each with where it comes from. */
final class SandingRules {
  private static final Provenance UNPUBLISHED =
      Provenance.fromMemory("no published removal rate found; set so that starts match the guides");

  /** Depth of the scratches a grade leaves in wood, as a share of its grain size. */
  static final Datum SCRATCH_SHARE =
      Datum.of(0.25, Unit.RATIO, Provenance.fromMemory("scratch about a quarter of the grain"));

  /** The same in a hard, cured film. */
  static final Datum FILM_SCRATCH_SHARE =
      Datum.of(0.1, Unit.RATIO, Provenance.fromMemory("a hard film scratches less deep than wood"));

  /** Grain size the tools' removal figures are for: P80. */
  static final double REFERENCE_MICRON = 201;

  /** How removal falls with grain size: removal goes as grain to this power. */
  static final Datum GRAIN_POWER = Datum.of(1.3, Unit.RATIO, UNPUBLISHED);

  /** Side hardness the tools' removal figures are for, about black cherry. */
  static final Datum REFERENCE_HARDNESS = Datum.of(4400, Unit.NEWTON, UNPUBLISHED);

  /** How removal falls with hardness: removal goes as hardness to minus this power. */
  static final Datum HARDNESS_POWER =
      Datum.of(
          0.5,
          Unit.RATIO,
          Provenance.fromMemory("mass removed about alike, so depth as 1/density"));

  /** Time to change discs, wipe the work clean and look at it in raking light, for each grade. */
  static final Datum GRADE_CHANGE =
      Datum.of(90, Unit.SECOND, Provenance.commonPractice("clean and inspect between grades"));

  /** Time to put on a fresh disc of the same grade. */
  static final Datum DISC_CHANGE =
      Datum.of(20, Unit.SECOND, Provenance.commonPractice("hook-and-loop disc"));

  /** Share of the usual disc life left in resinous wood or on old film. */
  static final Datum CLOGGED_LIFE =
      Datum.of(0.5, Unit.RATIO, Provenance.fromMemory("resin and film clog the paper"));

  /** Sound wood that takes as long to sand as the same thickness of old film. */
  static final Datum FILM_AS_WOOD =
      Datum.of(2, Unit.RATIO, Provenance.fromMemory("film clogs the paper and cuts slower"));

  /** Time for end grain against the same area of face grain. */
  static final Datum END_GRAIN_FACTOR =
      Datum.of(2, Unit.RATIO, Provenance.fromMemory("end grain cuts slower"));

  /** Share of a covering pass that a light scuff or knock-off takes. */
  static final Datum LIGHT_SHARE =
      Datum.of(0.5, Unit.RATIO, Provenance.commonPractice("a light pass, only to dull or de-fuzz"));

  /** Depth a light scuff takes off a film. */
  static final Datum SCUFF_MICRON =
      Datum.of(3, Unit.MICRON, Provenance.fromMemory("dulls the film, no more"));

  /** Density of cured film, for its dust. */
  static final Datum FILM_DENSITY =
      Datum.of(1200, Unit.KILOGRAM_PER_CUBIC_METRE, Provenance.fromMemory("cured clear film"));

  /** Side hardness below which wood counts as soft: sugar pine and basswood lie below it. */
  static final Datum SOFT_BELOW =
      Datum.of(2500, Unit.NEWTON, Provenance.commonPractice("soft wood shows every scratch"));

  /** A first pass that takes longer than this wants a coarser grade before it. */
  static final Datum LONG_PASS =
      Datum.of(900, Unit.SECOND_PER_SQUARE_METRE, Provenance.commonPractice("a quarter hour a m2"));

  /** Depth above which a plane, jointer or scraper is the right tool and sanding is not. */
  static final Datum PLANE_ABOVE =
      Datum.of(400, Unit.MICRON, Provenance.commonPractice("plane or scrape, then sand"));

  /** Knife marks for a finished face: twenty or more an inch. */
  static final Datum KNIFE_PITCH =
      Datum.of(
          0.00127,
          Unit.METRE,
          Provenance.source("Knife marks per inch (wood-industry magazine)", "20 or more an inch"));

  /** Pace of a random-orbit sander. */
  static final Provenance PACE =
      Provenance.source(
          "What are the different uses for an orbital sander?", "about one inch a second");

  /** Why the jump between grades is limited. */
  static final Provenance JUMP =
      Provenance.source(
          "What are the different uses for an orbital sander?",
          "avoid skipping more than one grit size");

  private SandingRules() {}
}
