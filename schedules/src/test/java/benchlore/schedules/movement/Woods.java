package benchlore.schedules.movement;

import benchlore.schedules.material.Pores;
import benchlore.schedules.material.Species;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Optional;

/** Woods and parts the tests of this package share. */
final class Woods {
  private static final Provenance HANDBOOK =
      Provenance.source("USDA FPL-GTR-190 Wood Handbook (2010)", "Tables 4-3 and 13-5");

  private Woods() {}

  static Species redOak() {
    return wood(4.0, 8.6, Optional.of(0.00158), Optional.of(0.00369), Pores.RING);
  }

  /** Black cherry without coefficients: they must come from its shrinkage. */
  static Species cherry() {
    return wood(3.7, 7.1, Optional.empty(), Optional.empty(), Pores.DIFFUSE);
  }

  private static Species wood(
      double radial,
      double tangential,
      Optional<Double> movementRadial,
      Optional<Double> movementTangential,
      Pores pores) {
    return new Species(
        Species.Group.HARDWOOD,
        SourcedRange.of(0.6, Unit.RATIO, HANDBOOK),
        Optional.empty(),
        new Species.Movement(
            SourcedRange.of(radial, Unit.PERCENT, HANDBOOK),
            SourcedRange.of(tangential, Unit.PERCENT, HANDBOOK),
            movementRadial.map(c -> SourcedRange.of(c, Unit.PER_PERCENT_MOISTURE, HANDBOOK)),
            movementTangential.map(c -> SourcedRange.of(c, Unit.PER_PERCENT_MOISTURE, HANDBOOK))),
        new Species.Surface(
            pores, false, false, false, false, Species.Resin.NONE, Species.UnderFilm.BARE));
  }

  /** A cherry door, 400 mm wide, 20 mm thick, fitted at 8 % for a heated room. */
  static FitRequest door() {
    return new FitRequest(
        cherry(),
        RingAngle.FLAT,
        0.4,
        0.02,
        8,
        new SteadyAir(20, 45),
        PlaceClimate.HEATED_ROOM.seasons(),
        Optional.empty(),
        Optional.empty());
  }

  static FitRequest door(double width, double moisture) {
    return new FitRequest(
        cherry(),
        RingAngle.FLAT,
        width,
        0.02,
        moisture,
        new SteadyAir(20, 45),
        PlaceClimate.HEATED_ROOM.seasons(),
        Optional.empty(),
        Optional.empty());
  }

  /** Three coats of 100 µm at 30 % on the edge, two on the frame, 0.5 mm to slide. */
  static Opening opening() {
    return new Opening(
        new Film(3, 100, 30),
        new Film(2, 100, 30),
        0.0005,
        Opening.Hanging.ONE_EDGE,
        Tape.common());
  }
}
