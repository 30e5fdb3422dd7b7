package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.caution.SandingRows;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Sheen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to say of open pores under a gloss film: filling is advised, and done only if asked for. */
final class PoreAdvice {
  private PoreAdvice() {}

  /** What sanding says of the pores, less what the plan fills or advises to fill anyway. */
  static List<Caution> without(ProjectRequest request, List<Caution> cautions) {
    String open = SandingRows.PORES_STAY_OPEN.caution().code();
    boolean told = filled(request.materials()) || of(request).isPresent();
    List<Caution> left = new ArrayList<>();
    for (Caution caution : cautions) {
      if (!told || !caution.code().equals(open)) {
        left.add(caution);
      }
    }
    return left;
  }

  private static boolean filled(Materials materials) {
    boolean filled = false;
    for (Layer layer : materials.layers()) {
      filled = filled || layer.fills();
    }
    return filled;
  }

  /** Empty where the grain is closed, the film is not gloss, or a filler is among the finishes. */
  static Optional<Message> of(ProjectRequest request) {
    Materials materials = request.materials();
    Layer face = materials.face();
    boolean flat = face.finish().role() == FinishRole.FILM && face.coats().sheen() == Sheen.GLOSS;
    boolean fillsItself = false;
    for (Layer layer : materials.layers()) {
      fillsItself = fillsItself || layer.finish().family() == FinishFamily.EPOXY;
    }
    if (!flat || filled(materials) || !materials.wood().surface().openGrained()) {
      return Optional.empty();
    }
    return Optional.of(
        Message.of(
            fillsItself
                ? "The pores of this wood are open; epoxy fills them by itself, if it is worked into"
                    + " them and levelled before the next coat."
                : "The pores of this wood are open and show under gloss. For a flat film plan a"
                    + " grain filler as a finish of its own under it, or live with the pores."));
  }
}
