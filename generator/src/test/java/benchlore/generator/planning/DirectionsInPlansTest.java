package benchlore.generator.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Message;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Directions;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Species;
import benchlore.schedules.project.CoatChoice;
import benchlore.schedules.project.Layer;
import benchlore.schedules.project.Materials;
import benchlore.schedules.project.Project;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Shop;
import benchlore.schedules.project.Step;
import benchlore.schedules.project.Suits;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.ShopWeek;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What a record says of how it is worked stands in the steps of a plan that uses it. */
class DirectionsInPlansTest {
  private static final Path CONTENT = Path.of("../content");
  private static final Climate WARM = Climate.steady(23, 50);

  private final Library library;
  private final ProjectRequest base;

  DirectionsInPlansTest() throws IOException {
    this.library = LibraryLoader.load(CONTENT).value().orElseThrow();
    this.base =
        Plans.all(LibraryLoader.open(CONTENT), library).value().orElseThrow().get(0).request();
  }

  private Species wood(String id) {
    return EngineData.wood(library.find(Kind.SPECIES, id).orElseThrow());
  }

  private Adhesive adhesive(String id) {
    return EngineData.adhesive(library.find(Kind.ADHESIVES, id).orElseThrow());
  }

  private Finish finish(String id) {
    return EngineData.finish(library.find(Kind.FINISHES, id).orElseThrow()).orElseThrow();
  }

  private Answer<ProjectPlan> plan(
      Species wood, Adhesive adhesive, Finish finish, ApplicationMethod method) {
    Shop shop = base.shop();
    return Project.plan(
        new ProjectRequest(
            base.start(),
            base.parts(),
            new Materials(wood, adhesive, List.of(layer(finish, method)), Suits.NONE),
            new Shop(
                ShopWeek.daily(7, 22),
                WARM,
                shop.room(),
                List.of(),
                shop.sanding(),
                shop.clamps(),
                shop.people()),
            base.place(),
            true,
            9));
  }

  private Layer layer(Finish finish, ApplicationMethod method) {
    CoatChoice choice =
        new CoatChoice(
            Math.max(1, (int) finish.film().coats().low()),
            finish.film().wetFilm().low(),
            method,
            finish.film().sheens().get(0));
    return new Layer("finish", finish, EngineData.organic(finish, library), choice);
  }

  private static Optional<String> notes(Answer<ProjectPlan> answer, String step) {
    return answer.fold(
        given -> given.value().find(step).map(DirectionsInPlansTest::notes),
        refused -> Optional.empty());
  }

  private static String notes(Step step) {
    return String.join("\n", step.notes().stream().map(Message::pattern).toList());
  }

  @Test
  void everyFinishSaysItsOwnLinesAtTheFirstCoat() {
    TreeSet<String> planned = new TreeSet<>();
    List<String> missing = new ArrayList<>();
    for (LibraryRecord entry : library.of(Kind.FINISHES)) {
      Optional<Finish> finish = EngineData.finish(entry);
      if (finish.isEmpty()) {
        continue;
      }
      Directions how = finish.get().use().how();
      for (ApplicationMethod method : finish.get().use().methods()) {
        Answer<ProjectPlan> answer =
            plan(wood("white-ash"), adhesive("yellow-pva"), finish.get(), method);
        Optional<String> first = notes(answer, "coat-1");
        if (first.isPresent()) {
          planned.add(entry.id());
          List<String> lines =
              new ArrayList<>(List.of(how.by(method), "Look for " + how.lookFor()));
          how.begin().ifPresent(lines::add);
          lines.stream()
              .filter(line -> !first.get().contains(line))
              .forEach(line -> missing.add(entry.id() + " by " + method + ": " + line));
          how.afterwards()
              .filter(line -> !everywhere(answer).contains(line))
              .ifPresent(line -> missing.add(entry.id() + ": " + line));
          if (finish.get().role() == FinishRole.PENETRATING) {
            assertTrue(everywhere(answer).matches("(?s).*[Ww]ipe.*"), entry.id());
          }
        }
      }
    }
    assertEquals(List.of(), missing);
    assertTrue(planned.size() >= 30, planned.size() + " planned: " + planned);
  }

  private static String everywhere(Answer<ProjectPlan> answer) {
    return answer.fold(
        given -> String.join("\n", given.value().steps().stream().map(s -> notes(s)).toList()),
        refused -> "");
  }

