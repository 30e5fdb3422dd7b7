package benchlore.schedules.project;

import benchlore.schedules.answer.StepId;
import java.util.Objects;

/**
 * Where the edges of a blank are jointed: in the session it is glued in, if a stretch of the shop's
 * hours holds both, since a cut edge takes glue best while it is fresh; else before all gluing.
 *
 * @param request the project
 */
record Jointing(ProjectRequest request) {
  Jointing {
    Objects.requireNonNull(request, "request");
  }

  /** Jointing and dry clamping in the session of one blank before its glue; 0 if that was apart. */
  double inSessionSecond(Part part) {
    boolean before = tooLong(part) || doneBefore();
    return before ? 0 : seconds(part);
  }

  /** Jointing and dry clamping all blanks whose session is too short for it. */
  double apartSecond() {
    double seconds = 0;
    for (Part part : request.parts()) {
      boolean apart = tooLong(part) || doneBefore();
      seconds = apart ? seconds(part) * part.count() + seconds : seconds;
    }
    return seconds;
  }

  /** From the last pass over the first edge to the glue, of so many joints. */
  static double sinceSecond(int joints) {
    return ProjectFigures.FRESH_PASS.high() * joints;
  }

  /** It was done in one go although each session had held it: all of it, then. */
  private boolean doneBefore() {
    if (request.progress().slots(StepId.Task.DRY_CLAMP.once()).isEmpty()) {
      return false;
    }
    for (Part part : request.parts()) {
      if (tooLong(part)) {
        return false;
      }
    }
    return true;
  }

  private boolean tooLong(Part part) {
    double session =
        seconds(part) + ProjectFigures.AROUND_A_GLUE_UP.high() + ProjectFigures.CLOSE.high();
    return part.boards() > 1 && request.shop().week().unbroken(request.start(), session).isEmpty();
  }

  private static double seconds(Part part) {
    return ProjectFigures.JOINT.high() * (part.boards() - 1);
  }
}
