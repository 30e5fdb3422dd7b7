package benchlore.generator.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Kind;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.coating.Coating;
import benchlore.schedules.coating.CoatsRequest;
import benchlore.schedules.cutting.CutMaterial;
import benchlore.schedules.cutting.Cutting;
import benchlore.schedules.cutting.CuttingRequest;
import benchlore.schedules.cutting.Machine;
import benchlore.schedules.glueup.GlueUp;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.Species;
import benchlore.schedules.movement.Fit;
import benchlore.schedules.movement.FitRequest;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.movement.SteadyAir;
import benchlore.schedules.project.CoatChoice;
import benchlore.schedules.project.Layer;
import benchlore.schedules.project.Materials;
import benchlore.schedules.project.Project;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Step;
import benchlore.schedules.project.Suits;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every record goes through its planner, and whatever is said is said in a reader's words. */
class EveryRecordSpeaksTest {
  private static final Path CONTENT = Path.of("..", "content");
  private static final Moment START = Moment.of(2027, 4, 3, 10, 0);

  /** A path with a dot, a name in camel case, a constant in capitals. */
  private static final Pattern INNER =
      Pattern.compile(
          "\\b[a-z][A-Za-z-]*\\.[a-z][A-Za-z-]+|\\b(?!pH\\b)[a-z]+[A-Z]\\w*"
              + "|\\b[A-Z]{2,}_[A-Z_]+\\b|\\b(?!HVLP\\b|NIOSH\\b|OSHA\\b|ACGIH\\b|FEPA\\b)[A-Z]{4,}\\b");

  private static Content content;

  @BeforeAll
  static void loadContent() throws IOException {
    content = Content.load(CONTENT).value().orElseThrow();
  }

  private final TreeSet<String> said = new TreeSet<>();
  private int refused;

  private void hear(Message message) {
    said.add(message.pattern());
  }

  private <T> void hear(Answer<T> answer) {
    hear(answer, value -> {});
  }

  private <T> void hear(Answer<T> answer, Consumer<T> more) {
    answer.fold(
        given -> {
          given.cautions().forEach(this::hear);
          more.accept(given.value());
          return true;
        },
        no -> {
          refused++;
          assertTrue(!no.reasons().isEmpty());
          no.reasons()
              .forEach(
                  reason -> {
                    hear(reason.problem());
                    hear(reason.remedy());
                  });
          return false;
        });
  }

  private void hear(Caution caution) {
    hear(caution.what());
    hear(caution.measure());
  }

  private void assertReadersWords() {
    List<String> inner = new ArrayList<>();
    for (String sentence : said) {
      if (INNER.matcher(sentence.replaceAll("\"[^\"]*\"", "")).find()) {
        inner.add(sentence);
      }
    }
    assertEquals(List.of(), inner);
  }

  private List<LibraryRecord> of(Kind kind) {
    return content.library().of(kind);
  }

  @Test
  void everyAdhesiveIsGluedWithOrSaysWhyNot() {
    int planned = 0;
    for (LibraryRecord record : of(Kind.ADHESIVES)) {
      Adhesive adhesive = EngineData.adhesive(record);
      for (double celsius : new double[] {-5, 21, 60}) {
        for (double moisture : new double[] {4, 9, 40}) {
          for (double gap : new double[] {0, 0.01, 0.5}) {
            Answer<?> answer = GlueUp.plan(glueUp(adhesive, celsius, moisture, gap));
            hear(answer);
            planned = answer instanceof Answer.Given ? planned + 1 : planned;
          }
        }
      }
    }
    assertTrue(planned > 30, planned + " were planned");
    assertTrue(said.stream().anyMatch(words -> words.startsWith("This is a filler")));
    assertReadersWords();
  }

  private static GlueUpRequest glueUp(
      Adhesive adhesive, double celsius, double moisture, double gap) {
    return new GlueUpRequest(
        adhesive,
        List.of(
            new GlueUpRequest.Joint(
                "edge", 0.3, 0.02, 1, GlueUpRequest.Arrangement.IN_LINE, 0.1, gap)),
        new GlueUpRequest.Wood(600, false, List.of(moisture), 600),
        new GlueUpRequest.Clamps(20, 4000, 0.03, 0),
        Climate.steady(celsius, 50),
        START,
        new GlueUpRequest.Pace(5, 100, 5, 2));
  }

