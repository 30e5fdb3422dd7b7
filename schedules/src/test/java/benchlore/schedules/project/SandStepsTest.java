package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.sanding.SandingShop;
import benchlore.schedules.sanding.SawnBy;
import benchlore.schedules.sanding.StartSurface;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** How a whole project is sanded: one sequence for what stands side by side, counted once. */
class SandStepsTest {
  private static final StartSurface PLANED = new StartSurface.Planed(0.0015, 0.03);

  private static Part part(String name, int count, double lengthMetre, StartSurface surface) {
    return new Part(
        name, count, lengthMetre, 0.08, 0.02, RingAngle.FLAT, 1, surface, 60, Moves.FIXED);
  }

  private static ProjectRequest request(List<Part> parts, List<Grit> shelf) {
    ProjectRequest usual = Projects.of(Projects.evenings(), Climate.swing(17, 21, 50), 1);
    SandingShop sanding = usual.shop().sanding();
    Shop shop =
        new Shop(
            usual.shop().week(),
            usual.shop().climate(),
            usual.shop().room(),
            usual.shop().ignition(),
            new SandingShop(shelf, sanding.tools(), sanding.jumpLimitRatio()),
            usual.shop().clamps(),
            1);
    return new ProjectRequest(
        usual.start(), parts, usual.materials(), shop, usual.place(), true, 8, Progress.NONE);
  }

  private static List<Grit> usualShelf() {
    return Projects.of(Projects.evenings(), Climate.swing(17, 21, 50), 1).shop().sanding().shelf();
  }

  private static List<Grit> without(int number) {
    List<Grit> shelf = new ArrayList<>(usualShelf());
    shelf.removeIf(grit -> grit.number() == number);
    return shelf;
  }

  /** The steps of sanding alone, without the finding of hours for the coats. */
  private static PlanBuilder sanded(ProjectRequest request) {
    PlanBuilder draft = new PlanBuilder(request.shop().week(), request.start(), request.progress());
    new SandSteps(request, draft).add();
    assertFalse(draft.refused(), () -> draft.refusals().toString());
    return draft;
  }

  private static List<String> notes(PlanBuilder draft) {
    Step sand = draft.steps().get(0);
    assertEquals("sand", sand.id().name());
    return sand.notes().stream().map(note -> note.pattern()).toList();
  }

  private static int bought(PlanBuilder draft, int number) {
    return draft.shopping().stream()
        .filter(bought -> bought.what().equals("P" + number))
        .mapToInt(bought -> (int) bought.amount().value())
        .sum();
  }

  @Test
  void partsOfOneKindOfSurfaceGoThroughOneSequence() {
    PlanBuilder draft =
        sanded(
            request(
                List.of(
                    part("top", 1, 2.5, PLANED),
                    part("rail", 2, 0.1, new StartSurface.Planed(0.0012, 0.04)),
                    part("leg", 4, 0.7, PLANED)),
                usualShelf()));
    assertEquals("top, rail and leg: P120 for {0}, then P180 for {1}.", notes(draft).get(0));
  }

  @Test
  void theRoughestPartOpensForAllOfItsKind() {
    PlanBuilder draft =
        sanded(
            request(
                List.of(
                    part("panel", 1, 0.8, new StartSurface.BallNose(0.012, 0.0008)),
                    part("frame", 1, 0.8, new StartSurface.BallNose(0.012, 0.006))),
                usualShelf()));
    assertTrue(notes(draft).get(0).startsWith("panel and frame: P80 for"), notes(draft).toString());
  }

  @Test
  void anotherKindOfSurfaceHasItsOwnOpeningAndTheSameEnd() {
    List<String> notes =
        notes(
            sanded(
                request(
                    List.of(
                        part("top", 1, 0.8, PLANED),
                        part("edge", 1, 0.8, new StartSurface.Sawn(SawnBy.BANDSAW))),
                    usualShelf())));
    assertEquals("top: P120 for {0}, then P180 for {1}.", notes.get(0));
    assertTrue(notes.stream().anyMatch(n -> n.startsWith("edge: P80") && n.contains("P180 for")));
  }

  @Test
  void aPartThatIsFineEnoughIsToldWhatToDo() {
    Grit fine = Grits.find(GritSystem.FEPA_P, 220).orElseThrow();
    PlanBuilder draft =
        sanded(
            request(List.of(part("panel", 1, 0.8, new StartSurface.SandedTo(fine))), usualShelf()));
    assertEquals(
        "panel: nothing to do; open the wood with P180, a few light strokes.", notes(draft).get(0));
    assertEquals(1, bought(draft, 180));
  }

  /** Each is turned and clamped for two faces and the edges, with every grade. */
  @Test
  void aHundredSmallBoardsTakeAnAfternoon() {
    Step sand =
        sanded(request(List.of(part("board", 100, 0.2, PLANED)), usualShelf())).steps().get(0);
    assertTrue(sand.workSeconds() > 2 * 3_600, sand.workSeconds() + " s");
    assertTrue(sand.workSeconds() < 5 * 3_600, sand.workSeconds() + " s");
  }

