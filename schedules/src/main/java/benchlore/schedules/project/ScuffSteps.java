package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.material.Finish;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;

/**
 * What is sanded just before a coat: the last one scuffed, filler levelled.
 *
 * @param progress what is done already
 * @param place the finish that goes on
 * @param under what lies under it
 * @param time how long all of it takes
 */
record ScuffSteps(Progress progress, CoatJob.Place place, LayerSteps.Under under, Duration time) {
  private static final Caution FINISH_DUST = ShopRows.FINISH_DUST.caution();

  /** What is done before a coat that wants the one under it sanded. */
  Step before(CoatStep coat) {
    return levels(coat) ? level(coat) : scuff(coat);
  }

  private Step scuff(CoatStep coat) {
    boolean below = coat.number() == 1;
    return sanded(
        coat,
        "Scuff with " + grade(place.layer().finish()) + ", wipe clean",
        List.of(
            Message.of(below ? SheenWords.OTHER_BELOW : SheenWords.of(coat.scuff())),
            Message.of(
                "Dull all over, no shiny spots, no bare edges. Vacuum, then a barely damp cloth.")),
        FINISH_DUST);
  }

  /** Whether what is sanded before a coat is filler. */
  private boolean levels(CoatStep coat) {
    return coat.number() == 1 ? under.fills() : place.layer().fills();
  }

  /** Filler comes off all but the pores. */
  private Step level(CoatStep coat) {
    Layer filler = coat.number() == 1 ? under.layer().orElse(place.layer()) : place.layer();
    return sanded(
        coat,
        "Level the filler with " + grade(filler.finish()),
        List.of(Message.of("Until the wood is clean between the pores and each pore is full.")),
        ShopRows.FILLER_DUST.caution());
  }

  private static String grade(Finish finish) {
    return "P" + Numeric.round(finish.use().betweenCoatGrade().high());
  }

  private Step sanded(CoatStep coat, String title, List<Message> notes, Caution dust) {
    StepId id = place.step(StepId.Task.SCUFF, coat.number());
    List<Interval> done = progress.slots(id);
    Moment start = coat.start().plusSeconds(-time.seconds());
    return new Step(
        id,
        title,
        Step.Kind.WORK,
        done.isEmpty() ? List.of(new Interval(start, coat.start())) : done,
        notes,
        List.of(dust),
        List.of(),
        Optional.empty());
  }
}
