package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.compatibility.FinishOver;
import benchlore.schedules.compatibility.OverReason;
import benchlore.schedules.compatibility.OverRequest;
import benchlore.schedules.compatibility.OverVerdict;
import benchlore.schedules.compatibility.Rule;
import benchlore.schedules.compatibility.Rules;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What goes over what: the engine decides by rows handed in. */
class FinishOverTest {
  private static final Moment NINE = Moment.of(2026, 5, 4, 9, 0);

  private static Rule<OverReason> row(
      FinishFamily upper, FinishFamily under, OverReason.Holds holds, Stage wait) {
    return reason(holds, wait, Optional.empty(), upper + " on " + under)
        .on(List.of(upper), List.of(under));
  }

  private static OverReason reason(
      OverReason.Holds holds, Stage wait, Optional<FinishFamily> barrier, String why) {
    return new OverReason(holds, wait, barrier, why, from());
  }

  private static Provenance from() {
    return Provenance.commonPractice("invented for a test");
  }

  private static Answer<OverVerdict> decide(
      FinishMaker upper, FinishMaker under, List<Rule<OverReason>> rows) {
    DryingRequest coat =
        new DryingRequest(under.make(), under.wetFilm, Climate.steady(20, 50), NINE);
    return FinishOver.plan(new OverRequest(upper.make(), coat, new Rules<>(rows)));
  }

  @Test
  void aRowDecidesVerdictWaitAndScuff() {
    Rule<OverReason> rule =
        row(
            FinishFamily.OIL_POLYURETHANE,
            FinishFamily.NITROCELLULOSE_LACQUER,
            OverReason.Holds.SCUFFED,
            Stage.SAND);
    OverVerdict verdict =
        Answers.value(decide(FinishMaker.oil(), FinishMaker.lacquer(), List.of(rule)));
    assertEquals(OverReason.Holds.SCUFFED, verdict.holds());
    assertTrue(verdict.scuff());
    assertEquals(Optional.of(NINE.plusHours(3)), verdict.from());
    assertEquals(List.of(rule.reason().why()), verdict.why());
    assertEquals(List.of(rule.reason()), verdict.rules());
  }

  @Test
  void theStrictestOfSeveralRowsDecides() {
    Rule<OverReason> soft =
        row(
            FinishFamily.OIL_POLYURETHANE,
            FinishFamily.NITROCELLULOSE_LACQUER,
            OverReason.Holds.YES,
            Stage.FULL_CURE);
    Rule<OverReason> hard =
        row(
            FinishFamily.OIL_POLYURETHANE,
            FinishFamily.NITROCELLULOSE_LACQUER,
            OverReason.Holds.NO,
            Stage.TOUCH_DRY);
    Answer<OverVerdict> answer =
        decide(FinishMaker.oil(), FinishMaker.lacquer(), List.of(soft, hard, soft));
    assertEquals(OverReason.Holds.NO, Answers.value(answer).holds());
    assertEquals(Optional.empty(), Answers.value(answer).from());
    assertEquals(List.of("does-not-hold"), Answers.codes(answer));
  }

  @Test
  void aPairThatDoesNotHoldIsGivenABarrierIfTwoRowsMakeOne() {
    Rule<OverReason> no =
        row(
            FinishFamily.NITROCELLULOSE_LACQUER,
            FinishFamily.OIL_POLYURETHANE,
            OverReason.Holds.NO,
            Stage.FULL_CURE);
    Rule<OverReason> below =
        row(
            FinishFamily.SHELLAC,
            FinishFamily.OIL_POLYURETHANE,
            OverReason.Holds.SCUFFED,
            Stage.SAND);
    Rule<OverReason> above =
        row(
            FinishFamily.NITROCELLULOSE_LACQUER,
            FinishFamily.SHELLAC,
            OverReason.Holds.YES,
            Stage.RECOAT_OPENS);
    OverVerdict with =
        Answers.value(decide(FinishMaker.lacquer(), FinishMaker.oil(), List.of(no, below, above)));
    assertEquals(OverReason.Holds.WITH_BARRIER, with.holds());
    assertEquals(List.of(FinishFamily.SHELLAC), with.barrier());
    assertTrue(with.scuff());
    assertEquals(Optional.of(NINE.plusHours(12)), with.from());
    assertEquals(3, with.why().size());
    OverVerdict without =
        Answers.value(decide(FinishMaker.lacquer(), FinishMaker.oil(), List.of(no, below)));
    assertEquals(OverReason.Holds.NO, without.holds());
  }

  @Test
  void aBarrierThatItselfDoesNotHoldIsNone() {
    Rule<OverReason> rule =
        reason(
                OverReason.Holds.WITH_BARRIER,
                Stage.FULL_CURE,
                Optional.of(FinishFamily.WAX),
                "wax between")
            .on(
                List.of(FinishFamily.NITROCELLULOSE_LACQUER),
                List.of(FinishFamily.OIL_POLYURETHANE));
    Rule<OverReason> wax =
        row(
            FinishFamily.NITROCELLULOSE_LACQUER,
            FinishFamily.WAX,
            OverReason.Holds.NO,
            Stage.TOUCH_DRY);
    OverVerdict alone =
        Answers.value(decide(FinishMaker.lacquer(), FinishMaker.oil(), List.of(rule)));
    assertEquals(OverReason.Holds.WITH_BARRIER, alone.holds());
    assertEquals(Optional.of(NINE.plusDays(30)), alone.from());
    OverVerdict broken =
        Answers.value(decide(FinishMaker.lacquer(), FinishMaker.oil(), List.of(rule, wax)));
    assertEquals(OverReason.Holds.NO, broken.holds());
  }

  @Test
  void aFinishOverItselfFollowsItsBond() {
    OverVerdict oil = Answers.value(decide(FinishMaker.oil(), FinishMaker.oil(), List.of()));
    assertEquals(OverReason.Holds.YES, oil.holds());
    assertEquals(Optional.of(NINE.plusHours(10)), oil.from());
    assertFalse(oil.scuff());
    FinishMaker rough = FinishMaker.oil();
    rough.bond = CoatBond.SCUFF_ALWAYS;
    OverVerdict scuffed = Answers.value(decide(rough, rough, List.of()));
    assertTrue(scuffed.scuff());
    assertEquals(Optional.of(NINE.plusHours(12)), scuffed.from());
  }

  @Test
  void aPairNobodyWroteDownIsRefusedNotGuessed() {
    assertEquals(
        List.of("rules"),
        Answers.refused(decide(FinishMaker.oil(), FinishMaker.lacquer(), List.of())));
  }

  /** Rows of a table name several families at once: a family over itself is not their affair. */
  @Test
  void aRowThatNamesAFamilyOnBothSidesSaysNothingOfItOverItself() {
    List<FinishFamily> both =
        List.of(FinishFamily.OIL_POLYURETHANE, FinishFamily.NITROCELLULOSE_LACQUER);
    Rule<OverReason> rule =
        reason(OverReason.Holds.NO, Stage.SAND, Optional.empty(), "never").on(both, both);
    OverVerdict itself = Answers.value(decide(FinishMaker.oil(), FinishMaker.oil(), List.of(rule)));
    assertEquals(OverReason.Holds.YES, itself.holds());
    OverVerdict other =
        Answers.value(decide(FinishMaker.oil(), FinishMaker.lacquer(), List.of(rule)));
    assertEquals(OverReason.Holds.NO, other.holds());
  }

  @Test
  void aRowThatContradictsItselfCannotBeMade() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            row(FinishFamily.WAX, FinishFamily.SHELLAC, OverReason.Holds.WITH_BARRIER, Stage.SAND));
  }
}
