package benchlore.schedules.sanding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.Pores;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Provenance;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What each part of the request does to the schedule. */
class SandingTest {
  private static final StartSurface PITS = new StartSurface.TornGrain(150);

  private static SandingSchedule plan(SandingRequest request) {
    return Questions.given(Sanding.plan(request));
  }

  private static SurfaceWanted wanted(boolean raises, boolean filled) {
    return new SurfaceWanted(
        Questions.grades(180, 220), FinishLook.SATIN, Optional.empty(), 1, raises, filled);
  }

  @Test
  void endGrainIsOneGradeFiner() {
    SandingPass ends = plan(Questions.of(PITS)).extras().endGrain().orElseThrow();
    assertEquals("P220", ends.grit().label());
    SandingRequest none = Questions.with(Questions.of(PITS), new SandingArea(1, 0, 1));
    assertTrue(plan(none).extras().endGrain().isEmpty());
  }

  @Test
  void endGrainGradeToBuyIsNamed() {
    SandingRequest request = Questions.of(PITS).withShop(shelf(80, 120, 180));
    Answer<SandingSchedule> answer = Sanding.plan(request);
    assertEquals("P220", Questions.given(answer).extras().endGrain().orElseThrow().grit().label());
    assertTrue(Questions.cautions(answer).contains("grade-to-buy"));
  }

  private static SandingShop shelf(int... numbers) {
    return Questions.orbital(Questions.shelf(numbers));
  }

  @Test
  void waterborneRaisesTheGrainFirst() {
    GrainRaising raising =
        plan(Questions.with(Questions.of(PITS), wanted(true, false)))
            .extras()
            .grainRaising()
            .orElseThrow();
    assertEquals("P220", raising.knockOff().grit().label());
    assertEquals(16 * 3600.0, raising.drySeconds().high());
    assertTrue(
        plan(Questions.with(Questions.of(PITS), wanted(false, false)))
            .extras()
            .grainRaising()
            .isEmpty());
  }

  @Test
  void onlyOpenPoresAreFilledAndOnlyWhenAsked() {
    SandingRequest flat = Questions.with(Questions.of(PITS), wanted(false, true));
    assertTrue(plan(Questions.with(flat, Questions.ASH)).extras().poreFilling().isPresent());
    assertTrue(plan(Questions.with(flat, Questions.CHERRY)).extras().poreFilling().isEmpty());
    SandingWood sapele = new SandingWood(6700, 620, Pores.DIFFUSE, true, false, false);
    assertTrue(plan(Questions.with(flat, sapele)).extras().poreFilling().isPresent());
    SandingRequest open = Questions.with(Questions.of(PITS), wanted(false, false));
    Answer<SandingSchedule> ash = Sanding.plan(Questions.with(open, Questions.ASH));
    assertTrue(Questions.given(ash).extras().poreFilling().isEmpty());
    assertTrue(Questions.cautions(ash).contains("pores-stay-open"));
  }

  @Test
  void figuredAndSoftWoodEndInTheFinerHalf() {
    SandingWood curly = new SandingWood(4400, 560, Pores.DIFFUSE, false, true, false);
    for (SandingWood wood : List.of(curly, Questions.PINE)) {
      List<String> labels =
          Questions.labels(plan(Questions.with(Questions.of(PITS), wood)).passes());
      assertEquals("P220", labels.get(labels.size() - 1));
    }
    List<String> plain = Questions.labels(plan(Questions.of(PITS)).passes());
    assertEquals("P180", plain.get(plain.size() - 1));
  }

  @Test
  void betweenCoatsIsOneLessThanTheCoats() {
    BetweenCoats between = plan(Questions.of(PITS)).extras().betweenCoats().orElseThrow();
    assertEquals(2, between.times());
    int number = between.each().grit().number();
    assertTrue(number >= 320 && number <= 400);
  }

  @Test
  void scuffingIsOneLightPassWithTheBetweenCoatGrade() {
    SandingRequest request =
        Questions.of(new StartSurface.OldFilm(60, StartSurface.OldFilm.Fate.SCUFF))
            .withShop(shelf(80, 180, 320));
    Answer<SandingSchedule> answer = Sanding.plan(request);
    SandingSchedule schedule = Questions.given(answer);
    assertEquals(List.of("P320"), Questions.labels(schedule.passes()));
    assertTrue(schedule.totals().removedMicron() < 5);
    assertTrue(Questions.cautions(answer).contains("old-film-lead"));
  }

