package benchlore.generator.export;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.plan.ProjectPlan;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A plan as JSON: the engine's own records, field by field, SI units, ISO 8601 local times,
 * durations in seconds, {@code null} for what is absent. A refusal has {@code reasons} instead of
 * {@code value}.
 */
public final class PlanJson {
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .addModule(
              new SimpleModule()
                  .addSerializer(LocalDateTime.class, new Times())
                  .addSerializer(Duration.class, new Durations())
                  .addSerializer(OptionalDouble.class, new OptionalDoubles())
                  .addSerializer(optional(), new Optionals()))
          .build();

  private PlanJson() {}

  /** The answer as JSON, ending in a line break. */
  public static String render(Answer<ProjectPlan> answer) {
    try {
      return JSON.writeValueAsString(answer) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the engine's records always serialise", e);
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // Optional has no class literal with its parameter
  private static Class<Optional<?>> optional() {
    return (Class) Optional.class;
  }

  private static final class Times extends JsonSerializer<LocalDateTime> {
    @Override
    public void serialize(LocalDateTime time, JsonGenerator out, SerializerProvider p)
        throws IOException {
      out.writeString(DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(time));
    }
  }

  private static final class Durations extends JsonSerializer<Duration> {
    @Override
    public void serialize(Duration time, JsonGenerator out, SerializerProvider p)
        throws IOException {
      out.writeNumber(time.toSeconds());
    }
  }

  private static final class OptionalDoubles extends JsonSerializer<OptionalDouble> {
    @Override
    public void serialize(OptionalDouble value, JsonGenerator out, SerializerProvider p)
        throws IOException {
      if (value.isPresent()) {
        out.writeNumber(value.getAsDouble());
      } else {
        out.writeNull();
      }
    }
  }

  private static final class Optionals extends JsonSerializer<Optional<?>> {
    @Override
    public void serialize(Optional<?> value, JsonGenerator out, SerializerProvider p)
        throws IOException {
      if (value.isPresent()) {
        p.defaultSerializeValue(value.get(), out);
      } else {
        out.writeNull();
      }
    }
  }
}
