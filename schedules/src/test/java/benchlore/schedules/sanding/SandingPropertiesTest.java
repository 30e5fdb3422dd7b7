package benchlore.schedules.sanding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.Pores;
import benchlore.schedules.material.Sheen;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.statistics.Statistics;

/** What must hold for every question. */
class SandingPropertiesTest {
  private static final int TRIES = 200;

  @Provide
  Arbitrary<List<Grit>> shelves() {
    List<Grit> all = new ArrayList<>(GritTable.FEPA_P);
    all.addAll(GritTable.CAMI);
    return Arbitraries.of(all).list().ofMinSize(1).ofMaxSize(14);
  }

  /** Shelves with mostly everyday grades, so that most questions have an answer. */
  private static Arbitrary<List<Grit>> everydayShelves() {
    List<Grit> everyday = new ArrayList<>();
    for (GritSystem system : GritSystem.values()) {
      for (Grit grit : Grits.all(system)) {
        if (grit.micron() < 300 && grit.micron() > 40) {
          everyday.add(grit);
        }
      }
    }
    return Arbitraries.of(everyday).list().uniqueElements().ofMinSize(17).ofMaxSize(24);
  }

  @Provide
  Arbitrary<StartSurface> starts() {
    return Arbitraries.oneOf(
        Arbitraries.of(SawnBy.values()).map(StartSurface.Sawn::new),
        Arbitraries.doubles().between(1, 2000).ofScale(6).map(StartSurface.TornGrain::new),
        Arbitraries.doubles()
            .between(0.0001, 0.006)
            .ofScale(6)
            .map(s -> new StartSurface.BallNose(0.006, s)),
        Arbitraries.doubles()
            .between(0.0003, 0.005)
            .ofScale(6)
            .map(s -> new StartSurface.Planed(s, 0.03)),
        Arbitraries.doubles()
            .between(0.0001, 0.003)
            .ofScale(6)
            .map(s -> new StartSurface.StraightCut(0.01, s)),
        Arbitraries.of(GritTable.FEPA_P.subList(8, 20)).map(StartSurface.SandedTo::new),
        Combinators.combine(
                Arbitraries.doubles().between(1, 300).ofScale(6),
                Arbitraries.of(StartSurface.OldFilm.Fate.values()))
            .as(StartSurface.OldFilm::new));
  }

