package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.CautionRow;
import benchlore.schedules.caution.CoatingRows;
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
public final class Compatibility {
  private final CompatibilityRequest request;
  private final DryingTimes under;
  private final OverTable table;

  private Compatibility(CompatibilityRequest request, DryingTimes under) {
    this.request = request;
    this.under = under;
    this.table = new OverTable(request.rules());
  }

  /**
   * Decides one pair.
   *
   * @param request the pair, the coat already there, the rows
   * @return the verdict, explained; refused where the under coat itself can't be reckoned and where
   *     no row covers the pair
   */
  public static Answer<OverVerdict> plan(CompatibilityRequest request) {
    return Drying.plan(request.under())
        .fold(
            given -> new Compatibility(request, given.value()).decide(),
            refused -> Answer.refuse(refused.reasons()));
  }

  private Answer<OverVerdict> decide() {
    FinishFamily upper = request.upper().family();
    FinishFamily below = request.under().finish().family();
    Optional<OverRule> rule = table.strictest(upper, below);
    if (rule.isPresent()) {
      return byRule(rule.get());
    }
    return upper == below ? itself() : Answer.refuse(List.of(unknown()));
  }

  private Answer<OverVerdict> byRule(OverRule rule) {
    List<String> why = new ArrayList<>(List.of(rule.why()));
    return switch (rule.verdict()) {
      case YES -> given(rule.verdict(), List.of(), why, List.of(rule));
      case SCUFFED -> given(rule.verdict(), List.of(), why, List.of(rule));
      case WITH_BARRIER -> barrier(rule, rule.barrier().orElseThrow(), why);
      case NO -> {
        List<FinishFamily> found = table.barriers(rule.upper(), rule.under());
        yield found.isEmpty()
            ? given(rule.verdict(), List.of(), why, List.of(rule))
            : barrier(rule, found.get(0), why);
      }
    };
  }

  private Answer<OverVerdict> barrier(OverRule rule, FinishFamily between, List<String> why) {
    List<OverRule> used = new ArrayList<>(List.of(rule));
    table.strictest(between, rule.under()).ifPresent(used::add);
    table.strictest(rule.upper(), between).ifPresent(used::add);
    for (OverRule row : used.subList(1, used.size())) {
      why.add(row.why());
      if (row.verdict() == OverRule.Verdict.NO) {
        return given(OverRule.Verdict.NO, List.of(), why, used);
      }
    }
    return given(OverRule.Verdict.WITH_BARRIER, List.of(between), why, used);
  }

  private Answer<OverVerdict> itself() {
    Finish finish = request.upper();
    boolean scuff = finish.bond() == CoatBond.SCUFF_ALWAYS;
    String why =
        scuff
            ? "This finish holds on its own last coat once that is scuffed."
            : "This finish holds on its own last coat once the recoat window has opened.";
    OverRule own =
        new OverRule(
            finish.family(),
            finish.family(),
            scuff ? OverRule.Verdict.SCUFFED : OverRule.Verdict.YES,
            scuff ? Stage.SAND : Stage.RECOAT_OPENS,
            Optional.empty(),
            why,
            Provenance.computed());
    return given(own.verdict(), List.of(), List.of(why), List.of(own));
  }

  private Answer<OverVerdict> given(
      OverRule.Verdict verdict, List<FinishFamily> between, List<String> why, List<OverRule> used) {
    OverRule first = touching(between, used);
    Optional<Moment> from =
        verdict == OverRule.Verdict.NO ? Optional.empty() : moment(first.waitUntil());
    boolean scuff = first.verdict() == OverRule.Verdict.SCUFFED;
    OverVerdict value = new OverVerdict(verdict, from, scuff, between, why, used);
    return Answer.of(value, lines(value, first), cautions(value));
  }

  /** The row for what goes straight onto the under coat; the deciding row where there is none. */
  private static OverRule touching(List<FinishFamily> between, List<OverRule> used) {
    for (OverRule row : used) {
      if (between.contains(row.upper())) {
        return row;
      }
    }
    return used.get(0);
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

  private List<WorkingLine> lines(OverVerdict value, OverRule first) {
    if (value.from().isEmpty()) {
      return List.of();
    }
    double wait = under.start().secondsUntil(value.from().get());
    return List.of(
        new WorkingLine(
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
