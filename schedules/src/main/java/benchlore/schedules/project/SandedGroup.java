package benchlore.schedules.project;

import benchlore.schedules.sanding.SandingArea;
import benchlore.schedules.sanding.StartSurface;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts of one kind of surface, which go through the same grades together: they stand side by side
 * when the piece is done, and other scratches would show.
 *
 * @param parts at least one
 * @param surface the roughest of their surfaces
 */
record SandedGroup(List<Part> parts, StartSurface surface) {
  SandedGroup {
    parts = List.copyOf(parts);
  }

  /** The parts of a project by kind of surface, in the order they are named. */
  static List<SandedGroup> of(List<Part> parts) {
    List<SandedGroup> groups = new ArrayList<>();
    for (Part part : parts) {
      int at = 0;
      while (at < groups.size() && !groups.get(at).surface.isLike(part.surface())) {
        at = at + 1;
      }
      if (at < groups.size()) {
        groups.set(at, groups.get(at).with(part));
      } else {
        groups.add(new SandedGroup(List.of(part), part.surface()));
      }
    }
    return groups;
  }

  private SandedGroup with(Part part) {
    List<Part> more = new ArrayList<>(parts);
    more.add(part);
    boolean rougher = part.surface().depth().isRougherThan(surface.depth());
    return new SandedGroup(more, rougher ? part.surface() : surface);
  }

  /** "top, side and door". */
  String names() {
    StringBuilder names = new StringBuilder();
    for (int i = 0; i < parts.size(); i++) {
      String between = i == 0 ? "" : i == parts.size() - 1 ? " and " : ", ";
      names.append(between).append(parts.get(i).name());
    }
    return names.toString();
  }

  /** All of their faces, edges and ends. */
  SandingArea area() {
    double total = 0;
    double ends = 0;
    int pieces = 0;
    for (Part part : parts) {
      total = part.coatedSquareMetre() + total;
      ends = part.endGrainSquareMetre() + ends;
      pieces = pieces + part.count();
    }
    return new SandingArea(total, ends, pieces);
  }
}