  @Test
  void removingAnOldFilmTakesAllOfItAndMore() {
    SandingRequest request =
        Questions.of(new StartSurface.OldFilm(80, StartSurface.OldFilm.Fate.REMOVE));
    SandingSchedule schedule = plan(request);
    assertTrue(schedule.startDepthMicron() > 80);
    assertTrue(
        schedule.totals().faceSeconds()
            > plan(Questions.of(new StartSurface.TornGrain(schedule.startDepthMicron())))
                .totals()
                .faceSeconds());
  }

  @Test
  void aSurfaceThatAlreadyWillDoNeedsNoPass() {
    assertTrue(plan(Questions.of(new StartSurface.SandedTo(Questions.p(180)))).passes().isEmpty());
    Answer<SandingSchedule> fine =
        Sanding.plan(Questions.of(new StartSurface.SandedTo(Questions.p(400))));
    assertTrue(Questions.given(fine).passes().isEmpty());
    assertTrue(Questions.cautions(fine).contains("sanded-too-fine"));
  }

  @Test
  void aGapInTheShelfIsRefusedWithWhatToBuy() {
    SandingRequest request =
        Questions.of(new StartSurface.SandedTo(Questions.p(60))).withShop(shelf(60, 180));
    String remedy = Sanding.plan(request).fold(g -> "", r -> r.reasons().get(0).remedy().pattern());
    // 60 to 180 is a ratio of 3.3, so one grade between is not enough at 1.7.
    assertTrue(remedy.contains("P80, P120."), remedy);
  }

  @Test
  void shelfGapOffersTheGradeThatSavesMost() {
    SandingRequest request =
        Questions.of(new StartSurface.TornGrain(300)).withShop(shelf(120, 180, 220));
    ShelfAdvice advice = Questions.given(ShelfGap.plan(request));
    assertTrue(advice.nowSeconds().isPresent());
    ShelfAdvice.Offer best = advice.offers().get(0);
    assertTrue(best.grit().number() < 120);
    assertEquals(
        best.thenSeconds(),
        plan(request.withShop(request.shop().withGrit(best.grit()))).totals().faceSeconds());
  }

  @Test
  void aShelfThatCannotOpenTheSurfaceIsOfferedWhatDoes() {
    SandingRequest sawn =
        Questions.of(new StartSurface.Sawn(SawnBy.BANDSAW)).withShop(shelf(120, 180, 220));
    assertEquals(List.of("shelf"), Questions.refused(Sanding.plan(sawn)));
    ShelfAdvice advice = Questions.given(ShelfGap.plan(sawn));
    assertTrue(advice.nowSeconds().isEmpty());
    assertTrue(advice.offers().stream().anyMatch(offer -> offer.grit().number() == 80));
    advice.offers().forEach(offer -> assertTrue(offer.grit().number() <= 80));
  }

  @Test
  void everyFurtherPieceIsHandledForEveryGradeAndFace() {
    SandingRequest sanded = Questions.of(new StartSurface.SandedTo(Questions.p(80)));
    SandingRequest one = Questions.with(sanded, new SandingArea(4, 0, 1));
    SandingRequest hundred = Questions.with(one, new SandingArea(4, 0, 100));
    SandingSchedule whole = plan(one);
    SandingSchedule pieces = plan(hundred);
    assertEquals(Questions.labels(whole.passes()), Questions.labels(pieces.passes()));
    double handling = 10.0 * 3 * 99 * pieces.passes().size();
    assertEquals(whole.totals().faceSeconds() + handling, pieces.totals().faceSeconds(), 1e-6);
  }

  @Test
  void aSurfaceThatWillDoIsOpenedWithTheGradeTheRestEndsOn() {
    for (int number : List.of(180, 220, 400)) {
      SandingRequest request = Questions.of(new StartSurface.SandedTo(Questions.p(number)));
      assertEquals("P180", Sanding.opener(request).orElseThrow().grit().label());
    }
    assertTrue(Sanding.opener(Questions.of(PITS)).isEmpty());
  }

  @Test
  void theBeltNeverGoesLast() {
    SandingShop both =
        new SandingShop(
            Questions.shelf(60, 80, 120, 150),
            List.of(SandingTool.BELT, SandingTool.BLOCK),
            SandingShop.USUAL_JUMP);
    SandingRequest request =
        Questions.with(
                Questions.of(new StartSurface.Sawn(SawnBy.SAWMILL)), Questions.film(150, 150))
            .withShop(both);
    Answer<SandingSchedule> answer = Sanding.plan(request);
    List<SandingPass> passes = Questions.given(answer).passes();
    assertEquals(SandingTool.BELT, passes.get(0).tool());
    assertEquals(SandingTool.BLOCK, passes.get(passes.size() - 1).tool());
    assertTrue(Questions.cautions(answer).contains("too-deep-to-sand"));
  }

