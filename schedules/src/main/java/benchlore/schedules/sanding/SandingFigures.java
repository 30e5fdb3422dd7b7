package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/** Constants of the sanding rules, one a row, each with where it comes from. */
final class SandingFigures {
  private static final Provenance UNPUBLISHED =
      Provenance.fromMemory("no published removal rate found; set so that starts match the guides");

  /** Depth of the scratches a grade leaves in wood, as a share of its grain size. */
  static final SourcedRange SCRATCH_SHARE =
      SourcedRange.of(
          0.25, Unit.RATIO, Provenance.fromMemory("scratch about a quarter of the grain"));

  /** The same in a hard, cured film. */
  static final SourcedRange FILM_SCRATCH_SHARE =
      SourcedRange.of(
          0.1, Unit.RATIO, Provenance.fromMemory("a hard film scratches less deep than wood"));

  /** Grain size the tools' removal figures are for: P80. */
  static final double REFERENCE_MICRON = 201;

  /** How removal falls with grain size: removal goes as grain to this power. */
  static final SourcedRange GRAIN_POWER = SourcedRange.of(1.3, Unit.RATIO, UNPUBLISHED);

  /** Side hardness the tools' removal figures are for, about black cherry. */
  static final SourcedRange REFERENCE_HARDNESS = SourcedRange.of(4400, Unit.NEWTON, UNPUBLISHED);

  /** How removal falls with hardness: removal goes as hardness to minus this power. */
  static final SourcedRange HARDNESS_POWER =
      SourcedRange.of(
          0.5,
          Unit.RATIO,
          Provenance.fromMemory("mass removed about alike, so depth as 1/density"));

  /** Time to change discs, wipe the work clean and look at it in raking light, for each grade. */
  static final SourcedRange GRADE_CHANGE =
      SourcedRange.of(
          90, Unit.SECOND, Provenance.commonPractice("clean and inspect between grades"));

  /** Time to take up, clamp and wipe one piece for one face and one grade. */
  static final SourcedRange HANDLING =
      SourcedRange.of(
          10, Unit.SECOND, Provenance.commonPractice("turn, clamp and wipe a piece by hand"));

  /** How often a piece is turned in one pass: two faces, and once for its edges. */
  static final int FACES = 3;

  /** Side hardness from which close-pored wood burnishes: hard maple, beech and birch. */
  static final SourcedRange DENSE_ABOVE =
      SourcedRange.of(
          5300, Unit.NEWTON, Provenance.commonPractice("dense close-pored wood burnishes"));

  /** Finest last grade where burnished wood would keep a finish out. */
  static final SourcedRange FINEST_ON_DENSE =
      SourcedRange.of(
          220, Unit.COUNT, Provenance.commonPractice("maple for oil or waterborne: P180 to P220"));

  /** Time to put on a fresh disc of the same grade. */
  static final SourcedRange DISC_CHANGE =
      SourcedRange.of(20, Unit.SECOND, Provenance.commonPractice("hook-and-loop disc"));

  /** Share of the usual disc life left in resinous wood or on old film. */
  static final SourcedRange CLOGGED_LIFE =
      SourcedRange.of(0.5, Unit.RATIO, Provenance.fromMemory("resin and film clog the paper"));

  /** Sound wood that takes as long to sand as the same thickness of old film. */
  static final SourcedRange FILM_AS_WOOD =
      SourcedRange.of(2, Unit.RATIO, Provenance.fromMemory("film clogs the paper and cuts slower"));

  /** Time for end grain against the same area of face grain. */
  static final SourcedRange END_GRAIN_FACTOR =
      SourcedRange.of(2, Unit.RATIO, Provenance.fromMemory("end grain cuts slower"));

  /** Share of a covering pass that a light scuff or knock-off takes. */
  static final SourcedRange LIGHT_SHARE =
      SourcedRange.of(
          0.5, Unit.RATIO, Provenance.commonPractice("a light pass, only to dull or de-fuzz"));

  /** Depth a light scuff takes off a film. */
  static final SourcedRange SCUFF_MICRON =
      SourcedRange.of(3, Unit.MICRON, Provenance.fromMemory("dulls the film, no more"));

  /** Density of cured film, for its dust. */
  static final SourcedRange FILM_DENSITY =
      SourcedRange.of(
          1200, Unit.KILOGRAM_PER_CUBIC_METRE, Provenance.fromMemory("cured clear film"));

  /** Side hardness below which wood counts as soft: sugar pine and basswood lie below it. */
  static final SourcedRange SOFT_BELOW =
      SourcedRange.of(
          2500, Unit.NEWTON, Provenance.commonPractice("soft wood shows every scratch"));

  /** A first pass that takes longer than this wants a coarser grade before it. */
  static final SourcedRange LONG_PASS =
      SourcedRange.of(
          900, Unit.SECOND_PER_SQUARE_METRE, Provenance.commonPractice("a quarter hour a m2"));

  /** Depth above which a plane, jointer or scraper is the right tool and sanding is not. */
  static final SourcedRange PLANE_ABOVE =
      SourcedRange.of(400, Unit.MICRON, Provenance.commonPractice("plane or scrape, then sand"));

  /** Knife marks for a finished face: twenty or more an inch. */
  static final SourcedRange KNIFE_PITCH =
      SourcedRange.of(
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

  private SandingFigures() {}
}