  @Test
  void everyAdhesiveSaysItsOwnLinesAtTheFirstGlueUp() {
    TreeSet<String> planned = new TreeSet<>();
    for (LibraryRecord entry : library.of(Kind.ADHESIVES)) {
      Adhesive adhesive = EngineData.adhesive(entry);
      Answer<ProjectPlan> answer =
          plan(wood("white-ash"), adhesive, finish("danish-oil"), ApplicationMethod.WIPE);
      Optional<String> first = notes(answer, "glue-1");
      if (first.isPresent()) {
        planned.add(entry.id());
        Directions how = adhesive.spreading().how();
        assertTrue(first.get().contains(how.putOn()), entry.id());
        assertTrue(first.get().contains("Look for " + how.lookFor()), entry.id());
        how.begin().ifPresent(line -> assertTrue(first.get().contains(line), entry.id()));
        String off = notes(answer, "clamps-off-1").orElseThrow();
        assertEquals(how.afterwards().orElse(""), off, entry.id());
        boolean bead = adhesive.spreading().laid() == Adhesive.Laid.BEAD;
        assertEquals(bead, first.get().matches("(?s).*beads? of \\{.*"), entry.id());
      }
    }
    assertTrue(planned.size() >= 12, planned.size() + " planned: " + planned);
  }

  private String coat(String wood, String finish) {
    Finish made = finish(finish);
    Answer<ProjectPlan> answer =
        plan(wood(wood), adhesive("epoxy-structural"), made, made.use().methods().get(0));
    return notes(answer, "coat-1")
        .orElseThrow(() -> new AssertionError(finish + " on " + wood + ": " + answer));
  }

  private String sand(String wood, String finish) {
    Finish made = finish(finish);
    return notes(
            plan(wood(wood), adhesive("epoxy-structural"), made, made.use().methods().get(0)),
            "sand")
        .orElseThrow();
  }

  @Test
  void oilyWoodIsWipedJustBeforeAndSealedUnderAFilm() {
    assertTrue(coat("teak", "spar-varnish").contains("oil creeps back"));
    assertTrue(coat("teak", "spar-varnish").contains("dewaxed shellac"));
    assertTrue(coat("iroko", "waterborne-polyurethane").contains("dewaxed shellac"));
    assertTrue(!coat("teak", "dewaxed-shellac").contains("coat of dewaxed shellac, scuffed"));
    assertTrue(coat("teak", "danish-oil").contains("slows an oil finish"));
    assertTrue(coat("ipe", "spar-varnish").contains("No film lasts"));
    assertTrue(coat("padauk", "oil-polyurethane-brushing").contains("colour bleeds"));
    assertTrue(!coat("white-ash", "spar-varnish").contains("acetone"));
  }

  @Test
  void knotsPitchAndCloudsAreSeenToWhileTheWoodIsBare() {
    assertTrue(sand("scots-pine", "spar-varnish").contains("knot"));
    assertTrue(!sand("scots-pine", "danish-oil").contains("knot"));
    assertTrue(!sand("scots-pine", "dewaxed-shellac").contains("knot"));
    assertTrue(sand("longleaf-pine", "danish-oil").contains("pitch"));
    assertTrue(sand("black-cherry", "danish-oil").contains("drinks unevenly"));
    assertTrue(sand("black-cherry", "oil-stain").contains("clouds"));
    assertTrue(!sand("black-cherry", "gel-stain").contains("clouds"));
    assertTrue(!sand("white-ash", "danish-oil").contains("unevenly"));
  }

  @Test
  void tanninIsToldOnlyWhereWaterComes() {
    assertTrue(coat("white-oak", "waterborne-polyurethane").contains("steel wool"));
    assertTrue(!coat("white-oak", "spar-varnish").contains("steel wool"));
    assertTrue(!coat("hard-maple", "waterborne-polyurethane").contains("tannin"));
    Finish oil = finish("danish-oil");
    for (String glue : List.of("yellow-pva", "epoxy-structural")) {
      String notes =
          notes(plan(wood("white-oak"), adhesive(glue), oil, ApplicationMethod.WIPE), "glue-1")
              .orElseThrow();
      assertEquals(glue.equals("yellow-pva"), notes.contains("Paper or tape under steel clamps"));
    }
  }
}
