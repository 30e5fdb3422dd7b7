package benchlore.schedules.sanding;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/** How deep each kind of start surface must be sanded, with its working. */
final class StartDepths {
  private static final double MICRON_PER_METRE = 1e6;

  /** Fibres bruised or torn below the ridges, which must go too. */
  private static final SourcedRange BELOW_PLANED =
      SourcedRange.range(40, 80, Unit.MICRON, Provenance.fromMemory("bruised and lifted fibres"));

  private static final SourcedRange BELOW_BALL =
      SourcedRange.range(10, 30, Unit.MICRON, Provenance.fromMemory("fuzz and bruised fibres"));

  private static final SourcedRange BELOW_STRAIGHT =
      SourcedRange.range(
          30, 80, Unit.MICRON, Provenance.fromMemory("steps between depths, chatter"));

  private static final SourcedRange BELOW_FILM =
      SourcedRange.range(10, 30, Unit.MICRON, Provenance.fromMemory("finish that soaked in"));

  private static final Provenance ADDED =
      Provenance.commonPractice("sand to the bottom of the deepest mark");

  private StartDepths() {}

  /** Cuts may be at most a cutter's width apart, else a wall stays between them. */
  static void checkPitch(Checks checks, String name, double metre, double widestMetre) {
    checks.within(name, metre, 1e-6, 0.1, Unit.METRE);
    checks.require(
        !(widestMetre > 0 && metre > widestMetre),
        name,
        "The cuts are further apart than the cutter is wide, so they leave a wall between.",
        "Give a distance between cuts that is at most the cutter's diameter.");
  }

  static void checkDiameter(Checks checks, String name, double metre) {
    checks.within(name, metre, 0.0005, 0.1, Unit.METRE);
  }

  static void checkDepth(Checks checks, String name, double micron) {
    checks.within(name, micron, 1, 5000, Unit.MICRON);
  }

  static StartDepth sawn(SawnBy by) {
    SourcedRange depth = by.depth();
    Figure marks =
        Figure.of("depth of saw marks, deep end", depth.high(), Unit.MICRON, depth.from());
    return StartDepth.cut(
        depth.high(), Opening.SAWN, line(depth.high(), "depth = saw marks", List.of(marks)));
  }

  static StartDepth planed(double pitchMetre, double radiusMetre) {
    boolean fine = pitchMetre <= SandingFigures.KNIFE_PITCH.high();
    Opening opening = fine ? Opening.FINELY_PLANED : Opening.CUT;
    return StartDepth.cut(arc("knife pitch", pitchMetre, radiusMetre, BELOW_PLANED), opening);
  }

  static StartDepth ballNose(double diameterMetre, double stepoverMetre) {
    return StartDepth.cut(
        arc("stepover", stepoverMetre, diameterMetre / 2, BELOW_BALL), Opening.CUT);
  }

  static StartDepth straightCut(double diameterMetre, double feedMetre) {
    return StartDepth.cut(
        arc("feed a flute", feedMetre, diameterMetre / 2, BELOW_STRAIGHT), Opening.CUT);
  }

  static StartDepth tornGrain(double depthMicron) {
    Figure given = Figure.input("depth of the pits", depthMicron, Unit.MICRON);
    return StartDepth.cut(
        depthMicron, Opening.TORN, line(depthMicron, "depth = pits", List.of(given)));
  }

  static StartDepth oldFilm(double filmMicron, StartSurface.OldFilm.Fate fate) {
    Figure film = Figure.input("old film", filmMicron, Unit.MICRON);
    if (fate == StartSurface.OldFilm.Fate.SCUFF) {
      // A film thinner than a scuff is scuffed through: then it is all that comes off.
      double scuff = Math.min(SandingFigures.SCUFF_MICRON.low(), filmMicron);
      WorkingLine line =
          line(scuff, "depth = scuff, at most the film", List.of(film, scuffFigure()));
      return new StartDepth(scuff, scuff, Double.POSITIVE_INFINITY, true, Opening.ANY, line);
    }
    double depth = filmMicron + BELOW_FILM.high();
    Figure below = figure("soaked in, deep end", BELOW_FILM);
    WorkingLine line = line(depth, "depth = film + soaked in", List.of(film, below));
    return new StartDepth(depth, filmMicron, Double.POSITIVE_INFINITY, false, Opening.ANY, line);
  }

  static StartDepth sandedTo(Grit grit) {
    double depth = SandingFigures.SCRATCH_SHARE.low() * grit.micron();
    Figure grain = Figure.of("grain of " + grit.label(), grit.micron(), Unit.MICRON, grit.from());
    WorkingLine line =
        line(
            depth,
            "depth = scratch share x grain",
            List.of(figure("scratch share", SandingFigures.SCRATCH_SHARE), grain));
    return new StartDepth(depth, 0, grit.micron(), false, Opening.ANY, line);
  }

  private static WorkingLine arc(
      String pitchName, double pitch, double radius, SourcedRange below) {
    double ridge = ArcMarks.heightMetre(radius, pitch) * MICRON_PER_METRE;
    double depth = ridge + below.high();
    return new WorkingLine(
        QuantityKey.DEPTH_TO_REMOVE,
        Figure.computed("depth to remove", depth, Unit.MICRON),
        "depth = r - sqrt(r^2 - (s/2)^2) + fibres below",
        List.of(
            Figure.input(pitchName, pitch, Unit.METRE),
            Figure.input("cutter radius", radius, Unit.METRE),
            Figure.of("ridge height", ridge, Unit.MICRON, ArcMarks.FORMULA),
            figure("fibres below, deep end", below)),
        ArcMarks.FORMULA);
  }

  private static Figure scuffFigure() {
    return figure("scuff", SandingFigures.SCUFF_MICRON);
  }

  private static Figure figure(String name, SourcedRange datum) {
    return Figure.of(name, datum.high(), datum.unit(), datum.from());
  }

  private static WorkingLine line(double depth, String formula, List<Figure> inputs) {
    return new WorkingLine(
        QuantityKey.DEPTH_TO_REMOVE,
        Figure.computed("depth to remove", depth, Unit.MICRON),
        formula,
        inputs,
        ADDED);
  }
}
