package benchlore.schedules.glueup;

import benchlore.schedules.material.DensityClass;
import benchlore.schedules.time.Moment;
import java.util.List;

/**
 * A worked-out glue-up.
 *
 * @param glue how much adhesive
 * @param assembly time limits in the air at the start
 * @param pressure what the wood and adhesive call for
 * @param rows clamps for each group of joints, in the request's order
 * @param batches what is closed in one go, in order; one batch if all of it closes in time
 * @param clampsOff the last clamps come off
 * @param handle gentle handling, not before {@code clampsOff}
 * @param machine planing, routing or sanding across the joint
 * @param fullLoad the joint takes its full load
 */
public record GlueUpSchedule(
    Glue glue,
    Assembly assembly,
    Pressure pressure,
    List<Row> rows,
    List<Batch> batches,
    Milestone clampsOff,
    Milestone handle,
    Milestone machine,
    Milestone fullLoad) {
  /**
   * Adhesive to have at hand.
   *
   * @param areaSquareMetre glue lines, counted once
   * @param massKilogram with squeeze-out and what stays in pot and roller
   * @param volumeCubicMetre the same as volume
   * @param perFaceKilogramPerSquareMetre on each of the two faces when both are spread
   */
  public record Glue(
      double areaSquareMetre,
      double massKilogram,
      double volumeCubicMetre,
      double perFaceKilogramPerSquareMetre) {}

  /**
   * How long the adhesive waits.
   *
   * @param waitSecond after spreading, before the parts may touch (contact adhesive; else 0)
   * @param openSecond first spread to touching
   * @param closedSecond touching to full pressure
   * @param totalSecond first spread to full pressure
   */
  public record Assembly(
      double waitSecond, double openSecond, double closedSecond, double totalSecond) {}

  /**
   * Clamping pressure.
   *
   * @param density the wood's class
   * @param lowPascal the clamp count is worked from this end
   * @param highPascal not to be passed
   * @param targetPascal tighten to about this
   */
  public record Pressure(
      DensityClass density, double lowPascal, double highPascal, double targetPascal) {}

  /** Which rule set the number of clamps. */
  public enum Governs {
    /** area x pressure / clamp force. */
    FORCE,
    /** Reach of a clamp at 45 degrees and the usual spacing. */
    SPACING,
    /** The adhesive needs no clamps. */
    NONE
  }

  /**
   * One row of clamps along one joint (or along a panel of joints in line).
   *
   * @param joint the group's name
   * @param neededForForce clamps for the pressure
   * @param neededForSpacing clamps for even pressure
   * @param governs which of the two is larger
   * @param count clamps to set, the larger of the two or, if the shelf holds fewer but enough for
   *     the spacing, all of the shelf (a caution says so)
   * @param forceEachNewton to tighten each clamp to
   * @param pressurePascal reached with it
   * @param spacingLimitMetre farthest apart the clamps may stand
   * @param positions along the joint from one end
   */
  public record Row(
      String joint,
      int neededForForce,
      int neededForSpacing,
      Governs governs,
      int count,
      double forceEachNewton,
      double pressurePascal,
      double spacingLimitMetre,
      List<Position> positions) {
    /** Copies the list. */
    public Row {
      positions = List.copyOf(positions);
    }
  }

  /**
   * Where a clamp stands.
   *
   * @param alongMetre from one end of the joint
   * @param under true if its bar lies under the work; they alternate to keep a panel flat
   */
  public record Position(double alongMetre, boolean under) {}

  /** In which order a batch is spread and closed. */
  public enum Order {
    /** Spread every joint, then bring all together and clamp. */
    SPREAD_ALL,
    /** Spread a joint and bring it together at once, then the next; clamp at the end. */
    JOINT_BY_JOINT
  }

  /**
   * Joints of one group in a batch.
   *
   * @param joint the group's name
   * @param count how many of them
   */
  public record Share(String joint, int count) {}

  /**
   * What is closed in one go.
   *
   * @param shares joints in it
   * @param order how to work through them
   * @param clamps clamps in use
   * @param massKilogram adhesive to pour or mix for it
   * @param start first spread
   * @param spreadSecond from first spread to last
   * @param closeSecond to place and tighten the clamps
   * @param tight full pressure on
   * @param clampsOff clamps may come off
   */
  public record Batch(
      List<Share> shares,
      Order order,
      int clamps,
      double massKilogram,
      Moment start,
      double spreadSecond,
      double closeSecond,
      Moment tight,
      Moment clampsOff) {
    /** Copies the list. */
    public Batch {
      shares = List.copyOf(shares);
    }
  }

  /**
   * A moment, as wall-clock time and as time since the start.
   *
   * @param at wall-clock time
   * @param afterSecond seconds since the request's start
   */
  public record Milestone(Moment at, double afterSecond) {}

  /** Copies the lists. */
  public GlueUpSchedule {
    rows = List.copyOf(rows);
    batches = List.copyOf(batches);
  }
}
