package benchlore.schedules.project;

import benchlore.schedules.answer.Message;
import benchlore.schedules.material.FinishRole;
import java.util.ArrayList;
import java.util.List;

/**
 * How both faces get a coat in one session, as a plan reckons: wet on points, or wiped dry. What is
 * too large to be turned by one is named.
 */
final class BothFaces {
  private BothFaces() {}

  /** For the first coat. */
  static List<Message> notes(Layer layer, List<Part> parts) {
    if (layer.finish().role() != FinishRole.FILM) {
      return List.of(
          Message.of("Both faces in one go: wiped dry, the first may lie on sticks meanwhile."));
    }
    List<Message> notes = new ArrayList<>();
    notes.add(
        Message.of(
            "Both faces in one go: the hidden face first, then turned onto points, nails or screws"
                + " through a scrap, then edges and show face. The pricks vanish in the hidden face."));
    String large = large(parts);
    if (!large.isEmpty()) {
      notes.add(
          Message.of(
              large
                  + ": turned by two, or on a long screw in each end over trestles. Alone, coat the"
                  + " hidden face the session before, and both faces as often."));
    }
    return notes;
  }

  private static String large(List<Part> parts) {
    StringBuilder names = new StringBuilder();
    for (Part part : parts) {
      boolean isLong = part.lengthMetre() > ProjectFigures.TURNED_ALONE.high();
      if (isLong && part.widthMetre() > ProjectFigures.NARROW.high()) {
        names.append(names.isEmpty() ? "" : ", ").append(part.name());
      }
    }
    return names.toString();
  }
}
