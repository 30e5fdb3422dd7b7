package benchlore.schedules.cutting;

import benchlore.schedules.answer.Message;
import benchlore.schedules.cutting.CuttingSchedule.Direction;
import benchlore.schedules.cutting.CuttingSchedule.Direction.Turn;

/**
 * Which way to move. The rule: the edge must meet the wood coming towards it, so that the cut
 * pushes the tool back and presses it to its guide; never with the turning of the bit.
 */
final class Directions {
  private Directions() {}

  static Direction of(Machine.Kind kind, CuttingRequest.Side side) {
    return switch (kind) {
      case HAND_ROUTER, LIGHT_CNC, RIGID_CNC -> above(side);
      case ROUTER_TABLE -> table(side);
    };
  }

  private static Direction above(CuttingRequest.Side side) {
    return switch (side) {
      case OUTSIDE_EDGE ->
          say(
              Turn.COUNTER_CLOCKWISE,
              "Counter-clockwise round the outside, seen from above: left to right along an edge"
                  + " that faces you. End grain first, so that long grain cleans up a blown-out"
                  + " corner.");
      case INSIDE_EDGE -> say(Turn.CLOCKWISE, "Clockwise round the inside, seen from above.");
      case SLOT ->
          say(
              Turn.GUIDE_ON_RIGHT,
              "Push away from you with the fence or guide at your right hand, so that the cut"
                  + " presses the tool to it.");
    };
  }

  private static Direction table(CuttingRequest.Side side) {
    return switch (side) {
      case OUTSIDE_EDGE, SLOT ->
          say(
              Turn.WORK_RIGHT_TO_LEFT,
              "Move the work from right to left in front of the bit, against the fence; never"
                  + " between bit and fence.");
      case INSIDE_EDGE ->
          say(
              Turn.BIT_COUNTER_CLOCKWISE_INSIDE,
              "Move the frame so that the bit goes counter-clockwise round its inside, seen from"
                  + " above.");
    };
  }

  private static Direction say(Turn turn, String how) {
    return new Direction(turn, Message.of(how));
  }
}
