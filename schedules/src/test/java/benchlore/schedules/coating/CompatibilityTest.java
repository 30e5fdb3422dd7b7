package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What goes over what: the engine decides by rows handed in. */
class CompatibilityTest {
  private static final Moment NINE = Moment.of(2026, 5, 4, 9, 0);

  private static OverRule row(
      FinishFamily upper, FinishFamily under, OverRule.Verdict verdict, Stage wait) {
    return new OverRule(
        upper, under, verdict, wait, Optional.empty(), upper + " on " + under, from());
  }

  private static Provenance from() {
    return Provenance.commonPractice("invented for a test");
  }

  private static Answer<OverVerdict> decide(
      FinishMaker upper, FinishMaker under, OverRule... rows) {
    DryingRequest coat =
        new DryingRequest(under.make(), under.wetFilm, Climate.steady(20, 50), NINE);
    return Compatibility.plan(new CompatibilityRequest(upper.make(), coat, List.of(rows)));
  }

  @Test
  void aRowDecidesVerdictWaitAndScuff() {
    OverRule rule =
        row(
            FinishFamily.OIL_POLYURETHANE,
            FinishFamily.NITROCELLULOSE_LACQUER,
            OverRule.Verdict.SCUFFED,
            Stage.SAND);
    OverVerdict verdict = Answers.value(decide(FinishMaker.oil(), FinishMaker.lacquer(), rule));
    assertEquals(OverRule.Verdict.SCUFFED, verdict.holds());
    assertTrue(verdict.scuff());
    assertEquals(Optional.of(NINE.plusHours(3)), verdict.from());
    assertEquals(List.of(rule.why()), verdict.why());
    assertEquals(List.of(rule), verdict.rules());
  }

  @Test
  void theStrictestOfSeveralRowsDecides() {
    OverRule soft =
        row(
            FinishFamily.OIL_POLYURETHANE,
            FinishFamily.NITROCELLULOSE_LACQUER,
            OverRule.Verdict.YES,
            Stage.FULL_CURE);
    OverRule hard =
        row(
            FinishFamily.OIL_POLYURETHANE,
            FinishFamily.NITROCELLULOSE_LACQUER,
            OverRule.Verdict.NO,
            Stage.TOUCH_DRY);
    Answer<OverVerdict> answer = decide(FinishMaker.oil(), FinishMaker.lacquer(), soft, hard, soft);
    assertEquals(OverRule.Verdict.NO, Answers.value(answer).holds());
    assertEquals(Optional.empty(), Answers.value(answer).from());
    assertEquals(List.of("does-not-hold"), Answers.codes(answer));
  }

  @Test
  void aPairThatDoesNotHoldIsGivenABarrierIfTwoRowsMakeOne() {
    OverRule no =
        row(
            FinishFamily.NITROCELLULOSE_LACQUER,
            FinishFamily.OIL_POLYURETHANE,
            OverRule.Verdict.NO,
            Stage.FULL_CURE);
    OverRule below =
        row(
            FinishFamily.SHELLAC,
            FinishFamily.OIL_POLYURETHANE,
            OverRule.Verdict.SCUFFED,
            Stage.SAND);
    OverRule above =
        row(
            FinishFamily.NITROCELLULOSE_LACQUER,
            FinishFamily.SHELLAC,
            OverRule.Verdict.YES,
            Stage.RECOAT_OPENS);
    OverVerdict with =
        Answers.value(decide(FinishMaker.lacquer(), FinishMaker.oil(), no, below, above));
    assertEquals(OverRule.Verdict.WITH_BARRIER, with.holds());
    assertEquals(List.of(FinishFamily.SHELLAC), with.barrier());
    assertTrue(with.scuff());
    assertEquals(Optional.of(NINE.plusHours(12)), with.from());
    assertEquals(3, with.why().size());
    OverVerdict without =
        Answers.value(decide(FinishMaker.lacquer(), FinishMaker.oil(), no, below));
    assertEquals(OverRule.Verdict.NO, without.holds());
  }

  @Test
  void aBarrierThatItselfDoesNotHoldIsNone() {
    OverRule rule =
        new OverRule(
            FinishFamily.NITROCELLULOSE_LACQUER,
            FinishFamily.OIL_POLYURETHANE,
            OverRule.Verdict.WITH_BARRIER,
            Stage.FULL_CURE,
            Optional.of(FinishFamily.WAX),
            "wax between",
            from());
    OverRule wax =
        row(
            FinishFamily.NITROCELLULOSE_LACQUER,
            FinishFamily.WAX,
            OverRule.Verdict.NO,
            Stage.TOUCH_DRY);
    OverVerdict alone = Answers.value(decide(FinishMaker.lacquer(), FinishMaker.oil(), rule));
    assertEquals(OverRule.Verdict.WITH_BARRIER, alone.holds());
    assertEquals(Optional.of(NINE.plusDays(30)), alone.from());
    OverVerdict broken = Answers.value(decide(FinishMaker.lacquer(), FinishMaker.oil(), rule, wax));
    assertEquals(OverRule.Verdict.NO, broken.holds());
  }

  @Test
  void aFinishOverItselfFollowsItsBond() {
    OverVerdict oil = Answers.value(decide(FinishMaker.oil(), FinishMaker.oil()));
    assertEquals(OverRule.Verdict.YES, oil.holds());
    assertEquals(Optional.of(NINE.plusHours(10)), oil.from());
    assertFalse(oil.scuff());
    FinishMaker rough = FinishMaker.oil();
    rough.bond = CoatBond.SCUFF_ALWAYS;
    OverVerdict scuffed = Answers.value(decide(rough, rough));
    assertTrue(scuffed.scuff());
    assertEquals(Optional.of(NINE.plusHours(12)), scuffed.from());
  }

  @Test
  void aPairNobodyWroteDownIsRefusedNotGuessed() {
    assertEquals(
        List.of("rules"), Answers.refused(decide(FinishMaker.oil(), FinishMaker.lacquer())));
  }

  @Test
  void aRowThatContradictsItselfCannotBeMade() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            row(FinishFamily.WAX, FinishFamily.SHELLAC, OverRule.Verdict.WITH_BARRIER, Stage.SAND));
  }
}
