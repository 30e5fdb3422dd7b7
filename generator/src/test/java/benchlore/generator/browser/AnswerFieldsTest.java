package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.export.JsonText;
import benchlore.generator.export.RequestJson;
import benchlore.schedules.air.Air;
import benchlore.schedules.air.Mist;
import benchlore.schedules.air.RespiratorAdvice;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.Coating;
import benchlore.schedules.coating.SheenRoute;
import benchlore.schedules.cutting.Cutting;
import benchlore.schedules.exchange.EngineJson;
import benchlore.schedules.glueup.GlueUp;
import benchlore.schedules.movement.Fit;
import benchlore.schedules.present.DayRow;
import benchlore.schedules.present.PlanDays;
import benchlore.schedules.project.Project;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Step;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.sanding.MachineOrSand;
import benchlore.schedules.sanding.Sanding;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Answers as JSON hold every component of the engine's records, by its own name. */
final class AnswerFieldsTest {
  private static final int REQUESTS = 40;
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .addMixIn(StepId.class, NamedStep.class)
          .addMixIn(Step.class, FlatStep.class)
          .addMixIn(RespiratorAdvice.class, WordedMask.class)
          .addModule(
              new SimpleModule()
                  .addSerializer(
                      Moment.class, form((time, out) -> out.writeString(time.toString())))
                  .addSerializer(Date.class, form((day, out) -> out.writeString(day.toString())))
                  .addSerializer(Duration.class, form((d, out) -> out.writeNumber(d.seconds())))
                  .addSerializer(
                      OptionalDouble.class,
                      form((v, out) -> out.writeObject(v.isPresent() ? v.getAsDouble() : null)))
                  .addSerializer(optional(), form((v, out) -> out.writeObject(v.orElse(null)))))
          .build();

  /** A step has its name beside what it is made of. */
  private interface NamedStep {
    @JsonProperty("id")
    String name();
  }

  /** Which step it is stands among the step's own. */
  private interface FlatStep {
    @SuppressWarnings("unused") // The JSON library alone reads it.
    @JsonUnwrapped
    StepId id();

    @SuppressWarnings("unused") // The JSON library alone reads it.
    @JsonProperty("isByTheDay")
    boolean isByTheDay();
  }

  /** A mask's words stand beside its class. */
  private interface WordedMask {
    @SuppressWarnings("unused") // The JSON library alone reads it.
    @JsonProperty("words")
    String words();
  }

  /** How a value of one type is written. */
  private interface Form<T> {
    void write(T value, JsonGenerator out) throws IOException;
  }

  private static <T> JsonSerializer<T> form(Form<T> form) {
    return new JsonSerializer<>() {
      @Override
      public void serialize(T value, JsonGenerator out, SerializerProvider p) throws IOException {
        form.write(value, out);
      }
    };
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // Optional has no class literal with its parameter
  private static Class<Optional<?>> optional() {
    return (Class) Optional.class;
  }

  @Test
  void nothingIsLeftOut() throws IOException {
    RandomRequests r = new RandomRequests(Path.of("../content"), 2);
    same(r::sanding, Sanding::plan, EngineJson::sanding);
    same(r::machineOrSand, MachineOrSand::plan, EngineJson::machineOrSand);
    same(r::drying, Coating::drying, EngineJson::drying);
    same(r::dew, Coating::dew, EngineJson::dew);
    same(r::coats, Coating::coats, EngineJson::coats);
    same(r::grade, g -> Grits.convert(g.grit(), g.system()), EngineJson::grade);
    same(r::sheen, SheenRoute::plan, EngineJson::sheen);
    same(r::glueUp, GlueUp::plan, EngineJson::glueUp);
    same(r::air, Air::plan, EngineJson::air);
    same(r::mist, Mist::plan, EngineJson::mist);
    same(r::fit, Fit::plan, EngineJson::fit);
    same(r::cutting, Cutting::plan, EngineJson::cutting);
    same(r::reach, Cutting::plan, EngineJson::reach);
    same(r::tabs, Cutting::plan, EngineJson::tabs);
    same(r::surfacing, Cutting::plan, EngineJson::surfacing);
    same(r::plan, AnswerFieldsTest::planned, EngineJson::plan);
  }

  /** A plan as a page gets it: with its days as rows to draw. */
  private record Planned(List<DayRow> days, @JsonUnwrapped ProjectPlan plan) {}

  private static Answer<Planned> planned(ProjectRequest request) {
    return Project.plan(request)
        .fold(
            given ->
                Answer.of(
                    new Planned(PlanDays.of(given.value(), request.shop()), given.value()),
                    given.working(),
                    given.cautions()),
            refused -> Answer.refuse(refused.reasons()));
  }

  private static <Q, A> void same(
      Supplier<Q> requests, Function<Q, Answer<A>> engine, EngineJson.Call json)
      throws IOException {
    int given = 0;
    for (int i = 0; i < REQUESTS; i++) {
      Q request = requests.get();
      Answer<A> answer = engine.apply(request);
      String text = JsonText.answer(json, RequestJson.write(request));
      JsonNode told = JSON.readTree(text);
      if (told.has("broken")) {
        continue; // a figure that JSON can't hold
      }
      JsonNode whole = JSON.readTree(JSON.writeValueAsString(answer));
      for (String part : List.of("value", "working", "cautions", "reasons")) {
        if (!whole.path(part).equals(AnswerFieldsTest::compare, told.path(part))) {
          assertEquals(whole.path(part), told.path(part), () -> part + " of " + whole);
        }
      }
      given = answer instanceof Answer.Given ? given + 1 : given;
    }
    assertTrue(given > REQUESTS / 10, "only " + given + " were answered");
  }

  /** As numbers where both are; whole and broken numbers are of different kinds in a tree. */
  private static int compare(JsonNode one, JsonNode two) {
    boolean same =
        (one.isNumber() && two.isNumber())
            ? one.doubleValue() == two.doubleValue()
            : one.equals(two);
    return same ? 0 : 1;
  }
}
