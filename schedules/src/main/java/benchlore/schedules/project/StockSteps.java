package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.movement.Fit;
import benchlore.schedules.movement.FitRequest;
import benchlore.schedules.movement.FitSchedule;
import benchlore.schedules.movement.SteadyAir;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;

/** Lets the boards settle in the shop's air, unless they have. */
final class StockSteps {
  private StockSteps() {}

  static void add(ProjectRequest request, PlanBuilder draft) {
    if (request.settled()) {
      return;
    }
    Part thickest = request.parts().get(0);
    for (Part part : request.parts()) {
      thickest = part.thicknessMetre() > thickest.thicknessMetre() ? part : thickest;
    }
    Answer<FitSchedule> answer = Fit.plan(fit(request, thickest, request.moisturePercent()));
    if (answer instanceof Answer.Given<FitSchedule> given) {
      FitSchedule.Settling settling = given.value().settling();
      Moment end = draft.ready().plusSeconds(Math.ceil(settling.highSecond()));
      draft.add(
          new Step(
              StepId.Task.SETTLE.once(),
              "Let the boards settle in the shop",
              Step.Kind.WAIT,
              List.of(new Interval(draft.ready(), end)),
              List.of(
                  Message.of(
                      "Stack them on stickers with air all round for {0} to {1}, until two meter"
                          + " readings a week apart agree.",
                      Quantity.of(settling.lowSecond(), Unit.SECOND),
                      Quantity.of(settling.highSecond(), Unit.SECOND)),
                  Message.of(
                      "They settle to about {0}; that is what they are glued and fitted at below.",
                      Quantity.of(workedPercent(request), Unit.PERCENT))),
              List.of(),
              given.working(),
              Optional.empty()));
      draft.readyFrom(end);
    } else {
      draft.refuse(((Answer.Refused<FitSchedule>) answer).reasons());
    }
  }

  /**
   * Moisture of the wood as it is glued, machined and fitted: what the meter says of settled
   * boards, else what they have settled to by then.
   */
  static double workedPercent(ProjectRequest request) {
    double metered = request.moisturePercent();
    double air = mean(request.shop().climate()).moisturePercent();
    double within = ProjectFigures.SETTLED_WITHIN.high();
    return request.settled() ? metered : Math.max(air - within, Math.min(air + within, metered));
  }

  /** Whether boards that are said to have settled read as far from the shop's air as none do. */
  static boolean readsUnsettled(ProjectRequest request) {
    double air = mean(request.shop().climate()).moisturePercent();
    return Math.abs(request.moisturePercent() - air) > ProjectFigures.METER_OFF.high();
  }

  /** The fit question for a part as it is worked, without an opening or a fixing. */
  static FitRequest fit(ProjectRequest request, Part part) {
    return fit(request, part, workedPercent(request));
  }

  private static FitRequest fit(ProjectRequest request, Part part, double percent) {
    return new FitRequest(
        request.materials().wood(),
        part.rings(),
        part.widthMetre(),
        part.thicknessMetre(),
        percent,
        mean(request.shop().climate()),
        request.place(),
        Optional.empty(),
        Optional.empty());
  }

  private static SteadyAir mean(Climate climate) {
    double humidity = 0;
    for (Climate.Reading reading : climate.hours()) {
      humidity = humidity + reading.relativeHumidityPercent();
    }
    return new SteadyAir(climate.meanCelsius(), humidity / climate.hours().size());
  }
}
