package benchlore.schedules.project;

import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.glueup.GlueBead;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Directions;
import benchlore.schedules.material.Species;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * How an adhesive is mixed, spread and cleaned up, as its own record says it.
 *
 * @param adhesive what is spread
 * @param wood what it is spread on
 */
record GlueHow(Adhesive adhesive, Species wood) {
  /**
   * At most three lines of how, then what to look for: in full at the first glue-up.
   *
   * @param number of the glue-up, from 1
   */
  List<Message> lines(int number) {
    if (number > 1) {
      return List.of(Message.of("Mix and spread as at the first glue-up."));
    }
    Directions how = adhesive.spreading().how();
    List<Message> lines = new ArrayList<>();
    how.begin().ifPresent(words -> lines.add(Message.of(words)));
    lines.add(Message.of(how.putOn()));
    WoodNotes.glued(wood, adhesive).ifPresent(lines::add);
    lines.add(Message.of("Look for " + how.lookFor()));
    return lines;
  }

  /**
   * Once the first clamps are off; nothing where the record says nothing.
   *
   * @param number of the glue-up, from 1
   */
  List<Message> afterwards(int number) {
    if (number > 1) {
      return List.of();
    }
    return adhesive
        .spreading()
        .how()
        .afterwards()
        .map(w -> List.of(Message.of(w)))
        .orElse(List.of());
  }

  /**
   * How much for one blank, as a shop measures it: a bead where it comes out of a bottle, spoons
   * where it is poured; what is mixed is weighed.
   *
   * @param kilogram for one blank
   * @param widthMetre of its joints
   */
  Message amount(double kilogram, double widthMetre) {
    Quantity mass = Quantity.of(kilogram, Unit.KILOGRAM);
    if (adhesive.spreading().laid() == Adhesive.Laid.BEAD) {
      GlueBead bead = GlueBead.of(adhesive, widthMetre);
      String beads = bead.beads() == 1 ? "A bead" : bead.beads() + " beads";
      return Message.of(
          beads
              + " of {0} along "
              + (bead.faces() == 1 ? "one edge" : "both edges")
              + " of each joint: {1} for each blank.",
          Quantity.of(bead.diameterMetre(), Unit.METRE),
          mass);
    }
    boolean mixed = adhesive.times().potLife().isPresent();
    String spoons =
        mixed
            ? ""
            : ShopMeasure.of(kilogram / adhesive.line().density().mid())
                .map(m -> " (" + m.words() + ")")
                .orElse("");
    return Message.of("Pour out {0}" + spoons + " for each.", mass);
  }

  /** How that came about. */
  List<WorkingLine> working(double widthMetre) {
    return adhesive.spreading().laid() == Adhesive.Laid.BEAD
        ? List.of(GlueBead.of(adhesive, widthMetre).working())
        : List.of();
  }
}