  @Provide
  Arbitrary<SandingWood> woods() {
    return Combinators.combine(
            Arbitraries.doubles().between(300, 16_000).ofScale(6),
            Arbitraries.doubles().between(150, 1200).ofScale(6),
            Arbitraries.of(Pores.values()),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false))
        .as(SandingWood::new);
  }

  @Provide
  Arbitrary<SandingRequest> requests() {
    Arbitrary<SurfaceWanted> wanted =
        Combinators.combine(
                Arbitraries.integers().between(120, 240),
                Arbitraries.integers().between(60, 200),
                Arbitraries.of(FinishLook.values()),
                Arbitraries.of(true, false),
                Arbitraries.of(true, false))
            .as(
                (low, span, look, raises, filled) ->
                    new SurfaceWanted(
                        Questions.grades(low, low + span),
                        look,
                        Optional.of(Questions.grades(320, 400)),
                        3,
                        raises,
                        filled));
    Arbitrary<SandingShop> shops =
        Combinators.combine(
                Arbitraries.oneOf(
                    everydayShelves(), everydayShelves(), everydayShelves(), shelves()),
                Arbitraries.subsetOf(SandingTool.values()),
                Arbitraries.oneOf(
                    Arbitraries.doubles().between(1.2, 2.5).ofScale(6),
                    Arbitraries.doubles().between(1.6, 2.5).ofScale(6)))
            .as((shelf, tools, jump) -> new SandingShop(shelf, withBlock(tools), jump));
    Arbitrary<SandingArea> areas =
        Combinators.combine(
                Arbitraries.doubles().between(0.01, 20).ofScale(6),
                Arbitraries.integers().between(1, 200))
            .as((a, pieces) -> new SandingArea(a, a / 20, pieces));
    return Combinators.combine(starts(), woods(), areas, wanted, shops).as(SandingRequest::new);
  }

  private static List<SandingTool> withBlock(Set<SandingTool> tools) {
    List<SandingTool> all = new ArrayList<>(tools);
    all.add(SandingTool.BLOCK);
    return all;
  }

  /** Face seconds, or infinity where there is no way. */
  private static double face(SandingRequest request) {
    return Sanding.plan(request)
        .fold(g -> g.value().totals().faceSeconds(), r -> Double.POSITIVE_INFINITY);
  }

  @Property(tries = TRIES)
  void neverCoarserNeverBeyondTheLimitAndEndsInRange(@ForAll("requests") SandingRequest request) {
    if (!(Sanding.plan(request) instanceof Answer.Given<SandingSchedule> given)) {
      return;
    }
    StartDepth start = request.start().depth();
    GritTarget target = Sanding.target(request, start);
    double before = start.grainMicron();
    for (SandingPass pass : given.value().passes()) {
      double grain = pass.grit().micron();
      assertTrue(grain < before, "coarser");
      assertTrue(
          before == Double.POSITIVE_INFINITY
              || before <= grain * request.shop().jumpLimitRatio() * (1 + 1e-6),
          "jump");
      assertTrue(request.shop().shelf().contains(pass.grit()), "shelf");
      before = grain;
    }
    assertTrue(target.takes(before) || target.isPassedBy(before), "last grade");
  }

  @Property(tries = TRIES)
  void numbersAreSane(@ForAll("requests") SandingRequest request) {
    Answer<SandingSchedule> answer = Sanding.plan(request);
    // Guards the generator: a property over refusals alone would prove nothing.
    Statistics.label("answered")
        .collect(answer instanceof Answer.Given)
        .coverage(share -> share.check(true).percentage(percent -> percent > 35));
    if (!(answer instanceof Answer.Given<SandingSchedule> given)) {
      return;
    }
    SandingTotals totals = given.value().totals();
    assertTrue(totals.seconds() >= totals.faceSeconds() && totals.faceSeconds() >= 0);
    assertTrue(totals.dustKilogram() >= 0 && Double.isFinite(totals.dustKilogram()));
    for (SandingPass pass : given.value().passes()) {
      assertTrue(pass.seconds() > 0 && pass.discs() >= 1);
      assertTrue(pass.removedMicron() >= pass.depthMicron());
    }
    if (!given.value().passes().isEmpty()) {
      assertTrue(totals.removedMicron() >= given.value().startDepthMicron() - 1e-9);
    }
  }

  @Property(tries = TRIES)
  void aFurtherGradeNeverCostsMore(
      @ForAll("requests") SandingRequest request, @ForAll("shelves") List<Grit> more) {
    SandingShop shop = request.shop();
    for (Grit grit : more) {
      shop = shop.withGrit(grit);
    }
    assertTrue(face(request.withShop(shop)) <= face(request));
  }

  @Property(tries = TRIES)
  void aFurtherToolNeverCostsMore(
      @ForAll("requests") SandingRequest request, @ForAll SandingTool more) {
    List<SandingTool> tools = new ArrayList<>(request.shop().tools());
    tools.add(more);
    SandingShop shop =
        new SandingShop(request.shop().shelf(), tools, request.shop().jumpLimitRatio());
    assertTrue(face(request.withShop(shop)) <= face(request));
  }

  @Property(tries = TRIES)
  void aTighterLimitNeverCostsLess(
      @ForAll("requests") SandingRequest request,
      @ForAll @Scale(6) @DoubleRange(min = 1.2, max = 2.5) double limit) {
    SandingShop shop = request.shop();
    double tighter = Math.min(limit, shop.jumpLimitRatio());
    SandingShop tight = new SandingShop(shop.shelf(), shop.tools(), tighter);
    assertTrue(face(request.withShop(tight)) >= face(request));
  }

  @Property(tries = TRIES)
  void aFinerStepoverNeverCostsMoreSanding(
      @ForAll("requests") SandingRequest request,
      @ForAll @Scale(6) @DoubleRange(min = 0.00005, max = 0.006) double one,
      @ForAll @Scale(6) @DoubleRange(min = 0.00005, max = 0.006) double other) {
    double fine = face(request.withStart(new StartSurface.BallNose(0.006, Math.min(one, other))));
    double coarse = face(request.withStart(new StartSurface.BallNose(0.006, Math.max(one, other))));
    assertTrue(fine <= coarse, fine + " > " + coarse);
  }

  @Property(tries = TRIES)
  void harderWoodAndMoreAreaAreNeverQuicker(@ForAll("requests") SandingRequest request) {
    SandingWood wood = request.wood();
    // The same pores, and on one side of the hardness from which close-pored wood burnishes, so
    // that the last grade stays.
    for (double hardness : new double[] {2600, 6000}) {
      SandingRequest soft = Questions.with(request, harder(wood, hardness));
      SandingRequest hard = Questions.with(request, harder(wood, hardness * 2));
      assertTrue(face(hard) >= face(soft));
    }
    SandingArea area = request.area();
    SandingArea twice = new SandingArea(area.totalSquareMetre() * 2, 0, area.pieces());
    assertTrue(face(Questions.with(request, twice)) >= face(request));
  }

  private static SandingWood harder(SandingWood wood, double hardnessNewton) {
    return new SandingWood(
        hardnessNewton, 500, wood.pores(), wood.openGrained(), wood.figured(), false);
  }

  /** The finest P number each kind of marks may be opened with, by any name of the grade. */
  private static int finestOpening(StartSurface start) {
    if (start instanceof StartSurface.Sawn) {
      return 80;
    }
    if (start instanceof StartSurface.Planed planed && planed.knifePitchMetre() <= 0.00127) {
      return 150;
    }
    boolean sandedOrFilm =
        start instanceof StartSurface.SandedTo || start instanceof StartSurface.OldFilm;
    return sandedOrFilm ? 2500 : 120;
  }

  @Property(tries = TRIES)
  void noSurfaceIsOpenedFinerThanItsMarksAsk(@ForAll("requests") SandingRequest request) {
    Sanding.plan(request)
        .fold(
            given -> {
              List<SandingPass> passes = given.value().passes();
              if (!passes.isEmpty()) {
                int number = passes.get(0).grit().number();
                assertTrue(number <= finestOpening(request.start()), passes.get(0).toString());
              }
              return true;
            },
            refused -> true);
  }

  /** Coarser paper than the row is for deep marks; P40 and P60 lie ready and are not taken. */
  @Property(tries = TRIES)
  void ordinaryPlanerMarksAreOpenedWithinTheirRow(
      @ForAll("requests") SandingRequest request,
      @ForAll @Scale(6) @DoubleRange(min = 0.0005, max = 0.002) double pitch,
      @ForAll FinishLook look) {
    SurfaceWanted wanted =
        new SurfaceWanted(Questions.grades(150, 220), look, Optional.empty(), 1, false, false);
    SandingShop shop =
        new SandingShop(
            Questions.shelf(40, 60, 80, 100, 120, 150, 180, 220, 320),
            request.shop().tools(),
            SandingShop.USUAL_JUMP);
    SandingRequest planed =
        Questions.with(request.withStart(new StartSurface.Planed(pitch, 0.03)), wanted)
            .withShop(shop);
    List<SandingPass> passes = Questions.given(Sanding.plan(planed)).passes();
    int opening = passes.get(0).grit().number();
    assertTrue(opening >= 100 && opening <= (pitch <= 0.00127 ? 150 : 120), passes.toString());
  }

  @Property(tries = TRIES)
  void atMostOneEverydayGradeIsSkippedOnBareWood(@ForAll("requests") SandingRequest request) {
    Sanding.plan(request)
        .fold(
            given -> {
              double before = request.start().depth().grainMicron();
              for (SandingPass pass : given.value().passes()) {
                double after = pass.grit().micron();
                double limit = before / 1.05;
                long skipped =
                    List.of(80, 100, 120, 150, 180, 220, 320).stream()
                        .map(number -> Questions.p(number).micron())
                        .filter(grain -> grain < limit && grain > after * 1.05)
                        .count();
                assertTrue(
                    before == Double.POSITIVE_INFINITY || skipped <= 1, pass + " after " + limit);
                before = after;
              }
              return true;
            },
            refused -> true);
  }

  @Property(tries = TRIES)
  void denseClosePoredWoodStopsAtP220UnderOilAndWaterborne(
      @ForAll("requests") SandingRequest request,
      @ForAll @Scale(6) @DoubleRange(min = 5400, max = 15_000) double hardness,
      @ForAll boolean figured) {
    SandingWood maple = new SandingWood(hardness, 700, Pores.DIFFUSE, false, figured, false);
    SandingRequest asked = Questions.with(request, maple);
    boolean soaksIn = asked.wanted().look() == FinishLook.OILED || asked.wanted().raisesGrain();
    boolean fineOnly = asked.wanted().finalGrade().low() > 220;
    boolean scuffed = asked.start().depth().light();
    if (!soaksIn || fineOnly || scuffed) {
      return;
    }
    Sanding.plan(asked)
        .fold(
            given -> {
              List<SandingPass> passes = given.value().passes();
              assertTrue(
                  passes.isEmpty() || passes.get(passes.size() - 1).grit().micron() * 1.05 > 68,
                  passes.toString());
              return true;
            },
            refused -> true);
  }

  /** Of two sheens of one film the glossier never ends on coarser wood. */
  @Property(tries = TRIES)
  void aGlossierFilmNeverEndsCoarser(@ForAll("requests") SandingRequest request) {
    double before = Double.POSITIVE_INFINITY;
    for (FinishLook look :
        List.of(FinishLook.MATT, FinishLook.SATIN, FinishLook.SEMI_GLOSS, FinishLook.GLOSS)) {
      SurfaceWanted wanted = request.wanted();
      SurfaceWanted sheen =
          new SurfaceWanted(
              wanted.finalGrade(),
              look,
              wanted.betweenCoatGrade(),
              wanted.coats(),
              wanted.raisesGrain(),
              wanted.poresFilled());
      double coarsest = GritTarget.of(sheen, request.wood()).coarsestMicron();
      assertTrue(coarsest <= before, look + " " + wanted.finalGrade());
      before = coarsest;
    }
  }

  @Property(tries = TRIES)
  void theShelfsOrderDoesNotMatter(@ForAll("requests") SandingRequest request, @ForAll int seed) {
    List<Grit> shuffled = new ArrayList<>(request.shop().shelf());
    Collections.shuffle(shuffled, new Random(seed));
    SandingShop shop =
        new SandingShop(shuffled, request.shop().tools(), request.shop().jumpLimitRatio());
    assertEquals(face(request), face(request.withShop(shop)), 0);
  }

  @Property(tries = TRIES)
  void ridgesAndPitchUndoEachOther(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.05) double radius,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1) double share) {
    double pitch = 2 * radius * share;
    double height = ArcMarks.heightMetre(radius, pitch);
    assertEquals(pitch, ArcMarks.pitchMetre(radius, height), 1e-9);
    assertEquals(radius, ArcMarks.radiusMetre(pitch, height), 1e-9);
  }

  @Property(tries = TRIES)
  void nearestGradeIsNearest(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 3000) double micron,
      @ForAll GritSystem system) {
    Grit nearest = Questions.given(Grits.nearest(system, micron)).grit();
    for (Grit grit : Grits.all(system)) {
      assertTrue(
          Math.abs(Math.log(nearest.micron() / micron))
              <= Math.abs(Math.log(grit.micron() / micron)) + 1e-12);
    }
  }

  @Property(tries = 60)
  void theCurvesBestIsItsLeastAndItsSidesAreMonotone(
      @ForAll("requests") SandingRequest request,
      @ForAll @Scale(6) @DoubleRange(min = 0.005, max = 0.1) double feed,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 2) double weight) {
    MillingPass milling = new MillingPass(0.006, feed, 0.0001, 0.003, weight);
    if (!(MachineOrSand.plan(new MachineOrSandRequest(milling, request))
        instanceof Answer.Given<MachineOrSandCurve> given)) {
      return;
    }
    List<MachineOrSandCurve.Point> points = given.value().points();
    assertTrue(points.contains(given.value().best()) && points.size() >= MachineOrSand.POINTS);
    for (int i = 0; i < points.size(); i++) {
      assertTrue(given.value().best().weightedSeconds() <= points.get(i).weightedSeconds());
      if (i > 0) {
        assertTrue(points.get(i).machineSeconds() < points.get(i - 1).machineSeconds());
        assertTrue(points.get(i).sandingSeconds() >= points.get(i - 1).sandingSeconds());
      }
    }
  }

  @Property(tries = TRIES)
  void rubbingOutKeepsTheFilmInBalance(
      @ForAll Sheen sheen,
      @ForAll @Scale(6) @DoubleRange(min = 5, max = 300) double film,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 40) double level) {
    SandingShop shop = new SandingShop(GritTable.FEPA_P, List.of(SandingTool.BLOCK), 1.7);
    if (!(RubOut.plan(new RubOutRequest(sheen, film, level, 0.4, shop))
        instanceof Answer.Given<RubOutSchedule> given)) {
      return;
    }
    RubOutSchedule schedule = given.value();
    assertEquals(film, schedule.removedMicron() + schedule.leftMicron(), 1e-9);
    assertTrue(schedule.leftMicron() >= 25 && schedule.removedMicron() >= level);
    double before = Double.POSITIVE_INFINITY;
    for (SandingPass pass : schedule.papers()) {
      assertTrue(pass.grit().micron() < before && pass.grit().micron() <= 46);
      before = pass.grit().micron();
    }
  }
}
