package benchlore.schedules.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whole answers for jobs a garage builder has. */
class AirTest {
  private static final RoomAir GARAGE = RoomAir.ofAirChanges(90, 6, 3, 18);

  private static Release coat(double start, Solvent solvent, double kg, ApplicationMethod method) {
    return new Release(start, kg, List.of(new Release.Share(solvent, 1)), method, Optional.empty());
  }

  private static AirRequest request(Release... coats) {
    return new AirRequest(GARAGE, List.of(coats), List.of(), false, false);
  }

  private static Answer.Given<AirSchedule> given(AirRequest request) {
    return Air.plan(request)
        .fold(
            g -> g,
            refused -> {
              throw new AssertionError(refused.reasons());
            });
  }

  private static List<String> codes(AirRequest request) {
    return given(request).cautions().stream().map(Caution::code).toList();
  }

  @Test
  void oilVarnishOverTwoDays() {
    Solvent spirits = Solvents.of("Stoddard solvent (mineral spirits)");
    AirRequest request =
        new AirRequest(
            GARAGE,
            List.of(
                coat(0, spirits, 0.12, ApplicationMethod.BRUSH),
                coat(86_400, spirits, 0.12, ApplicationMethod.BRUSH)),
            List.of(IgnitionSource.BRUSHED_MOTOR),
            false,
            true);
    AirSchedule s = given(request).value();
    assertEquals(2, s.reEntries().size());
    double first = s.reEntries().get(0).healthSecond().orElseThrow();
    assertEquals(first, s.reEntries().get(1).healthSecond().orElseThrow(), 0.02 * first);
    assertTrue(first > 900 && first < 43_200, () -> "re-entry after " + first);
    assertEquals(FlowNeeded.Governs.HEALTH, s.flow().governs());
    List<String> codes = codes(request);
    assertTrue(codes.contains("oily-rags") && codes.contains("no-explosive-limit"));
    assertTrue(codes.contains("defer-to-sds"));
  }

  @Test
  void everyLineOfWorkingIsTraced() {
    AirRequest request = request(coat(0, Solvents.of("ethanol"), 0.05, ApplicationMethod.WIPE));
    List<WorkingLine> working = given(request).working();
    assertTrue(working.size() >= 10);
    for (WorkingLine line : working) {
      assertFalse(line.formula().isEmpty());
    }
  }

  @Test
  void healthGovernsTolueneAsTheQuarterRuleNoteSays() {
    AirRequest request = request(coat(0, Solvents.of("toluene"), 0.05, ApplicationMethod.BRUSH));
    FlowNeeded flow = given(request).value().flow();
    assertEquals(FlowNeeded.Governs.HEALTH, flow.governs());
    // 10 % of LEL 1.1 % is 1100 ppm, 11 times the 100 ppm limit
    double ratio = flow.healthEveryMoment().orElseThrow() / flow.fireTenth().orElseThrow();
    assertEquals(11, ratio, 1e-9);
  }

  @Test
  void fireGovernsWhereTheHealthLimitIsHigh() {
    Solvent mild = Solvents.invented("mild", 100, 5000, 1.0);
    AirRequest request = request(coat(0, mild, 0.05, ApplicationMethod.BRUSH));
    assertEquals(FlowNeeded.Governs.FIRE, given(request).value().flow().governs());
  }

  @Test
  void noLimitPublishedIsSaid() {
    AirRequest request = request(coat(0, Solvents.of("d-limonene"), 0.05, ApplicationMethod.WIPE));
    AirSchedule s = given(request).value();
    assertTrue(s.peaks().index().isEmpty());
    assertTrue(s.peaks().percentLowerExplosive().isEmpty());
    assertTrue(s.reEntries().get(0).second().isEmpty());
    assertEquals(List.of("d-limonene"), s.coverage().withoutHealthLimit());
    assertEquals(FlowNeeded.Governs.NEITHER, s.flow().governs());
    assertTrue(codes(request).containsAll(List.of("no-exposure-limit", "no-explosive-limit")));
    assertEquals(Respirator.VAPOUR_HALF_MASK, s.respirator().respirator());
  }

  @Test
  void aKnownAndAnUnknownSolventTogether() {
    List<Release.Share> shares =
        List.of(
            new Release.Share(Solvents.of("ethanol"), 0.7),
            new Release.Share(Solvents.of("d-limonene"), 0.3));
    AirRequest request =
        request(new Release(0, 0.05, shares, ApplicationMethod.WIPE, Optional.empty()));
    AirSchedule s = given(request).value();
    assertTrue(s.peaks().index().isPresent());
    assertFalse(s.coverage().healthComplete());
    assertTrue(codes(request).contains("no-exposure-limit"));
  }

  @Test
  void waterAloneGivesCleanAir() {
    Release water = new Release(0, 0.2, List.of(), ApplicationMethod.BRUSH, Optional.empty());
    AirSchedule s = given(request(water)).value();
    assertEquals(0, s.peaks().ppm().value());
    assertTrue(s.reEntries().get(0).second().isEmpty());
    assertEquals(AirSchedule.Verdict.NEVER_OVER, s.reEntries().get(0).verdict());
    assertEquals(Respirator.NONE, s.respirator().respirator());
    assertEquals(FlowNeeded.Governs.NEITHER, s.flow().governs());
  }

  @Test
  void sprayPeaksHigherThanTheBrushAndWantsPrefilters() {
    AirRequest request =
        request(coat(0, Solvents.of("n-butyl acetate"), 0.05, ApplicationMethod.SPRAY));
    AirSchedule s = given(request).value();
    double sprayed = s.peaks().index().orElseThrow().value();
    assertTrue(sprayed > s.brushedPeakIndex().orElseThrow());
    assertEquals(Respirator.VAPOUR_HALF_MASK_PREFILTER, s.respirator().respirator());
    assertTrue(codes(request).contains("spray-mist"));
  }

  @Test
  void acetoneBoilsTooLowForCartridges() {
    AirRequest request = request(coat(0, Solvents.of("acetone"), 0.3, ApplicationMethod.WIPE));
    assertTrue(codes(request).contains("low-boiling-solvent"));
    assertTrue(
        given(request).value().respirator().limits().stream()
            .anyMatch(note -> note.pattern().contains("acetone")));
  }

  @Test
  void slowOrUnknownEvaporationLengthensTheTail() {
    double unknown = ReleaseByMethod.of(ApplicationMethod.BRUSH, 0).decaySecond();
    double fast = ReleaseByMethod.of(ApplicationMethod.BRUSH, 5.6).decaySecond();
    assertEquals(3 * fast, unknown, 1e-9);
    assertEquals(
        ReleaseByMethod.of(ApplicationMethod.BRUSH),
        ReleaseByMethod.of(ApplicationMethod.BRUSH, 1));
  }

  @Test
  void coatTooSoonHasNoReEntry() {
    Solvent toluene = Solvents.of("toluene");
    AirRequest request =
        request(
            coat(0, toluene, 0.2, ApplicationMethod.BRUSH),
            coat(1800, toluene, 0.2, ApplicationMethod.BRUSH));
    AirSchedule s = given(request).value();
    assertTrue(s.reEntries().get(0).second().isEmpty());
    assertTrue(s.reEntries().get(1).second().isPresent());
    assertTrue(codes(request).contains("re-entry-not-reached"));
  }
}
