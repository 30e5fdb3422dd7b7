package benchlore.schedules.sanding;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Unit;
import java.util.Objects;

/**
 * The surface as it is now. Each variant knows how deep its marks go; {@link
 * Sanding#plan(SandingRequest)} refuses figures outside the ranges given here.
 */
public sealed interface StartSurface {

  /** Tells what is wrong with the figures. */
  void check(Checks checks);

  /** Depth to remove; only for figures that passed the check. */
  StartDepth depth();

  /** Whether both are of one kind and go through the same grades; the figures may differ. */
  default boolean isLike(StartSurface other) {
    if (this instanceof OldFilm film && other instanceof OldFilm film2) {
      return film.fate() == film2.fate();
    }
    return equals(other)
        || (this instanceof Sawn && other instanceof Sawn)
        || (this instanceof Planed && other instanceof Planed)
        || (this instanceof BallNose && other instanceof BallNose)
        || (this instanceof StraightCut && other instanceof StraightCut)
        || (this instanceof TornGrain && other instanceof TornGrain);
  }

  /**
   * Sawn and nothing more.
   *
   * @param by what sawed it
   */
  record Sawn(SawnBy by) implements StartSurface {
    /** Refuses null. */
    public Sawn {
      Objects.requireNonNull(by, "by");
    }

    @Override
    public void check(Checks checks) {}

    @Override
    public StartDepth depth() {
      return StartDepths.sawn(by);
    }
  }

  /**
   * Planed by machine or jointed.
   *
   * @param knifePitchMetre distance between knife marks, 0.0002 to 0.01; see {@link
   *     ArcMarks#knifePitchMetre}
   * @param cutterRadiusMetre radius of the cutter head with its knives, 0.01 to 0.2
   */
  record Planed(double knifePitchMetre, double cutterRadiusMetre) implements StartSurface {
    @Override
    public void check(Checks checks) {
      checks.within("knifePitchMetre", knifePitchMetre, 0.0002, 0.01, Unit.METRE);
      checks.within("cutterRadiusMetre", cutterRadiusMetre, 0.01, 0.2, Unit.METRE);
    }

    @Override
    public StartDepth depth() {
      return StartDepths.planed(knifePitchMetre, cutterRadiusMetre);
    }
  }

  /**
   * Milled to shape with a ball-nose bit.
   *
   * @param ballDiameterMetre 0.0005 to 0.1
   * @param stepoverMetre distance between passes, above 0, at most the diameter
   */
  record BallNose(double ballDiameterMetre, double stepoverMetre) implements StartSurface {
    @Override
    public void check(Checks checks) {
      StartDepths.checkDiameter(checks, "ballDiameterMetre", ballDiameterMetre);
      StartDepths.checkPitch(checks, "stepoverMetre", stepoverMetre, ballDiameterMetre);
    }

    @Override
    public StartDepth depth() {
      return StartDepths.ballNose(ballDiameterMetre, stepoverMetre);
    }
  }

  /**
   * The wall left by a straight or spiral bit.
   *
   * @param bitDiameterMetre 0.0005 to 0.1
   * @param feedPerFluteMetre chip load, above 0, at most the diameter
   */
  record StraightCut(double bitDiameterMetre, double feedPerFluteMetre) implements StartSurface {
    @Override
    public void check(Checks checks) {
      StartDepths.checkDiameter(checks, "bitDiameterMetre", bitDiameterMetre);
      StartDepths.checkPitch(checks, "feedPerFluteMetre", feedPerFluteMetre, bitDiameterMetre);
    }

    @Override
    public StartDepth depth() {
      return StartDepths.straightCut(bitDiameterMetre, feedPerFluteMetre);
    }
  }

  /**
   * Torn or chipped grain, or any other pit of a known depth.
   *
   * @param depthMicron depth of the deepest pits that must go, 1 to 5000; 100 to 300 is usual
   */
  record TornGrain(double depthMicron) implements StartSurface {
    @Override
    public void check(Checks checks) {
      StartDepths.checkDepth(checks, "depthMicron", depthMicron);
    }

    @Override
    public StartDepth depth() {
      return StartDepths.tornGrain(depthMicron);
    }
  }

  /**
   * An old finish.
   *
   * @param filmMicron its dry thickness, 1 to 5000; 50 to 150 is usual
   * @param fate what becomes of it
   */
  record OldFilm(double filmMicron, Fate fate) implements StartSurface {
    /** What becomes of an old film. */
    public enum Fate {
      /** Sanded off to bare wood. */
      REMOVE,
      /** Kept, and dulled so that the next coat holds. */
      SCUFF
    }

    /** Refuses null. */
    public OldFilm {
      Objects.requireNonNull(fate, "fate");
    }

    @Override
    public void check(Checks checks) {
      StartDepths.checkDepth(checks, "filmMicron", filmMicron);
    }

    @Override
    public StartDepth depth() {
      return StartDepths.oldFilm(filmMicron, fate);
    }
  }

  /**
   * Sanded before.
   *
   * @param grit the last grade used
   */
  record SandedTo(Grit grit) implements StartSurface {
    /** Refuses null. */
    public SandedTo {
      Objects.requireNonNull(grit, "grit");
    }

    @Override
    public void check(Checks checks) {}

    @Override
    public StartDepth depth() {
      return StartDepths.sandedTo(grit);
    }
  }
}
