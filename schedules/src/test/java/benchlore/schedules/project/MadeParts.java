package benchlore.schedules.project;

import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.sanding.StartSurface;
import java.util.List;
import java.util.OptionalDouble;
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
    return of(like, parts, like.shop());
  }

  /** The same project with so many clamps on the shelf. */
  static ProjectRequest withClamps(ProjectRequest like, int count) {
    GlueUpRequest.Clamps own = like.shop().clamps();
    GlueUpRequest.Clamps clamps =
        new GlueUpRequest.Clamps(count, own.forceNewton(), own.caulDepthMetre(), own.headMetre());
    return of(
        like, like.parts(), shop(like.shop(), clamps, like.shop().habits().glueSettlesSecond()));
  }

  /** The same project where joints settle so long. */
  static ProjectRequest settlingFor(ProjectRequest like, double seconds) {
    Shop shop = shop(like.shop(), like.shop().clamps(), OptionalDouble.of(seconds));
    return of(like, like.parts(), shop);
  }

  /** The same project of boards with this moisture. */
  static ProjectRequest ofBoards(ProjectRequest like, boolean settled, double moisturePercent) {
    return new ProjectRequest(
        like.start(),
        like.parts(),
        like.materials(),
        like.shop(),
        like.place(),
        settled,
        moisturePercent);
  }

  private static ProjectRequest of(ProjectRequest like, List<Part> parts, Shop shop) {
    return new ProjectRequest(
        like.start(),
        parts,
        like.materials(),
        shop,
        like.place(),
        like.settled(),
        like.moisturePercent());
  }

  private static Shop shop(Shop shop, GlueUpRequest.Clamps clamps, OptionalDouble settles) {
    return new Shop(
        shop.week(),
        shop.climate(),
        shop.room(),
        shop.ignition(),
        shop.sanding(),
        clamps,
        shop.people(),
        new Habits(shop.habits().transfer(), settles));
  }
}
