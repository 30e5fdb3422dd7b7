package benchlore.schedules.glueup;

import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Objects;

/**
 * What is to be glued, with what, where and by whom. Any figure is accepted here; {@link
 * GlueUp#plan} refuses nonsense with all reasons at once.
 *
 * @param adhesive the adhesive
 * @param joints groups of like joints in the order they are put together, 1 to 100 joints in all
 * @param wood the parts
 * @param clamps the clamps on the shelf
 * @param climate the room over the day; wood and adhesive are taken to be as warm as the air
 * @param start when the first spread begins, years 1900 to 2999
 * @param pace how fast the people work
 */
public record GlueUpRequest(
    Adhesive adhesive,
    List<Joint> joints,
    Wood wood,
    Clamps clamps,
    Climate climate,
    Moment start,
    Pace pace) {
  /** How clamps reach the joints of one group. */
  public enum Arrangement {
    /** Side by side, as in a panel: one row of clamps presses all of them at once. */
    IN_LINE,
    /** Each joint has its own clamps, as in a frame. */
    SEPARATE
  }

  /**
   * A group of like joints.
   *
   * @param name what it is called, without braces
   * @param lengthMetre along the glue line, 0.005 to 10
   * @param widthMetre of the glue line (board thickness in an edge joint), 0.001 to 2
   * @param count joints in the group, 1 to 100
   * @param arrangement how clamps reach them
   * @param backingMetre wood between clamp face and nearest glue line (the outer board's width),
   *     caul not counted, 0.001 to 2
   * @param gapMetre widest gap left when the dry joint is pressed by hand, 0 to 0.02
   */
  public record Joint(
      String name,
      double lengthMetre,
      double widthMetre,
      int count,
      Arrangement arrangement,
      double backingMetre,
      double gapMetre) {
    /** Refuses nulls. */
    public Joint {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(arrangement, "arrangement");
    }

    /** Glued area of one joint, m2. */
    double areaSquareMetre() {
      return lengthMetre * widthMetre;
    }
  }

  /**
   * The parts.
   *
   * @param densityKilogramPerCubicMetre at about 12 % moisture, 80 to 1400; of mixed woods the
   *     lightest, which sets the pressure they all stand
   * @param oily true for oily or resinous species
   * @param moisturePercents a meter reading of each part, percent; above what the adhesive takes,
   *     or above 20 if it states nothing, is refused as too wet
   * @param sinceMachinedSecond time since the faces were planed, sawn or abraded, 0 to 10 years
   */
  public record Wood(
      double densityKilogramPerCubicMetre,
      boolean oily,
      List<Double> moisturePercents,
      double sinceMachinedSecond) {
    /** Copies the list. */
    public Wood {
      moisturePercents = List.copyOf(moisturePercents);
    }

    /** The lowest reading, percent; NaN if there is none. */
    double driestPercent() {
      double driest = moisturePercents.isEmpty() ? Double.NaN : moisturePercents.get(0);
      for (double percent : moisturePercents) {
        driest = Math.min(driest, percent);
      }
      return driest;
    }

    /** The highest reading, percent; NaN if there is none. */
    double wettestPercent() {
      double wettest = moisturePercents.isEmpty() ? Double.NaN : moisturePercents.get(0);
      for (double percent : moisturePercents) {
        wettest = Math.max(wettest, percent);
      }
      return wettest;
    }
  }

  /**
   * Like clamps.
   *
   * @param count on the shelf, 1 to 500; 0 will do where none is needed
   * @param forceNewton one clamp tightened by hand, 50 to 50000
   * @param caulDepthMetre thickness of the batten between clamp and work, 0 for none, to 0.5
   * @param headMetre width of the jaw along the joint, 0 (a point, the safe figure) to 0.3
   */
  public record Clamps(int count, double forceNewton, double caulDepthMetre, double headMetre) {}

  /**
   * How fast the work goes. A dry run with a watch beats any default.
   *
   * @param perJointSecond to pick up, bring together and align one joint, 1 to 3600
   * @param perSquareMetreSecond to spread one square metre of glue line, 0 to 36000
   * @param perClampSecond to place and tighten one clamp, 1 to 3600
   * @param people 1 to 8
   */
  public record Pace(
      double perJointSecond, double perSquareMetreSecond, double perClampSecond, int people) {
    /** Where the figures of {@link #usual} come from. */
    public static final Provenance USUAL_FROM =
        Provenance.commonPractice("a steady worker after a dry run");

    /** 20 s a joint, 400 s a square metre spread, 20 s a clamp: common practice. */
    public static Pace usual(int people) {
      return new Pace(20, 400, 20, people);
    }
  }

  /** The same job in other air. */
  GlueUpRequest with(Climate other) {
    return new GlueUpRequest(adhesive, joints, wood, clamps, other, start, pace);
  }

  /** Copies the list; refuses nulls. */
  public GlueUpRequest {
    Objects.requireNonNull(adhesive, "adhesive");
    Objects.requireNonNull(wood, "wood");
    Objects.requireNonNull(clamps, "clamps");
    Objects.requireNonNull(climate, "climate");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(pace, "pace");
    joints = List.copyOf(joints);
  }
}
