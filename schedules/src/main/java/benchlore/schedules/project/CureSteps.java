package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.CoatingSchedule;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.sanding.RubOut;
import benchlore.schedules.sanding.RubOutRequest;
import benchlore.schedules.sanding.RubOutSchedule;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;

/** From the last coat to the finished, installed parts. */
final class CureSteps {
  private static final List<Message> CURED =
      List.of(
          Message.of(
              "The day is a guess; the film tells: a thumbnail pressed into a hidden spot leaves no"
                  + " mark, and with the nose to it nothing smells. Warmth and moving air shorten"
                  + " it."));

  private CureSteps() {}

  static void add(ProjectRequest request, PlanBuilder draft, CoatingSchedule coats) {
    Moment last = coats.last().start();
    Moment use = coats.moment(Stage.LIGHT_USE).orElse(last);
    Moment stack = coats.moment(Stage.STACK).orElse(use);
    Moment fit = stack.orLater(use);
    Moment cured = coats.moment(Stage.FULL_CURE).orElse(fit);
    wait(
        draft,
        StepId.Task.DRY.once(),
        "Let the last coat dry before it is handled much",
        new Interval(draft.ready(), draft.ready().orLater(fit)),
        List.of(
            Message.of(
                "Until faces may touch without sticking: press a thumb hard on a hidden spot, and it"
                    + " leaves no print. A warmer room shortens it.")));
    draft.readyFrom(coats.rubOut() && cured.isAfter(fit) ? cured : fit);
    if (coats.rubOut()) {
      wait(
          draft,
          StepId.Task.CURE_BEFORE_RUBBING.once(),
          "Full cure before rubbing out",
          new Interval(fit, fit.orLater(cured)),
          CURED);
      rubOut(request, draft, coats);
    }
    install(request, draft);
    if (!coats.rubOut()) {
      Moment from = draft.ready().isBefore(cured) ? draft.ready() : cured;
      wait(
          draft,
          StepId.Task.CURE.once(),
          "Full cure: no water, no wax, nothing left standing on it",
          new Interval(from, from.orLater(cured.date().plusDays(1).at(0, 0))),
          CURED);
    }
  }

  private static void wait(
      PlanBuilder draft, StepId id, String title, Interval slot, List<Message> notes) {
    if (slot.seconds() > 0) {
      draft.add(Step.waiting(id, title, slot, notes, List.of()));
    }
  }

  private static void install(ProjectRequest request, PlanBuilder draft) {
    List<Interval> slots =
        draft.book(
            StepId.Task.INSTALL.once(),
            "fitting the parts",
            FitTime.installSecond(request.parts()));
    if (!slots.isEmpty()) {
      draft.add(
          new Step(
              StepId.Task.INSTALL.once(),
              "Fit the finished parts",
              Step.Kind.WORK,
              slots,
              List.of(
                  Message.of(
                      "Fit them as at the dry fit. Drive no screw into a film that still dents.")),
              List.of(),
              List.of(),
              Optional.empty()));
    }
  }

  /** Rubs a film out before what goes over it: wax on a film that is not sold in its sheen. */
  static void between(ProjectRequest request, PlanBuilder draft, CoatingSchedule coats) {
    Moment cured = coats.moment(Stage.FULL_CURE).orElse(draft.ready());
    wait(
        draft,
        StepId.Task.CURE_BEFORE_RUBBING.once(),
        "Full cure before rubbing out",
        new Interval(draft.ready(), draft.ready().orLater(cured)),
        CURED);
    draft.readyFrom(cured);
    rubOut(request, draft, coats);
  }

  private static void rubOut(ProjectRequest request, PlanBuilder draft, CoatingSchedule coats) {
    double area = 0;
    for (Part part : request.parts()) {
      area = part.coatedSquareMetre() + area;
    }
    Answer<RubOutSchedule> answer =
        RubOut.plan(
            new RubOutRequest(
                request.materials().face().coats().sheen(),
                coats.dryFilm().value(),
                ProjectFigures.LEVEL.high(),
                area,
                request.shop().sanding()));
    if (answer instanceof Answer.Refused<RubOutSchedule> refused) {
      draft.refuse(refused.reasons());
      return;
    }
    Answer.Given<RubOutSchedule> given = (Answer.Given<RubOutSchedule>) answer;
    List<Interval> slots =
        draft.book(StepId.Task.RUB_OUT.once(), "rubbing out", given.value().seconds());
    if (!slots.isEmpty()) {
      draft.add(
          new Step(
              StepId.Task.RUB_OUT.once(),
              "Rub out to the sheen",
              Step.Kind.WORK,
              slots,
              List.of(
                  Message.of(
                      "It takes {0} of film and leaves {1}; stay off the edges until last.",
                      Quantity.of(given.value().removedMicron(), Unit.MICRON),
                      Quantity.of(given.value().leftMicron(), Unit.MICRON))),
              given.cautions(),
              given.working(),
              Optional.empty()));
    }
  }
}
