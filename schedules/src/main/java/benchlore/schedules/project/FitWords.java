package benchlore.schedules.project;

import benchlore.schedules.answer.Message;
import benchlore.schedules.movement.FitSchedule;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a dry fit is told of a part: its gap and what to set it with, or how far it moves. What
 * nobody can see or measure at a bench is left out.
 */
final class FitWords {
  private static final double TELL = ProjectFigures.MOVEMENT_TOLD.low();

  private FitWords() {}

  /** How far a part that is in no opening moves; nothing of a movement too small to tell. */
  static Optional<Message> growth(Part part, FitSchedule.Travel travel) {
    boolean grows = travel.swellMetre() >= TELL;
    boolean shrinks = travel.shrinkMetre() >= TELL;
    Quantity more = Quantity.of(travel.swellMetre(), Unit.METRE);
    Quantity less = Quantity.of(travel.shrinkMetre(), Unit.METRE);
    String width = part.name() + ": its width will ";
    if (grows && shrinks) {
      return Optional.of(
          Message.of(
              width + "grow by {0} in the damp season and shrink by {1} in the dry.", more, less));
    }
    if (grows) {
      return Optional.of(Message.of(width + "grow by {0} in the damp season.", more));
    }
    return shrinks
        ? Optional.of(Message.of(width + "shrink by {0} in the dry season.", less))
        : Optional.empty();
  }

  /** The gap of a part that moves in an opening, and what is put in to set it. */
  static Message gap(Part part, FitSchedule.Clearance clearance) {
    List<Quantity> told = new ArrayList<>();
    told.add(Quantity.of(clearance.gapMetre(), Unit.METRE));
    String side = part.moves() == Moves.SLIDING ? "on each side" : "at the latch side";
    String leave = part.name() + ": leave {0} " + side;
    if (clearance.gapMetre() > ProjectFigures.SET_WITH_DRILL.low()) {
      return new Message(leave + ", set with a drill bit or a slip of that size.", told);
    }
    if (clearance.stacks().isEmpty()) {
      return new Message(leave + ", set with a slip of that thickness.", told);
    }
    FitSchedule.TapeStack stack = clearance.stacks().get(0);
    told.add(Quantity.of(stack.layers(), Unit.COUNT));
    String layers = stack.layers() == 1 ? " layer of " : " layers of ";
    return new Message(leave + "; {1}" + layers + stack.tape().name() + " to set it.", told);
  }
}