  /** Ten parts that wear a tenth of a disc each use one. */
  @Test
  void discsAreRoundedUpOnceForTheWholeProject() {
    List<Part> many = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      double depth = i + 100;
      many.add(part("rail " + i, 1, 0.3, new StartSurface.TornGrain(depth)));
    }
    PlanBuilder draft = sanded(request(many, usualShelf()));
    for (int number : List.of(120, 180)) {
      assertTrue(bought(draft, number) <= 2, number + ": " + bought(draft, number));
    }
  }

  @Test
  void thePaperBetweenCoatsIsOnTheListAndLookedForOnTheShelf() {
    List<Part> parts = List.of(part("panel", 1, 0.8, PLANED));
    PlanBuilder there = sanded(request(parts, usualShelf()));
    assertTrue(bought(there, 320) >= 1, there.shopping().toString());
    PlanBuilder missing = sanded(request(parts, without(320)));
    Purchase paper =
        missing.shopping().stream()
            .filter(bought -> bought.what().equals("P320"))
            .findFirst()
            .orElseThrow();
    assertTrue(paper.remark().contains("between coats"), paper.remark());
    assertTrue(paper.remark().endsWith("not on the shelf yet"), paper.remark());
  }

  @Test
  void everyAlikeSurfaceIsCheckedNotTheRoughestAlone() {
    ProjectRequest request =
        request(
            List.of(
                part("top", 1, 0.8, PLANED), part("leg", 1, 0.8, bad()), part("x", 1, 1, bad())),
            usualShelf());
    PlanBuilder draft = new PlanBuilder(request.shop().week(), request.start(), Progress.NONE);
    new SandSteps(request, draft).add();
    assertTrue(draft.refused());
    assertEquals("knifePitchMetre", draft.refusals().get(0).input());
  }

  private static StartSurface bad() {
    return new StartSurface.Planed(Double.NaN, 0.03);
  }

  @Test
  void woodThatTakesStainUnevenlyIsNotFigured() {
    assertFalse(
        Materials.sandingWood(
                Projects.of(Projects.evenings(), Climate.swing(17, 21, 50), 1).materials().wood())
            .figured());
  }

  @Provide
  Arbitrary<List<Part>> parts() {
    Arbitrary<StartSurface> surfaces =
        Arbitraries.oneOf(
            Arbitraries.of(SawnBy.values()).map(StartSurface.Sawn::new),
            Arbitraries.doubles()
                .between(0.0005, 0.004)
                .ofScale(6)
                .map(pitch -> new StartSurface.Planed(pitch, 0.03)),
            Arbitraries.doubles()
                .between(0.0003, 0.006)
                .ofScale(6)
                .map(stepover -> new StartSurface.BallNose(0.012, stepover)),
            Arbitraries.of(usualShelf()).map(StartSurface.SandedTo::new));
    return Combinators.combine(
            Arbitraries.integers().between(1, 100),
            Arbitraries.doubles().between(0.05, 2).ofScale(4),
            surfaces)
        .as((count, length, surface) -> part("p", count, length, surface))
        .list()
        .ofMinSize(1)
        .ofMaxSize(8);
  }

  @Property(tries = 200)
  void everyPartIsToldOnceAndEveryGradeIsBoughtOnce(@ForAll("parts") List<Part> parts) {
    List<Part> named = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      named.add(part("n" + i + "n", part.count(), part.lengthMetre(), part.surface()));
    }
    PlanBuilder draft = sanded(request(named, usualShelf()));
    String text = String.join("\n", notes(draft));
    for (Part part : named) {
      assertEquals(2, text.split(part.name(), -1).length, text);
    }
    assertFalse(text.contains(": ."), text);
    for (String line : text.split("\n", -1)) {
      boolean grades = line.startsWith("n") && line.contains(" for {");
      assertTrue(!grades || line.contains("P180 for {"), line);
      assertTrue(!grades || line.lastIndexOf(" P") <= line.indexOf(" P180"), line);
    }
    List<String> bought = draft.shopping().stream().map(Purchase::what).toList();
    assertEquals(bought.stream().distinct().toList(), bought);
    for (Grit grit : usualShelf()) {
      if (text.contains(grit.label() + " for {")) {
        assertTrue(bought.contains(grit.label()), grit + " in " + bought);
      }
    }
  }

  @Property(tries = 100)
  void theWorkingSaysWhichGradeOpensACutSurface(@ForAll("parts") List<Part> parts) {
    List<WorkingLine> working = sanded(request(parts, usualShelf())).steps().get(0).working();
    boolean cut =
        parts.stream().anyMatch(part -> !(part.surface() instanceof StartSurface.SandedTo));
    assertEquals(
        cut, working.stream().anyMatch(line -> line.key().name().equals("FINEST_OPENING_GRAIN")));
  }

  @Property(tries = 100)
  void theOrderOfThePartsDoesNotMatter(@ForAll("parts") List<Part> parts) {
    List<Part> turned = new ArrayList<>();
    for (int i = parts.size() - 1; i >= 0; i--) {
      turned.add(parts.get(i));
    }
    PlanBuilder one = sanded(request(parts, usualShelf()));
    PlanBuilder other = sanded(request(turned, usualShelf()));
    assertEquals(one.steps().get(0).workSeconds(), other.steps().get(0).workSeconds(), 1e-6);
    assertEquals(
        one.shopping().stream().map(Purchase::what).sorted().toList(),
        other.shopping().stream().map(Purchase::what).sorted().toList());
  }
}
