package benchlore.schedules.project;

import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a coat of all parts fits a stretch of the shop's hours: a coat can't be laid down half
 * done. If it does not, how many batches of parts would, each with evenings of its own.
 */
final class CoatStretch {
  private static final double MINUTE = 60;

  private final ProjectRequest request;
  private final double paceSecond;

  private final int coats;

  private CoatStretch(ProjectRequest request, CoatChoice choice) {
    this.request = request;
    this.coats = choice.coats();
    this.paceSecond =
        ProjectFigures.pace(choice.method()).high() + ProjectFigures.SCUFF_PACE.high();
  }

  /**
   * Why the coats can't be laid out, if no stretch is long enough.
   *
   * @param choice how the finish goes on
   * @param from the first moment a coat may go on
   * @param sessionSecond scuffing and coating all parts in one go
   */
  static Optional<Refusal> refusal(
      ProjectRequest request, CoatChoice choice, Moment from, double sessionSecond) {
    if (request.shop().week().unbroken(from, sessionSecond).isPresent()) {
      return Optional.empty();
    }
    CoatStretch stretch = new CoatStretch(request, choice);
    return Optional.of(
        new Refusal(
            "shop.week",
            Message.of(
                "A coat on all parts with its scuffing takes {0} in one go; the longest stretch of"
                    + " shop hours is {1}.",
                Quantity.of(sessionSecond, Unit.SECOND),
                Quantity.of(stretch.longestSecond(), Unit.SECOND)),
            stretch.remedy()));
  }

  private Message remedy() {
    int batches = batches();
    if (batches == 0) {
      return Message.of(
          "Not even the largest part fits such a stretch alone: give longer hours on one day, or more"
              + " hands.");
    }
    return Message.of(
        "Coat in {0} batches of parts, a plan each, on {1} evenings in all instead of {2}; or give"
            + " longer hours on one day.",
        Quantity.of(batches, Unit.COUNT),
        Quantity.of(batches * (double) coats, Unit.COUNT),
        Quantity.of(coats, Unit.COUNT));
  }

  /** The longest stretch of a week. */
  private double longestSecond() {
    double longest = 0;
    for (List<ShopWeek.Span> day : request.shop().week().days()) {
      for (ShopWeek.Span span : day) {
        double minutes = span.toMinuteExclusive() - (double) span.fromMinuteInclusive();
        longest = Math.max(longest, minutes * MINUTE);
      }
    }
    return longest;
  }

  /** Batches that fit the longest stretch, the largest parts first; 0 if one part is too large. */
  int batches() {
    double room = longestSecond() - ProjectFigures.AROUND_A_COAT.high();
    List<Double> left = new ArrayList<>();
    for (double piece : pieces()) {
      if (piece > room) {
        return 0;
      }
      int batch = 0;
      while (batch < left.size() && left.get(batch) < piece) {
        batch++;
      }
      if (batch == left.size()) {
        left.add(room);
      }
      left.set(batch, left.get(batch) - piece);
    }
    return left.size();
  }

  /** Seconds to scuff and coat each single part, the largest first. */
  private List<Double> pieces() {
    List<Double> pieces = new ArrayList<>();
    for (Part part : request.parts()) {
      double one = part.coatedSquareMetre() / part.count() * paceSecond;
      for (int i = 0; i < part.count(); i++) {
        pieces.add(one);
      }
    }
    pieces.sort((a, b) -> Double.compare(b, a));
    return pieces;
  }
}
