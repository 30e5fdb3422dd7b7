package benchlore.schedules.project;

import benchlore.schedules.air.Dust;
import benchlore.schedules.air.DustCapture;
import benchlore.schedules.air.DustRequest;
import benchlore.schedules.air.DustSchedule;
import benchlore.schedules.air.DustSource;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.time.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What sanding the bare wood does to the air of the room, in its longest stretch at once.
 *
 * <p>A vacuum on the sander is taken for granted: a plan has no word for it, and the cautions ask
 * for one. What can't be reckoned refuses no plan; the step says so.
 *
 * @param notes what floats, the mask, when to take it off
 * @param working how that came about
 * @param cautions of the dust
 */
record SandDust(List<Message> notes, List<WorkingLine> working, List<Caution> cautions) {
  private static final SandDust NONE = new SandDust(List.of(), List.of(), List.of());
  private static final double LEAST_KILOGRAM = 1e-6;
  private static final double LONGEST_SECOND = 86_400;

  static SandDust of(ProjectRequest request, List<Interval> slots, double kilogram) {
    double longest = 0;
    double total = 0;
    for (Interval slot : slots) {
      longest = Math.max(longest, slot.seconds());
      total = slot.seconds() + total;
    }
    double removed = total > 0 ? kilogram * longest / total : 0;
    boolean reckoned = longest >= 1 && longest <= LONGEST_SECOND && removed >= LEAST_KILOGRAM;
    if (!reckoned || oldFilm(request)) {
      return NONE;
    }
    return Dust.plan(
            new DustRequest(
                request.shop().room(),
                DustSource.BARE_WOOD,
                removed,
                longest,
                DustCapture.VACUUM,
                OptionalDouble.empty()))
        .fold(SandDust::told, refused -> refused(refused.reasons()));
  }

  /** Its dust may hold lead: sanding says what to do first, and no figure of ours makes it safe. */
  private static boolean oldFilm(ProjectRequest request) {
    for (Part part : request.parts()) {
      if (part.surface() instanceof StartSurface.OldFilm) {
        return true;
      }
    }
    return false;
  }

  private static SandDust told(Answer.Given<DustSchedule> given) {
    DustSchedule dust = given.value();
    List<Message> notes = new ArrayList<>();
    notes.add(
        Message.of(
            "With a vacuum on the sander {0} of it floats in the room in the longest stretch: at"
                + " the end {1} times the limit for wood dust.",
            Quantity.of(dust.airborneKilogram(), Unit.KILOGRAM),
            Quantity.of(dust.peakIndex(), Unit.RATIO)));
    String wear = "Until the air is clear " + dust.respirator().respirator().advice();
    if (dust.clearSecond().isEmpty()) {
      notes.add(Message.of(wear + ", and air the room: as it is, the dust stays for weeks."));
    } else if (dust.clearSecond().getAsDouble() > 0) {
      double clear = dust.clearSecond().getAsDouble();
      notes.add(Message.of(wear + ", {0} after the last stroke.", Quantity.of(clear, Unit.SECOND)));
    } else {
      notes.add(Message.of("While you sand " + dust.respirator().respirator().advice() + "."));
    }
    return new SandDust(notes, given.working(), given.cautions());
  }

  private static SandDust refused(List<Refusal> reasons) {
    List<Message> notes = new ArrayList<>();
    for (Refusal reason : reasons) {
      notes.add(reason.problem());
      notes.add(reason.remedy());
    }
    return new SandDust(notes, List.of(), List.of());
  }
}
