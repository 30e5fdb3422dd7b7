package benchlore.generator.browser;

import benchlore.schedules.sanding.StartSurface;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes a request of the engine as the JSON its script asks for. */
final class RequestJson {
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .addMixIn(StartSurface.class, Surface.class)
          .addModule(
              new SimpleModule()
                  .addSerializer(LocalDateTime.class, new Moments())
                  .addSerializer(LocalDate.class, new Days())
                  .addSerializer(OptionalDouble.class, new OptionalDoubles())
                  .addSerializer(optional(), new Optionals()))
          .build();

  private RequestJson() {}

  static String write(Object request) {
    try {
      return JSON.writeValueAsString(request);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the engine's records always serialise", e);
    }
  }

  @JsonTypeInfo(use = JsonTypeInfo.Id.SIMPLE_NAME, property = "surface")
  private interface Surface {}

  @SuppressWarnings({"unchecked", "rawtypes"}) // Optional has no class literal with its parameter
  private static Class<Optional<?>> optional() {
    return (Class) Optional.class;
  }

  private static final class Moments extends JsonSerializer<LocalDateTime> {
    @Override
    public void serialize(LocalDateTime value, JsonGenerator out, SerializerProvider p)
        throws IOException {
      out.writeString(DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(value));
    }
  }

  private static final class Days extends JsonSerializer<LocalDate> {
    @Override
    public void serialize(LocalDate value, JsonGenerator out, SerializerProvider p)
        throws IOException {
      out.writeString(value.toString());
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