  @Test
  void everySpeciesIsFittedOrSaysWhyNot() {
    for (LibraryRecord record : of(Kind.SPECIES)) {
      Species wood = EngineData.wood(record);
      for (double width : new double[] {0.4, 90}) {
        for (PlaceClimate place : PlaceClimate.values()) {
          hear(
              Fit.plan(
                  new FitRequest(
                      wood,
                      RingAngle.FLAT,
                      width,
                      width < 1 ? 0.02 : 40,
                      width < 1 ? 10 : 99,
                      new SteadyAir(width < 1 ? 18 : -80, 50),
                      place.seasons(),
                      Optional.empty(),
                      Optional.empty())));
        }
      }
      hear(
          Project.plan(project(wood, adhesive("yellow-pva"), demo().materials().top().finish())),
          this::steps);
    }
    assertTrue(refused > 0 && said.size() > 10);
    assertReadersWords();
  }

  @Test
  void everyFinishGoesOnOrSaysWhyNot() {
    int planned = 0;
    for (LibraryRecord record : of(Kind.FINISHES)) {
      Optional<Finish> finish = EngineData.finish(record);
      if (finish.isEmpty()) {
        continue;
      }
      double film = finish.get().film().wetFilm().mid();
      hear(Coating.coats(new CoatsRequest(finish.get(), film, 30)));
      hear(Coating.coats(new CoatsRequest(finish.get(), -1, 1e9)));
      Answer<ProjectPlan> plan =
          Project.plan(project(demo().materials().wood(), adhesive("yellow-pva"), finish.get()));
      hear(plan, this::steps);
      planned = plan instanceof Answer.Given ? planned + 1 : planned;
    }
    assertTrue(planned > 5, planned + " were planned");
    assertReadersWords();
  }

  @Test
  void everyAdhesiveGoesThroughAWholePlanOrSaysWhyNot() {
    for (LibraryRecord record : of(Kind.ADHESIVES)) {
      hear(
          Project.plan(
              project(
                  demo().materials().wood(),
                  EngineData.adhesive(record),
                  demo().materials().top().finish())),
          this::steps);
    }
    assertReadersWords();
  }

  @Test
  void everyBitIsSetOrSaysWhyNot() {
    for (LibraryRecord record : of(Kind.ROUTER_BITS)) {
      for (double depth : new double[] {0.005, 3}) {
        for (double highest : new double[] {24_000, 1}) {
          hear(
              Cutting.plan(
                  new CuttingRequest(
                      CutMaterial.HARDWOOD,
                      EngineData.bit(record),
                      new Machine(Machine.Kind.LIGHT_CNC, 8_000, highest, 0.1),
                      CuttingRequest.Side.SLOT,
                      depth,
                      OptionalDouble.empty(),
                      new CuttingRequest.Trim(0, CuttingRequest.Trim.USUAL_BITE_METRE),
                      OptionalDouble.empty())));
        }
      }
    }
    assertTrue(refused > 0 && said.size() > 5);
    assertReadersWords();
  }

  private static ProjectRequest demo() {
    return content.plans().get(0).request();
  }

  private static Adhesive adhesive(String id) {
    return EngineData.adhesive(content.library().entries().get(id));
  }

  private static ProjectRequest project(Species wood, Adhesive adhesive, Finish finish) {
    ProjectRequest demo = demo();
    Sheen sheen = finish.film().sheens().isEmpty() ? Sheen.SATIN : finish.film().sheens().get(0);
    return new ProjectRequest(
        demo.start(),
        demo.parts(),
        new Materials(
            wood,
            adhesive,
            List.of(
                new Layer(
                    "finish",
                    finish,
                    EngineData.organic(finish, content.library()),
                    new CoatChoice(
                        2, finish.film().wetFilm().mid(), finish.use().methods().get(0), sheen))),
            Suits.NONE),
        demo.shop(),
        demo.place(),
        demo.settled(),
        demo.moisturePercent());
  }

  private void steps(ProjectPlan plan) {
    for (Step step : plan.steps()) {
      said.add(step.title());
      step.notes().forEach(this::hear);
      step.cautions().forEach(this::hear);
    }
  }
}
