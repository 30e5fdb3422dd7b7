package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The ways to a sheen. */
class SheenRouteTest {
  private static final Moment NINE = Moment.of(2026, 5, 4, 9, 0);

  private static Answer<SheenPlan> plan(
      FinishMaker maker, Moment today, Optional<Sheen> existing, Sheen wanted) {
    return plan(maker, today, existing, wanted, 1);
  }

  private static Answer<SheenPlan> plan(
      FinishMaker maker, Moment today, Optional<Sheen> existing, Sheen wanted, double face) {
    QuantityRequest job =
        new QuantityRequest(
            maker.make(),
            new CoatedArea(face, 0, false),
            3,
            maker.wetFilm,
            ApplicationMethod.BRUSH,
            SprayGun.HVLP);
    return SheenRoute.plan(
        new SheenRequest(job, NINE, today, Climate.steady(20, 50), existing, wanted));
  }

  private static SheenWay way(Answer<SheenPlan> answer, SheenWay.Kind kind) {
    for (SheenWay way : Answers.value(answer).ways()) {
      if (way.kind() == kind) {
        return way;
      }
    }
    throw new AssertionError("no way " + kind);
  }

  private static List<Integer> grades(SheenWay way) {
    List<Integer> grades = new ArrayList<>();
    for (SheenStep step : way.steps()) {
      grades.add(step.grade());
    }
    return grades;
  }

  @Test
  void rubOutChainsEndWhereTheSheenIs() {
    FinishMaker lacquer = FinishMaker.lacquer();
    SheenWay satin = way(plan(lacquer, NINE, Optional.empty(), Sheen.SATIN), SheenWay.Kind.RUB_OUT);
    assertEquals(List.of(400, 600, 0), grades(satin));
    assertEquals(SheenStep.Work.EVEN_PAD, satin.steps().get(2).what());
    SheenWay semi =
        way(plan(lacquer, NINE, Optional.empty(), Sheen.SEMI_GLOSS), SheenWay.Kind.RUB_OUT);
    assertEquals(List.of(400, 600, 1000, 1500, 0), grades(semi));
    assertEquals(SheenStep.Work.PUMICE, semi.steps().get(4).what());
    SheenWay gloss = way(plan(lacquer, NINE, Optional.empty(), Sheen.GLOSS), SheenWay.Kind.RUB_OUT);
    assertEquals(List.of(400, 600, 1000, 1500, 2000, 0), grades(gloss));
    assertEquals(SheenStep.Work.POLISH, gloss.steps().get(5).what());
    assertEquals(NINE.plusDays(30), gloss.from());
  }

  @Test
  void aLastCoatOverAFilmIsDenibbedFirstAndALaterOneScuffed() {
    FinishMaker oil = FinishMaker.oil();
    SheenWay young = way(plan(oil, NINE, Optional.empty(), Sheen.SATIN), SheenWay.Kind.LAST_COAT);
    assertEquals(SheenStep.Work.SCUFF, young.steps().get(0).what());
    assertEquals(NINE.plusHours(12), young.from());
    SheenWay cured =
        way(
            plan(oil, NINE.plusDays(60), Optional.of(Sheen.GLOSS), Sheen.SATIN),
            SheenWay.Kind.LAST_COAT);
    assertEquals(SheenStep.Work.SCUFF, cured.steps().get(0).what());
    assertEquals(400, cured.steps().get(0).grade());
    assertEquals(NINE.plusDays(60), cured.from());
    assertTrue(cured.supplies().liquidCubicMetre() > 0);
  }

  @Test
  void dullingALevelGlossTakesOneStep() {
    Answer<SheenPlan> answer =
        plan(FinishMaker.oil(), NINE.plusDays(60), Optional.of(Sheen.GLOSS), Sheen.SATIN);
    SheenWay rub = way(answer, SheenWay.Kind.RUB_OUT);
    assertEquals(1, rub.steps().size());
    assertEquals(SheenWay.Kind.RUB_OUT, Answers.value(answer).ways().get(0).kind());
  }

  @Test
  void theSheenItHasNeedsNothing() {
    Answer<SheenPlan> answer = plan(FinishMaker.oil(), NINE, Optional.of(Sheen.SATIN), Sheen.SATIN);
    assertEquals(SheenWay.Kind.LEAVE, Answers.value(answer).ways().get(0).kind());
    assertEquals(Supplies.NONE, Answers.value(answer).ways().get(0).supplies());
  }

  @Test
  void toughFilmsDoNotRubToGlossAndMattIsNeverRubbed() {
    FinishMaker oil = FinishMaker.oil();
    oil.sheens = List.of(Sheen.SATIN);
    assertEquals(
        List.of("wanted"), Answers.refused(plan(oil, NINE, Optional.empty(), Sheen.GLOSS)));
    assertEquals(
        List.of("wanted"),
        Answers.refused(plan(FinishMaker.lacquer(), NINE, Optional.empty(), Sheen.MATT)));
  }

  @Test
  void oilsLeaveNoFilmToRub() {
    FinishMaker oil = FinishMaker.oil();
    oil.role = FinishRole.PENETRATING;
    assertEquals(
        List.of("finish"), Answers.refused(plan(oil, NINE, Optional.empty(), Sheen.SATIN)));
  }

  @Test
  void aThinFilmAndSeparateCoatsAreCautioned() {
    FinishMaker lacquer = FinishMaker.lacquer();
    lacquer.wetFilm = 50;
    assertTrue(
        Answers.codes(plan(lacquer, NINE, Optional.empty(), Sheen.SATIN)).contains("rub-through"));
    assertTrue(
        Answers.codes(plan(FinishMaker.epoxy(), NINE, Optional.empty(), Sheen.GLOSS))
            .contains("witness-lines"));
    assertTrue(
        Answers.codes(plan(lacquer, NINE, Optional.empty(), Sheen.SATIN))
            .contains("stir-flatting"));
  }

  @Test
  void workBeforeTheLastCoatIsRefused() {
    assertEquals(
        List.of("today"),
        Answers.refused(plan(FinishMaker.oil(), NINE.plusDays(-1), Optional.empty(), Sheen.SATIN)));
  }

  @Property(tries = 200)
  void moreAreaNeverTakesLess(
      @ForAll Sheen wanted,
      @ForAll @DoubleRange(min = 0.1, max = 5) double face,
      @ForAll @DoubleRange(min = 0, max = 5) double more) {
    FinishMaker lacquer = FinishMaker.lacquer();
    lacquer.sheens = List.of(Sheen.MATT, Sheen.GLOSS);
    SheenPlan small = Answers.value(plan(lacquer, NINE, Optional.empty(), wanted, face));
    SheenPlan large = Answers.value(plan(lacquer, NINE, Optional.empty(), wanted, face + more));
    assertEquals(small.ways().size(), large.ways().size());
    for (int i = 0; i < small.ways().size(); i++) {
      SheenWay one = small.ways().get(i);
      SheenWay two = large.ways().get(i);
      assertTrue(two.seconds() >= one.seconds());
      assertTrue(two.supplies().sheets() >= one.supplies().sheets());
      assertTrue(two.supplies().liquidCubicMetre() >= one.supplies().liquidCubicMetre());
    }
  }
}
