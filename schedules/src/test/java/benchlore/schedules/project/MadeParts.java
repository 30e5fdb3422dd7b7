package benchlore.schedules.project;

import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.sanding.StartSurface;
import java.util.List;
import java.util.Random;

/** Parts made up at random, and projects of them. */
final class MadeParts {
  private MadeParts() {}

  /** One board, from a slat to a wide door. */
  static Part leaf(Random dice, Moves moves) {
    return new Part(
        "leaf",
        1,
        0.1 + 1.5 * dice.nextDouble(),
        0.02 + 0.6 * dice.nextDouble() * dice.nextDouble(),
        0.012 + 0.02 * dice.nextDouble(),
        dice.nextBoolean() ? RingAngle.FLAT : RingAngle.QUARTERED,
        1,
        new StartSurface.Planed(0.0015, 0.03),
        600,
        moves);
  }

  /** A blank of several boards. */
  static Part blank(Random dice, int count, int boards) {
    return new Part(
        "blank",
        count,
        0.3 + dice.nextDouble(),
        0.05 * boards + 0.2 * dice.nextDouble(),
        0.015 + 0.02 * dice.nextDouble(),
        RingAngle.FLAT,
        boards,
        new StartSurface.Planed(0.0015, 0.03),
        600,
        Moves.FIXED);
  }

  /** One board of this size. */
  static Part sized(String name, int count, double lengthMetre, double widthMetre, Moves moves) {
    Part part = Projects.part(name, count, 1);
    return new Part(
        name,
        count,
        lengthMetre,
        widthMetre,
        part.thicknessMetre(),
        part.rings(),
        1,
        part.surface(),
        part.machiningSecond(),
        moves);
  }

  static Part as(Part part, Moves moves) {
    return new Part(
        part.name(),
        part.count(),
        part.lengthMetre(),
        part.widthMetre(),
        part.thicknessMetre(),
        part.rings(),
        part.boards(),
        part.surface(),
        part.machiningSecond(),
        moves);
  }

  /** The same project, of these parts. */
  static ProjectRequest in(ProjectRequest like, List<Part> parts) {
    return new ProjectRequest(
        like.start(),
        parts,
        like.materials(),
        like.shop(),
        like.place(),
        like.settled(),
        like.moisturePercent());
  }

  /** The same project with so many clamps on the shelf. */
  static ProjectRequest withClamps(ProjectRequest like, int count) {
    Shop shop = like.shop();
    GlueUpRequest.Clamps own = shop.clamps();
    return new ProjectRequest(
        like.start(),
        like.parts(),
        like.materials(),
        new Shop(
            shop.week(),
            shop.climate(),
            shop.room(),
            shop.ignition(),
            shop.sanding(),
            new GlueUpRequest.Clamps(
                count, own.forceNewton(), own.caulDepthMetre(), own.headMetre()),
            shop.people()),
        like.place(),
        like.settled(),
        like.moisturePercent());
  }
}
