package benchlore.schedules.project;

import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.CoatSessions;
import benchlore.schedules.coating.CoatedArea;
import benchlore.schedules.coating.CoatingRequest;
import benchlore.schedules.coating.QuantityRequest;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;

/**
 * The coats of a project as a question to the coating rules.
 *
 * @param request the project
 * @param scuffTime time to scuff all of it
 * @param coatTime time to put one coat on
 */
record CoatJob(ProjectRequest request, Duration scuffTime, Duration coatTime) {
  /**
   * The job, begun at a moment.
   *
   * @param start when the first coat goes on
   */
  CoatingRequest from(Moment start) {
    CoatSessions sessions = new CoatSessions(request.shop().week(), scuffTime, coatTime);
    double edges = 0;
    double faces = 0;
    for (Part part : request.parts()) {
      CoatedArea one =
          CoatedArea.of(
              part.lengthMetre(), part.widthMetre(), part.thicknessMetre(), part.count(), true);
      faces = faces + one.faceSquareMetre();
      edges = edges + one.edgeSquareMetre();
    }
    QuantityRequest quantity =
        new QuantityRequest(
            request.materials().finish(),
            new CoatedArea(faces, edges, true),
            request.coats().coats(),
            request.coats().wetFilmMicron(),
            request.coats().method(),
            Overspray.GUN);
    return new CoatingRequest(
        quantity, request.shop().climate(), start, sessions, request.coats().sheen(), laidSoFar());
  }

  /** When the coats went on that are done. */
  List<Moment> laid() {
    List<Moment> laid = new ArrayList<>();
    for (Interval slot : request.progress().run(StepId.Task.COAT)) {
      laid.add(slot.start());
    }
    return laid;
  }

  private CoatingRequest.Laid laidSoFar() {
    List<Moment> laid = laid();
    boolean scuffed =
        !request.progress().slots(StepId.Task.SCUFF.number(laid.size() + 1)).isEmpty();
    return new CoatingRequest.Laid(laid, scuffed, request.progress().resume());
  }
}
