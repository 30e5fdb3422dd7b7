package benchlore.schedules.project;

import benchlore.schedules.air.Air;
import benchlore.schedules.air.AirRequest;
import benchlore.schedules.air.AirSchedule;
import benchlore.schedules.air.Release;
import benchlore.schedules.air.Respirator;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Hazards;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The air of the room at a coat, and what a plan says of it: the way out first, then the mask. */
final class CoatAir {
  private CoatAir() {}

  /**
   * The air at one coat.
   *
   * @param shop where
   * @param layer which finish, and how it goes on
   * @param coatCubicMetre liquid for it
   * @param workSecond from the first stroke to the last
   * @param coatSecond the same with getting ready and cleaning up
   * @return empty if nothing but water evaporates
   */
  static Optional<Answer<AirSchedule>> plan(
      Shop shop, Layer layer, double coatCubicMetre, double workSecond, double coatSecond) {
    Finish finish = layer.finish();
    Hazards hazards = finish.liquid().hazards();
    double voc = finish.liquid().voc().mid();
    double kilogram = voc * coatCubicMetre;
    if (layer.solvents().isEmpty() || !(kilogram > 0)) {
      return Optional.empty();
    }
    Release release =
        new Release(
            0,
            kilogram,
            layer.solvents(),
            layer.coats().method(),
            Optional.empty(),
            workSecond,
            hazards
                .flashPoint()
                .map(point -> OptionalDouble.of(point.low()))
                .orElse(OptionalDouble.empty()));
    return Optional.of(
        told(
            Air.plan(
                new AirRequest(
                    shop.room(),
                    List.of(release),
                    shop.ignition(),
                    hazards.isocyanate(),
                    hazards.formaldehyde(),
                    hazards.selfHeatingRags())),
            coatSecond));
  }

  /** No time to come back while the coat still goes on. */
  private static Answer<AirSchedule> told(Answer<AirSchedule> answer, double coatSecond) {
    if (!(answer instanceof Answer.Given<AirSchedule> given)) {
      return answer;
    }
    AirSchedule told = given.value().afterWork(coatSecond);
    List<WorkingLine> working = new ArrayList<>();
    for (WorkingLine line : given.working()) {
      boolean back = line.key() == QuantityKey.RE_ENTRY;
      if (!back || told.reEntries().get(0).second().isPresent()) {
        working.add(line);
      }
    }
    return Answer.of(told, working, given.cautions());
  }

  /**
   * What the plan says of the air: whole at the first coat, by its short names at the others.
   *
   * @param usual the mask its record names
   * @param first whether this is the first coat
   * @param coatOne what the first coat is called
   */
  static List<Message> notes(AirSchedule air, Respirator usual, boolean first, String coatOne) {
    Respirator mask = air.respirator().respirator();
    String wear = mask == Respirator.NONE ? "" : " " + capital(mask.advice());
    if (!first) {
      String mask1 = wear.isEmpty() ? "" : wear + ".";
      return List.of(Message.of("Air as at " + coatOne + ": window and fan." + mask1));
    }
    List<Message> notes = new ArrayList<>();
    notes.add(
        Message.of(
            "Window open and the fan on until the film is dry."
                + (wear.isEmpty() ? none(usual) : wear + ".")));
    notes.add(back(air.reEntries().get(0)));
    notes.addAll(air.respirator().limits());
    return notes;
  }

  /** Where the air is ample: the mask to have for when it is not. */
  private static String none(Respirator usual) {
    return usual == Respirator.NONE
        ? " No mask needed."
        : " With that much air no mask is needed; with less, " + usual.advice() + ".";
  }

  private static Message back(AirSchedule.ReEntry back) {
    return back.second().isPresent()
        ? Message.of(
            "Keep others out until about {0} after you begin.",
            Quantity.of(back.second().getAsDouble(), Unit.SECOND))
        : Message.of(back.verdict().words());
  }

  private static String capital(String words) {
    char first = words.charAt(0);
    return first >= 'a' && first <= 'z' ? (char) (first - 32) + words.substring(1) : words;
  }
}
