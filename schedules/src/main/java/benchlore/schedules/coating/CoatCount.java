package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/**
 * Coats to a target film: the smallest whole number whose dry films add up to it, refused where
 * that passes the finish's thickest sound film (a lacquer too thick cracks).
 */
final class CoatCount {
  private CoatCount() {}

  static Answer<Quantity> plan(CoatsRequest request) {
    Finish finish = request.finish();
    Checks checks = new Checks();
    FinishChecks.check(checks, finish);
    checks.within("wetFilmMicron", request.wetFilmMicron(), 1, 1000, Unit.MICRON);
    checks.within("targetDryFilmMicron", request.targetDryFilmMicron(), 0.1, 2000, Unit.MICRON);
    checks.require(
        finish.role() == FinishRole.FILM || finish.role() == FinishRole.SEALER,
        "finish",
        "This finish soaks in or colours; it does not build a film to a thickness.",
        "Follow the label's number of coats, or choose a film finish.");
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    double dry = FilmThickness.dryMicron(finish, request.wetFilmMicron());
    int coats = Numeric.ceil(request.targetDryFilmMicron() / dry);
    tooThick(checks, finish, dry * coats);
    return checks.isValid()
        ? Answer.of(Quantity.of(coats, Unit.COUNT), List.of(line(request, dry, coats)), List.of())
        : Answer.refuse(checks.refusals());
  }

  /** Adds a refusal if the whole film is thicker than the finish stands. */
  static void tooThick(Checks checks, Finish finish, double dryFilmMicron) {
    double limit =
        finish.film().maximumDryFilm().map(SourcedRange::low).orElse(Double.POSITIVE_INFINITY);
    if (dryFilmMicron > limit + 1e-9) {
      checks.add(
          new Refusal(
              "coats",
              Message.of(
                  "The coats would build {0}; this finish cracks or stays soft above {1}.",
                  Quantity.of(dryFilmMicron, Unit.MICRON), Quantity.of(limit, Unit.MICRON)),
              Message.of("Use fewer or thinner coats.")));
    }
  }

  private static WorkingLine line(CoatsRequest request, double dry, int coats) {
    return new WorkingLine(
        QuantityKey.COATS_NEEDED,
        Figure.computed("coats", coats, Unit.COUNT),
        "coats = target dry film / dry film of one coat, rounded up",
        List.of(
            Figure.input("target dry film", request.targetDryFilmMicron(), Unit.MICRON),
            Figure.computed("dry film of one coat", dry, Unit.MICRON)),
        FilmThickness.DRY_RULE);
  }
}
