package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Message;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.Directions;
import benchlore.schedules.material.FilmBuild;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishUse;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.ShopWeek;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CoatHowTest {
  private static final Optional<Sheen> GLOSS = Optional.of(Sheen.GLOSS);
  private static final Optional<Sheen> SATIN = Optional.of(Sheen.SATIN);
  private static final Directions SAID =
      new Directions(
          Optional.of("Thin this coat alone."),
          "Flow it on.",
          Optional.of("Spray it thin."),
          Optional.of("Wash it."),
          "bubbles.");

  private static CoatHow how(CoatBond bond, ApplicationMethod method) {
    Finish usual =
        Projects.of(ShopWeek.ALWAYS, Climate.steady(20, 50), 1)
            .materials()
            .layers()
            .get(0)
            .finish();
    FilmBuild film = usual.film();
    FinishUse use = usual.use();
    Finish finish =
        new Finish(
            usual.family(),
            usual.role(),
            usual.curing(),
            usual.times(),
            usual.air(),
            usual.liquid(),
            new FilmBuild(bond, film.wetFilm(), film.coats(), film.maximumDryFilm(), film.sheens()),
            new FinishUse(
                use.methods(),
                use.places(),
                use.finalGrade(),
                use.betweenCoatGrade(),
                use.raisesGrain(),
                SAID));
    return new CoatHow(finish, Optional.empty(), method);
  }

  private static List<String> lines(CoatHow how, int number) {
    return how.lines(number, 3, GLOSS, GLOSS).stream().map(Message::pattern).toList();
  }

  @Test
  void tellsAllAtTheFirstCoatAndLaterOnlyWhatDiffers() {
    CoatHow how = how(CoatBond.WITHIN_WINDOW, ApplicationMethod.BRUSH);
    assertEquals(
        List.of("Thin this coat alone. Flow it on.", "Wash it.", "Look for bubbles."),
        lines(how, 1));
    assertEquals(List.of("Put on as coat 1."), lines(how, 2));
    assertEquals(List.of("Put on as coat 1."), lines(how, 3));
  }

  @Test
  void aGunHasItsOwnLine() {
    assertEquals(
        "Thin this coat alone. Spray it thin.",
        lines(how(CoatBond.WITHIN_WINDOW, ApplicationMethod.SPRAY), 1).get(0));
  }

  @Test
  void whatGoesOnWetIsSeenToOnceTheLastCoatIsOn() {
    for (CoatBond wet : List.of(CoatBond.WHILE_TACKY, CoatBond.WHILE_WET)) {
      CoatHow how = how(wet, ApplicationMethod.BRUSH);
      assertTrue(!lines(how, 1).contains("Wash it.") && !lines(how, 2).contains("Wash it."));
      assertTrue(lines(how, 3).contains("Wash it."));
    }
  }

  @Test
  void theFlattingPowderIsStirredWhereItBegins() {
    CoatHow how = how(CoatBond.WITHIN_WINDOW, ApplicationMethod.BRUSH);
    assertTrue(how.lines(1, 3, SATIN, Optional.empty()).get(0).pattern().contains("Stir"));
    assertTrue(how.lines(3, 3, SATIN, GLOSS).get(0).pattern().contains("Stir"));
    assertEquals("Put on as coat 1.", how.lines(2, 3, SATIN, SATIN).get(0).pattern());
    assertEquals("Put on as coat 1.", how.lines(2, 3, GLOSS, GLOSS).get(0).pattern());
  }
}
