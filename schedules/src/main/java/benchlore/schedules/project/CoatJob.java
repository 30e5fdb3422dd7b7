package benchlore.schedules.project;

import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.CoatSessions;
import benchlore.schedules.coating.CoatedArea;
import benchlore.schedules.coating.CoatingRequest;
import benchlore.schedules.coating.QuantityRequest;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The coats of one finish of a project as a question to the coating rules.
 *
 * @param request the project
 * @param place which finish, and what lies under it
 * @param scuffTime time to scuff all of it
 * @param coatTime time to put one coat on
 */
record CoatJob(ProjectRequest request, Place place, Duration scuffTime, Duration coatTime) {
  /**
   * A finish among the others.
   *
   * @param layer which
   * @param before how many coats of others lie under it
   * @param scuffed whether the last of those is scuffed for it
   */
  record Place(Layer layer, int before, boolean scuffed) {
    /** The step of this task at one of its coats, counted from the wood. */
    StepId step(StepId.Task task, int coat) {
      return task.number(before + coat);
    }
  }

  /**
   * The job, begun at a moment.
   *
   * @param start when the first coat goes on
   */
  CoatingRequest from(Moment start) {
    CoatChoice coats = place.layer().coats();
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
            place.layer().finish(),
            new CoatedArea(faces, edges, true),
            coats.coats(),
            coats.wetFilmMicron(),
            coats.method(),
            Overspray.GUN,
            coats.method() == ApplicationMethod.SPRAY
                ? request.shop().habits().transfer()
                : OptionalDouble.empty());
    return new CoatingRequest(
        quantity,
        request.shop().climate(),
        start,
        sessions,
        coats.sheen(),
        laidSoFar(),
        place.scuffed());
  }

  /** When its coats went on that are done. */
  List<Moment> laid() {
    List<Moment> laid = new ArrayList<>();
    int number = 0;
    for (Interval slot : request.progress().run(StepId.Task.COAT)) {
      number++;
      if (number > place.before() && laid.size() < place.layer().coats().coats()) {
        laid.add(slot.start());
      }
    }
    return laid;
  }

  private CoatingRequest.Laid laidSoFar() {
    List<Moment> laid = laid();
    boolean scuffed =
        !request.progress().slots(place.step(StepId.Task.SCUFF, laid.size() + 1)).isEmpty();
    return new CoatingRequest.Laid(laid, scuffed, request.progress().resume());
  }
}
