package benchlore.schedules.project;

import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.sanding.StartSurface;
import java.util.ArrayList;
import java.util.List;

/**
 * The hours a ball nose travels over both faces of parts that are finished with one, by their area,
 * the distance of its lines and a usual feed. A plan's own machining time that is far below cannot
 * be all of it.
 */
final class MachinePath {
  private static final Provenance PATH =
      Provenance.commonPractice("one line beside the other over both faces, turning not counted");

  private final List<Part> ball = new ArrayList<>();

  MachinePath(List<Part> parts) {
    for (Part part : parts) {
      if (part.surface() instanceof StartSurface.BallNose) {
        ball.add(part);
      }
    }
  }

  /** What the machine takes for both faces of all of them, seconds; 0 without a ball nose. */
  double seconds() {
    double seconds = 0;
    for (Part part : ball) {
      seconds = seconds(part) + seconds;
    }
    return seconds;
  }

  /** What the plan has for the same parts, seconds. */
  private double plannedSecond() {
    double seconds = 0;
    for (Part part : ball) {
      seconds = part.machiningSecond() * part.count() + seconds;
    }
    return seconds;
  }

  private static double areaSquareMetre(Part part) {
    return 2 * part.lengthMetre() * part.widthMetre() * part.count();
  }

  private static double stepoverMetre(Part part) {
    return part.surface() instanceof StartSurface.BallNose cut ? cut.stepoverMetre() : 0;
  }

  private static double seconds(Part part) {
    double swept = ProjectFigures.FINISHING_FEED.mid() * stepoverMetre(part);
    return areaSquareMetre(part) / swept;
  }

  /** Said once where the plan's time is less than half of what the path takes. */
  List<Message> notes() {
    double planned = plannedSecond();
    if (!(planned < seconds() * ProjectFigures.MUCH_SHORTER.high())) {
      return List.of();
    }
    return List.of(
        Message.of(
            "The ball nose alone runs {0} over both faces at a usual feed; the plan has {1} of your time. If"
                + " you stay beside it, give the plan its hours; for a flat face a wide flat cutter"
                + " takes minutes.",
            Quantity.of(seconds(), Unit.SECOND), Quantity.of(planned, Unit.SECOND)));
  }

  List<WorkingLine> working() {
    List<WorkingLine> lines = new ArrayList<>();
    for (Part part : ball) {
      lines.add(
          new WorkingLine(
              QuantityKey.MACHINE_TIME,
              Figure.computed(part.name() + ": machine time", seconds(part), Unit.SECOND),
              "machine = area of both faces / (feed x stepover)",
              List.of(
                  Figure.computed("both faces", areaSquareMetre(part), Unit.SQUARE_METRE),
                  Figure.of(
                      "feed",
                      ProjectFigures.FINISHING_FEED.mid(),
                      Unit.METRE_PER_SECOND,
                      ProjectFigures.FINISHING_FEED.from()),
                  Figure.input("stepover", stepoverMetre(part), Unit.METRE)),
              PATH));
    }
    return lines;
  }
}
