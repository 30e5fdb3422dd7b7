package benchlore.schedules.compatibility;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.CautionRow;
import benchlore.schedules.caution.CoatingRows;
import benchlore.schedules.coating.Coating;
import benchlore.schedules.coating.DryingTimes;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What may go over what, after which wait and with which barrier. The rows are handed in; the
 * deciding is here: a finish over itself follows its own bond, a pair with a row follows the
 * strictest row, a pair that does not hold is given a barrier if two rows make one, and a pair
 * nobody wrote down is refused rather than guessed.
 */
public final class FinishOver {
  private final OverRequest request;
  private final DryingTimes under;

  private FinishOver(OverRequest request, DryingTimes under) {
    this.request = request;
    this.under = under;
  }

  /**
   * Decides one pair.
   *
   * @param request the pair, the coat already there, the rows
   * @return the verdict, explained; refused where the under coat itself can't be reckoned and where
   *     no row covers the pair
   */
  public static Answer<OverVerdict> plan(OverRequest request) {
    return Coating.drying(request.under())
        .fold(
            given -> new FinishOver(request, given.value()).decide(),
            refused -> Answer.refuse(refused.reasons()));
  }

  /**
   * Decides one pair whose under coat is known to the hour.
   *
   * @param request the pair, the coat already there, the rows
   * @param under how that coat dries
   * @return the verdict, explained; refused where no row covers the pair
   */
  public static Answer<OverVerdict> plan(OverRequest request, DryingTimes under) {
    return new FinishOver(request, under).decide();
  }

  private Answer<OverVerdict> decide() {
    FinishFamily upper = request.upper().family();
    FinishFamily below = request.under().finish().family();
    if (upper == below) {
      return itself();
    }
    return strictest(upper, below)
        .map(reason -> byReason(upper, below, reason))
        .orElseGet(() -> Answer.refuse(List.of(unknown())));
  }

  /** The strictest reason of a pair; the longest wait among equals. */
  private Optional<OverReason> strictest(FinishFamily upper, FinishFamily below) {
    return request
        .rules()
        .decide(OverReason.traits(below), OverReason.traits(upper))
        .reasons()
        .stream()
        .reduce((one, other) -> other.stricter(one) ? other : one);
  }

  private Answer<OverVerdict> byReason(FinishFamily upper, FinishFamily below, OverReason reason) {
    return switch (reason.holds()) {
      case YES, SCUFFED -> alone(reason);
      case WITH_BARRIER -> barrier(upper, below, reason, reason.barrier().orElseThrow());
      case NO -> {
        for (FinishFamily family : FinishFamily.values()) {
          boolean between = family != upper && family != below;
          if (between && direct(upper, family) && direct(family, below)) {
            yield barrier(upper, below, reason, family);
          }
        }
        yield alone(reason);
      }
    };
  }

  /** Whether a pair holds without anything between, by a row. */
  private boolean direct(FinishFamily upper, FinishFamily below) {
    Optional<OverReason> reason = strictest(upper, below);
    return reason.isPresent() && reason.get().holds().compareTo(OverReason.Holds.SCUFFED) <= 0;
  }

  private Answer<OverVerdict> alone(OverReason reason) {
    return given(reason.holds(), List.of(), List.of(reason), reason);
  }

  private Answer<OverVerdict> barrier(
      FinishFamily upper, FinishFamily below, OverReason reason, FinishFamily between) {
    Optional<OverReason> lower = strictest(between, below);
    List<OverReason> used = new ArrayList<>(List.of(reason));
    // The row for what goes straight onto the under coat says how long to wait.
    OverReason touching = lower.orElse(reason);
    for (Optional<OverReason> next : List.of(lower, strictest(upper, between))) {
      next.ifPresent(used::add);
      if (next.isPresent() && next.get().holds() == OverReason.Holds.NO) {
        return given(OverReason.Holds.NO, List.of(), used, reason);
      }
    }
    return given(OverReason.Holds.WITH_BARRIER, List.of(between), used, touching);
  }

  private Answer<OverVerdict> itself() {
    Finish finish = request.upper();
    boolean scuff = finish.film().bond() == CoatBond.SCUFF_ALWAYS;
    String why =
        scuff
            ? "This finish holds on its own last coat once that is scuffed."
            : "This finish holds on its own last coat once the recoat window has opened.";
    return alone(
        new OverReason(
            scuff ? OverReason.Holds.SCUFFED : OverReason.Holds.YES,
            scuff ? Stage.SAND : Stage.RECOAT_OPENS,
            Optional.empty(),
            why,
            Provenance.computed()));
  }

  private Answer<OverVerdict> given(
      OverReason.Holds holds, List<FinishFamily> between, List<OverReason> used, OverReason first) {
    Optional<Moment> from =
        holds == OverReason.Holds.NO ? Optional.empty() : moment(first.waitUntil());
    boolean scuff = first.holds() == OverReason.Holds.SCUFFED;
    List<String> why = used.stream().map(OverReason::why).toList();
    OverVerdict value = new OverVerdict(holds, from, scuff, between, why, used);
    return Answer.of(value, lines(value, first), cautions(value));
  }

  /** The moment of a stage; the next later one stated where the finish does not state it. */
  private Optional<Moment> moment(Stage stage) {
    for (Stage at : Stage.values()) {
      if (at.compareTo(stage) >= 0 && at != Stage.RECOAT_CLOSES) {
        Optional<Moment> moment = under.moment(at);
        if (moment.isPresent()) {
          return moment;
        }
      }
    }
    return under.moment(Stage.RECOAT_OPENS);
  }

  private List<WorkingLine> lines(OverVerdict value, OverReason first) {
    if (value.from().isEmpty()) {
      return List.of();
    }
    double wait = under.start().secondsUntil(value.from().get());
    return List.of(
        new WorkingLine(
            QuantityKey.WAIT_AFTER_THE_UNDER_COAT,
            Figure.computed("wait after the under coat", wait, Unit.SECOND),
            "wait = the under coat's stage: " + first.waitUntil().words(),
            List.of(Figure.computed("thickness factor", under.thicknessFactor(), Unit.RATIO)),
            first.from()));
  }

  private static List<Caution> cautions(OverVerdict value) {
    CautionRow row =
        switch (value.holds()) {
          case YES, SCUFFED -> CoatingRows.TRY_ON_OFFCUT;
          case WITH_BARRIER -> CoatingRows.BARRIER_WITHOUT_GAPS;
          case NO -> CoatingRows.DOES_NOT_HOLD;
        };
    return List.of(row.caution());
  }

  private static Refusal unknown() {
    return Refusal.of(
        "rules",
        "Nobody has written down how this finish behaves over that one.",
        "Ask both makers and try it on an offcut; a thin coat of dewaxed shellac between is the"
            + " usual barrier.");
  }
}
