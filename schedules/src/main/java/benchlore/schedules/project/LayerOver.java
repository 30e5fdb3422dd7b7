package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.coating.DryingTimes;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.compatibility.FinishOver;
import benchlore.schedules.compatibility.OverReason;
import benchlore.schedules.compatibility.OverRequest;
import benchlore.schedules.compatibility.OverRow;
import benchlore.schedules.compatibility.OverVerdict;
import benchlore.schedules.compatibility.Rules;
import benchlore.schedules.material.Finish;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether the finishes of a project hold on each other, and when the next may follow. */
final class LayerOver {
  // Any moment will do: the air is the same all day.
  private static final Moment ANY = Moment.of(2027, 1, 1, 9, 0);

  private final Suits suits;
  private final Rules<OverReason> rules;

  LayerOver(Suits suits) {
    this.suits = suits;
    this.rules = OverRow.rules(suits.over());
  }

  /** Every pair that does not hold as it is, with its reason and what to put between. */
  List<Refusal> refusals(List<Layer> layers) {
    List<Refusal> refusals = new ArrayList<>();
    for (int i = 1; i < layers.size(); i++) {
      refusal(layers.get(i), layers.get(i - 1)).ifPresent(refusals::add);
    }
    return refusals;
  }

  private Optional<Refusal> refusal(Layer upper, Layer under) {
    String pair = upper.title() + " over " + under.title() + ": ";
    return usual(upper, under)
        .fold(
            given -> refusal(pair, given.value()), refused -> Optional.of(unknown(pair, refused)));
  }

  private Optional<Refusal> refusal(String pair, OverVerdict verdict) {
    if (verdict.holds().compareTo(OverReason.Holds.SCUFFED) <= 0) {
      return Optional.empty();
    }
    String why = pair + verdict.why().get(0);
    String remedy =
        verdict.barrier().isEmpty()
            ? "Leave one of the two out, or choose another."
            : "Put a finish between: " + suits.named(verdict.barrier().get(0)) + ".";
    return Optional.of(Refusal.of("finishes", why, remedy));
  }

  private static Refusal unknown(String pair, Answer.Refused<OverVerdict> refused) {
    Refusal first = refused.reasons().get(0);
    Message problem = first.problem();
    return new Refusal(
        "finishes", new Message(pair + problem.pattern(), problem.quantities()), first.remedy());
  }

  /** The pair in the air the under coat's own figures hold for. */
  private Answer<OverVerdict> usual(Layer upper, Layer under) {
    Finish below = under.finish();
    Climate air =
        Climate.steady(
            below.air().referenceTemperature().mid(), below.air().referenceHumidity().mid());
    DryingRequest coat = new DryingRequest(below, under.coats().wetFilmMicron(), air, ANY);
    return FinishOver.plan(new OverRequest(upper.finish(), coat, rules));
  }

  /** Whether what lies under the finish at a place in the list is scuffed for it. */
  boolean scuffsBelow(List<Layer> layers, int at) {
    return at > 0 && scuffed(layers.get(at), layers.get(at - 1));
  }

  /** Whether the lower one is scuffed for the upper; of a pair that does not hold, no. */
  private boolean scuffed(Layer upper, Layer under) {
    return usual(upper, under).fold(given -> scuffs(upper, under, given.value()), refused -> false);
  }

  /**
   * When a finish may follow another.
   *
   * @param from the first moment
   * @param scuffed whether the lower one is scuffed for it
   * @param why the rows' own words
   */
  record Next(Moment from, boolean scuffed, List<String> why) {}

  /** The next finish over a coat that is on, or planned; empty if it does not hold. */
  Optional<Next> after(Layer upper, Layer under, DryingTimes last, DryingRequest coat) {
    return FinishOver.plan(new OverRequest(upper.finish(), coat, rules), last)
        .fold(given -> next(upper, under, last, given.value()), refused -> Optional.empty());
  }

  private static Optional<Next> next(
      Layer upper, Layer under, DryingTimes last, OverVerdict verdict) {
    boolean scuffed = scuffs(upper, under, verdict);
    Optional<Moment> sand = scuffed ? last.moment(Stage.SAND) : Optional.empty();
    return verdict
        .from()
        .map(from -> new Next(sand.map(from::orLater).orElse(from), scuffed, verdict.why()));
  }

  /** As a row says; a film is denibbed for the next of its own family too, a filler levelled. */
  private static boolean scuffs(Layer upper, Layer under, OverVerdict verdict) {
    boolean own = upper.finish().family() == under.finish().family();
    return verdict.scuff()
        || under.fills()
        || (own && under.lasts() && under.finish().sandedBetweenCoats());
  }
}
