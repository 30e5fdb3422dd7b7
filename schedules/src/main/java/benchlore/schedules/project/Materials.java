package benchlore.schedules.project;

import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Species;
import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.sanding.SandingWood;
import java.util.List;
import java.util.Objects;

/**
 * What the project is made of.
 *
 * @param wood the species
 * @param adhesive for the blanks
 * @param layers the finishes on every part, the first on the wood first; at least one
 * @param suits what the tables say of them together
 */
public record Materials(Species wood, Adhesive adhesive, List<Layer> layers, Suits suits) {
  /** Copies the list; refuses nulls and a project without a finish. */
  public Materials {
    Objects.requireNonNull(wood, "wood");
    Objects.requireNonNull(adhesive, "adhesive");
    Objects.requireNonNull(suits, "suits");
    layers = List.copyOf(layers);
    if (layers.isEmpty()) {
      throw new ComponentException("layers", "must not be empty");
    }
  }

  /** One finish, of which no table was asked. */
  public static Materials of(Species wood, Adhesive adhesive, Layer only) {
    return new Materials(wood, adhesive, List.of(only), Suits.NONE);
  }

  /** The finish that is put on last. */
  public Layer top() {
    return layers.get(layers.size() - 1);
  }

  /**
   * Where the finish stands that the bare wood is sanded for: the first that lasts, else the first.
   */
  int baseIndex() {
    for (int i = 0; i < layers.size(); i++) {
      if (layers.get(i).lasts()) {
        return i;
      }
    }
    return 0;
  }

  /** The last finish that lasts by itself, which gives the look; else the last. */
  Layer face() {
    return layers.get(faceIndex());
  }

  /** Where in the list {@link #face} stands. */
  int faceIndex() {
    for (int i = layers.size() - 1; i >= 0; i--) {
      if (layers.get(i).lasts()) {
        return i;
      }
    }
    return layers.size() - 1;
  }

  /**
   * A species as sanding sees it: the middle of its figures; where it states no side hardness, a
   * middling one. Figure is a board's, not a species', and a wood that takes stain unevenly is not
   * figured for that.
   */
  public static SandingWood sandingWood(Species wood) {
    return new SandingWood(
        wood.hardness().orElse(ProjectFigures.HARDNESS).mid(),
        wood.specificGravity().mid() * 1000,
        wood.surface().pores(),
        wood.surface().openGrained(),
        false,
        wood.surface().oily());
  }
}