  @Test
  void theWorkingSaysThatRatesAreNotPublished() {
    Answer<SandingSchedule> answer = Sanding.plan(Questions.of(PITS));
    long unpublished =
        answer.fold(
            g ->
                g.working().stream()
                    .filter(line -> line.rule().kind() == Provenance.Kind.FROM_MEMORY)
                    .filter(line -> line.rule().title().contains("no published removal rates"))
                    .count(),
            r -> 0L);
    assertTrue(unpublished >= Questions.given(answer).passes().size());
  }

  @Test
  void dustIsAlwaysCautioned() {
    assertTrue(Questions.cautions(Sanding.plan(Questions.of(PITS))).contains("wood-dust"));
  }

  @Test
  void aThinFilmIsNotRubbedThrough() {
    SandingShop shop = Questions.orbital(GritTable.FEPA_P);
    assertEquals(
        List.of("filmMicron"),
        Questions.refused(RubOut.plan(new RubOutRequest(Sheen.GLOSS, 35, 12, 1, shop))));
    assertEquals(
        List.of("shelf"),
        Questions.refused(
            RubOut.plan(
                new RubOutRequest(
                    Sheen.GLOSS, 150, 12, 1, Questions.orbital(Questions.shelf(320, 400))))));
  }

  @Test
  void aBestStepoverAtTheEdgeIsSaid() {
    MillingPass narrow = new MillingPass(0.00635, 0.02, 0.00005, 0.0001, 1);
    Answer<MachineOrSandCurve> answer =
        MachineOrSand.plan(new MachineOrSandRequest(narrow, Questions.of(PITS)));
    assertTrue(Questions.cautions(answer).contains("best-at-the-edge"));
  }

  @Test
  void paceIsThePassWithoutItsCleaning() {
    SandingPace pace =
        Questions.given(
            SandingPace.plan(Questions.p(120), SandingTool.RANDOM_ORBIT, Questions.CHERRY, 50.25));
    SandingRequest request =
        Questions.with(
            Questions.of(new StartSurface.SandedTo(Questions.p(80))), Questions.film(120, 120));
    SandingPass pass = plan(request).passes().get(0);
    assertEquals(pass.seconds() - 90, pace.secondsPerSquareMetre(), 1e-6);
    assertEquals(125 / 4.0, pace.scratchMicron(), 1e-9);
    assertEquals(
        List.of("depthMicron", "tool"),
        Questions.refused(
            SandingPace.plan(Questions.p(400), SandingTool.BELT, Questions.CHERRY, -1)));
  }

  @Test
  void aLongFirstPassWithTheCoarsestGradeIsSaid() {
    SandingRequest torn = Questions.of(new StartSurface.TornGrain(300));
    assertTrue(
        Questions.cautions(Sanding.plan(torn.withShop(shelf(120, 180)))).contains("long-pass"));
    assertFalse(
        Questions.cautions(Sanding.plan(torn.withShop(shelf(60, 80, 100, 120, 150, 180))))
            .contains("long-pass"));
  }

  @Test
  void coarseKnifeMarksAreSaid() {
    SandingRequest coarse = Questions.of(new StartSurface.Planed(0.0025, 0.03));
    assertTrue(Questions.cautions(Sanding.plan(coarse)).contains("coarse-knife-marks"));
    SandingRequest fine = Questions.of(new StartSurface.Planed(0.001, 0.03));
    assertFalse(Questions.cautions(Sanding.plan(fine)).contains("coarse-knife-marks"));
  }

  @Test
  void discSharesAddUpOverParts() {
    // One grade on the shelf, so that the path is the same however small the part.
    SandingRequest part =
        Questions.of(new StartSurface.SandedTo(Questions.p(120))).withShop(shelf(180));
    SandingRequest all = Questions.with(part, new SandingArea(4, 0, 1));
    SandingPass whole = plan(all).passes().get(0);
    assertEquals(whole.discShare(), 4 * plan(part).passes().get(0).discShare(), 1e-9);
    assertEquals(2, whole.discs());
    assertEquals(1, plan(part).passes().get(0).discs());
  }

  @Test
  void camiThreeTwentyIsNotPThreeTwenty() {
    Grit cami = Grits.find(GritSystem.CAMI, 320).orElseThrow();
    Answer<GritMatch> match = Grits.convert(cami, GritSystem.FEPA_P);
    assertEquals("P400", Questions.given(match).grit().label());
    assertTrue(Questions.cautions(match).isEmpty());
    assertEquals("CAMI 320", cami.label());
    assertTrue(Grits.find(GritSystem.CAMI, 12).isEmpty());
    Grit coarsest = Questions.p(12);
    assertTrue(
        Questions.cautions(Grits.convert(coarsest, GritSystem.CAMI)).contains("no-close-grade"));
  }
}
