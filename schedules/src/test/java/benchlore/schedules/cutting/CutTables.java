package benchlore.schedules.cutting;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import java.util.List;

/** Machines and unwrapping the tests of this package share. */
final class CutTables {
  static final double INCH = 0.0254;

  private CutTables() {}

  static Machine hand() {
    return new Machine(Machine.Kind.HAND_ROUTER, 8000, 24_000, 0.1);
  }

  static Machine table() {
    return new Machine(Machine.Kind.ROUTER_TABLE, 8000, 22_000, 0.1);
  }

  static Machine rigid() {
    return new Machine(Machine.Kind.RIGID_CNC, 6000, 24_000, 1.5);
  }

  static Machine light() {
    return new Machine(Machine.Kind.LIGHT_CNC, 8000, 24_000, 0.05);
  }

  static Bit quarter() {
    return Bit.plain(0.25 * INCH, 2, 0.025, 0.25 * INCH);
  }

  static CuttingRequest cut(Machine machine) {
    return CuttingRequest.of(
        CutMaterial.HARDWOOD, quarter(), machine, CuttingRequest.Side.OUTSIDE_EDGE, 0.019);
  }

  static <T> T value(Answer<T> answer) {
    return given(answer).value();
  }

  static <T> Answer.Given<T> given(Answer<T> answer) {
    return answer.fold(
        g -> g,
        refused -> {
          throw new AssertionError(refused.reasons().toString());
        });
  }

  static List<String> codes(Answer<?> answer) {
    return given(answer).cautions().stream().map(Caution::code).toList();
  }
}
