package benchlore.schedules.project;

import benchlore.schedules.air.Mist;
import benchlore.schedules.air.MistEstimate;
import benchlore.schedules.air.MistRequest;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Liquid;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * What of a sprayed coat goes past the parts and hangs in the room; the same for every coat.
 *
 * <p>Nothing for a coat that is not sprayed, and for figures no mist can be reckoned from: a plan
 * is refused by the rules of coating and vapour, not by this one.
 *
 * @param notes how much, and when it is gone
 * @param working how that came about
 * @param cautions of the mist
 */
record Overspray(List<Message> notes, List<WorkingLine> working, List<Caution> cautions) {
  private static final Overspray NONE = new Overspray(List.of(), List.of(), List.of());

  /** The gun a plan takes, for its liquid as for its mist. */
  static final SprayGun GUN = SprayGun.HVLP;

  static Overspray of(
      ProjectRequest request, Layer layer, double coatCubicMetre, double sprayingSecond) {
    if (layer.coats().method() != ApplicationMethod.SPRAY) {
      return NONE;
    }
    Liquid liquid = layer.finish().liquid();
    return Mist.plan(
            new MistRequest(
                request.shop().room(),
                GUN,
                new MistRequest.Sprayed(coatCubicMetre, liquid.solidsByVolume()),
                sprayingSecond,
                request.shop().habits().transfer(),
                liquid.hazards().isocyanate()))
        .fold(Overspray::told, refused -> NONE);
  }

  private static Overspray told(Answer.Given<MistEstimate> given) {
    MistEstimate mist = given.value();
    List<Message> notes = new ArrayList<>();
    notes.add(
        Message.of(
            "{0} of solids go past the parts and hang in the room: up to {1} times the limit for"
                + " dust.",
            Quantity.of(mist.mistKilogram(), Unit.KILOGRAM),
            Quantity.of(mist.peakIndex(), Unit.RATIO)));
    if (mist.clearSecond() > 0) {
      notes.add(
          Message.of(
              "The mist is down to that limit {0} after the last pass.",
              Quantity.of(mist.clearSecond(), Unit.SECOND)));
    }
    List<WorkingLine> working = new ArrayList<>();
    for (WorkingLine line : given.working()) {
      working.add(line.named("overspray: " + line.result().name()));
    }
    return new Overspray(notes, working, given.cautions());
  }
}
