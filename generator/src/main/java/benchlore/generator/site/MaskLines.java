package benchlore.generator.site;

import benchlore.schedules.air.Air;
import benchlore.schedules.air.Respirator;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import java.util.ArrayList;
import java.util.List;

/** Which mask a finish asks for, as its page says it: the engine's choice, so a plan's as well. */
final class MaskLines {
  private MaskLines() {}

  /** One line for work by hand, one for spraying, as far as the finish is put on so. */
  static List<String> of(Finish finish) {
    List<String> lines = new ArrayList<>();
    List<ApplicationMethod> methods = finish.use().methods();
    methods.stream()
        .filter(method -> method != ApplicationMethod.SPRAY)
        .findFirst()
        .ifPresent(method -> lines.add(byHand(Air.usualMask(finish, method))));
    if (methods.contains(ApplicationMethod.SPRAY)) {
      Respirator mask = Air.usualMask(finish, ApplicationMethod.SPRAY);
      lines.add("Mask, sprayed: " + mask.words() + ".");
    }
    return lines;
  }

  private static String byHand(Respirator mask) {
    return switch (mask) {
      case NONE -> "Mask, by hand: none for the wet coat.";
      case VAPOUR_HALF_MASK ->
          "Mask, by hand: "
              + mask.words()
              + " wherever window and fan are not ample; the air planner tells for your room.";
      default -> "Mask, by hand: " + mask.words() + ".";
    };
  }
}
