package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishUse;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.StartSurface;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a plan says of the dust its sanding makes and of what a gun sprays past the parts. */
class DustAndOversprayTest {
  private static final ProjectRequest USUAL =
      Projects.of(Projects.evenings(), Climate.swing(17, 21, 50), 2);

  private static Step step(ProjectRequest request, String id) {
    return Project.plan(request)
        .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()))
        .find(id)
        .orElseThrow();
  }

  private static ProjectPlan fail(String reasons) {
    throw new AssertionError(reasons);
  }

  private static ProjectRequest with(List<Part> parts, Finish finish, ApplicationMethod method) {
    Materials materials = USUAL.materials();
    Layer layer = materials.top();
    CoatChoice coats = layer.coats();
    return new ProjectRequest(
        USUAL.start(),
        parts,
        Materials.of(
            materials.wood(),
            materials.adhesive(),
            new Layer(
                layer.title(),
                finish,
                layer.solvents(),
                new CoatChoice(coats.coats(), coats.wetFilmMicron(), method, coats.sheen()))),
        USUAL.shop(),
        USUAL.place(),
        USUAL.settled(),
        USUAL.moisturePercent());
  }

  private static Finish sprayable() {
    Finish brushed = USUAL.materials().top().finish();
    FinishUse use = brushed.use();
    return new Finish(
        brushed.family(),
        brushed.role(),
        brushed.curing(),
        brushed.times(),
        brushed.air(),
        brushed.liquid(),
        brushed.film(),
        new FinishUse(
            List.of(ApplicationMethod.BRUSH, ApplicationMethod.SPRAY),
            use.places(),
            use.finalGrade(),
            use.betweenCoatGrade(),
            use.raisesGrain(),
            use.how()));
  }

  private static boolean tells(Step step, QuantityKey key) {
    return step.working().stream().anyMatch(line -> line.key() == key);
  }

  private static WorkingLine line(Step step, QuantityKey key) {
    return step.working().stream().filter(line -> line.key() == key).findFirst().orElseThrow();
  }

  private static boolean notes(Step step, String words) {
    return step.notes().stream().map(Message::pattern).anyMatch(note -> note.contains(words));
  }

  @Test
  void sandingTellsWhatOfItsDustFloatsAndTheMask() {
    Step sand = step(USUAL, "sand");
    WorkingLine floats = line(sand, QuantityKey.AIRBORNE_DUST);
    double removed = floats.inputs().get(0).quantity().value();
    // A vacuum catches 86 %, and a tenth of the rest floats.
    assertEquals(removed * 0.14 * 0.1, floats.result().quantity().value(), 1e-12);
    assertTrue(notes(sand, "floats in the room"));
    assertTrue(notes(sand, "particle filter"));
    assertTrue(sand.cautions().stream().map(Caution::code).toList().contains("dust-fire"));
  }

  /** What an old coat is made of nobody knows here: no figure makes its dust look safe. */
  @Test
  void sandingAnOldCoatTellsNoFigureOfItsDust() {
    List<Part> parts = new ArrayList<>();
    for (Part part : USUAL.parts()) {
      parts.add(
          new Part(
              part.name(),
              part.count(),
              part.lengthMetre(),
              part.widthMetre(),
              part.thicknessMetre(),
              part.rings(),
              part.boards(),
              new StartSurface.OldFilm(80, StartSurface.OldFilm.Fate.REMOVE),
              part.machiningSecond(),
              part.moves()));
    }
    Step sand =
        step(with(parts, USUAL.materials().top().finish(), ApplicationMethod.BRUSH), "sand");
    assertFalse(tells(sand, QuantityKey.AIRBORNE_DUST));
    assertTrue(sand.cautions().stream().map(Caution::code).toList().contains("old-film-lead"));
  }

  @Test
  void everySprayedCoatTellsWhatGoesPastTheParts() {
    ProjectRequest sprayed = with(USUAL.parts(), sprayable(), ApplicationMethod.SPRAY);
    for (int i = 1; i <= 3; i++) {
      Step coat = step(sprayed, "coat-" + i);
      double solids = line(coat, QuantityKey.SOLIDS_SPRAYED).result().quantity().value();
      // A gun of this kind lands half.
      assertEquals(
          0.5 * solids, line(coat, QuantityKey.MIST_MADE).result().quantity().value(), 1e-12);
      assertTrue(notes(coat, "go past the parts"));
      assertTrue(coat.cautions().stream().map(Caution::code).toList().contains("spray-mist"));
    }
  }

  @Test
  void aBrushedCoatTellsOfNoOverspray() {
    Step coat = step(with(USUAL.parts(), sprayable(), ApplicationMethod.BRUSH), "coat-1");
    assertFalse(tells(coat, QuantityKey.MIST_MADE));
    assertFalse(notes(coat, "go past the parts"));
  }
}
