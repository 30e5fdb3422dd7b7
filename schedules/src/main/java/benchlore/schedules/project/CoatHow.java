package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.Directions;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.Species;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a coat is put on, as the finish's own record says it: at most three lines of how and one
 * thing to look for, in full at the first coat, later only what differs.
 *
 * @param finish what goes on
 * @param wood the bare wood it goes on; empty over another finish
 * @param method how
 */
record CoatHow(Finish finish, Optional<Species> wood, ApplicationMethod method) {
  private static final String STIR =
      "Stir its flatting powder up from the bottom, again and again.";

  /**
   * What to do, then what to look for.
   *
   * @param number of the coat, from 1
   * @param last number of the last coat
   * @param sheen of this coat
   * @param before the sheen of the coat below
   */
  List<Message> lines(int number, int last, Optional<Sheen> sheen, Optional<Sheen> before) {
    Directions how = finish.use().how();
    List<Message> lines = new ArrayList<>();
    boolean stir = isFlatted(sheen) && (number == 1 || !sheen.equals(before));
    if (number == 1) {
      wood.flatMap(bare -> WoodNotes.coated(bare, finish)).ifPresent(lines::add);
    }
    String begin = how.begin().map(words -> words + " ").orElse("");
    String on = number == 1 ? begin + how.by(method) : "Put on as coat 1.";
    lines.add(Message.of(on + (stir ? " " + STIR : "")));
    if (number == (isWetOnWet() ? last : 1)) {
      how.afterwards().ifPresent(words -> lines.add(Message.of(words)));
    }
    if (number == 1) {
      lines.add(Message.of("Look for " + how.lookFor()));
    }
    return lines;
  }

  /** Of what the bare wood is wiped with before the first coat. */
  List<Caution> cautions(int number) {
    return number == 1
        ? wood.map(bare -> WoodNotes.coatedCautions(bare, finish)).orElse(List.of())
        : List.of();
  }

  /** How much to pour, also as a shop measures it, and how thick it lies. */
  static Message amount(double cubicMetre, double wetFilmMicron) {
    String spoons = ShopMeasure.of(cubicMetre).map(m -> " (" + m.words() + ")").orElse("");
    return Message.of(
        "Pour out {0}" + spoons + "; a wet film of {1}.",
        Quantity.of(cubicMetre, Unit.CUBIC_METRE_LIQUID),
        Quantity.of(wetFilmMicron, Unit.MICRON));
  }

  /** How the amount came to be told in spoons. */
  static List<WorkingLine> working(double cubicMetre) {
    return ShopMeasure.of(cubicMetre).map(m -> List.of(m.working())).orElse(List.of());
  }

  /** Nothing can be done to a coat that the next goes on wet: it waits for the last. */
  private boolean isWetOnWet() {
    CoatBond bond = finish.film().bond();
    return bond == CoatBond.WHILE_TACKY || bond == CoatBond.WHILE_WET;
  }

  /** Only films that are made in several sheens hold a powder that dulls them. */
  private boolean isFlatted(Optional<Sheen> sheen) {
    boolean powder =
        switch (finish.family()) {
          case NITROCELLULOSE_LACQUER,
              CATALYSED_LACQUER,
              ALKYD_VARNISH,
              OIL_POLYURETHANE,
              SPAR_VARNISH,
              WATERBORNE_ACRYLIC,
              WATERBORNE_POLYURETHANE,
              TWO_PART_POLYURETHANE ->
              finish.role() == FinishRole.FILM;
          default -> false;
        };
    return powder && sheen.map(s -> s != Sheen.GLOSS).orElse(false);
  }
}
