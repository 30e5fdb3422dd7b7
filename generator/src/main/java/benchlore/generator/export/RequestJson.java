package benchlore.generator.export;

import benchlore.schedules.answer.StepId;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.material.Species;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Moment;
import com.fasterxml.jackson.annotation.JsonIncludeProperties;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Writes a request of the engine, or any of the records in one, as the JSON that the engine's
 * functions take: a material as its table of fields says, any other record component by component,
 * {@code null} for what is absent, a start surface with its variant in {@code surface}.
 */
public final class RequestJson {
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .addMixIn(StartSurface.class, Surface.class)
          .addMixIn(Grit.class, Grade.class)
          .configure(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS, true)
          .addModule(module())
          .build();

  private RequestJson() {}

  /** A record as JSON text on one line. */
  public static String write(Object request) {
    try {
      return JSON.writeValueAsString(request);
    } catch (JsonProcessingException e) {
      throw unwritable(e);
    }
  }

  /** A record as indented JSON text, ending in a line break. */
  public static String indented(Object request) {
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(request) + "\n";
    } catch (JsonProcessingException e) {
      throw unwritable(e);
    }
  }

  /** A record as a tree. */
  static JsonNode tree(Object record) {
    try {
      return JSON.readTree(write(record));
    } catch (JsonProcessingException e) {
      throw unwritable(e);
    }
  }

  private static IllegalStateException unwritable(Exception e) {
    return new IllegalStateException("the engine's records always serialise", e);
  }

  @JsonTypeInfo(use = JsonTypeInfo.Id.SIMPLE_NAME, property = "surface")
  private interface Surface {}

  @JsonIncludeProperties({"system", "number"})
  private interface Grade {}

  private static SimpleModule module() {
    SimpleModule module = new SimpleModule();
    module.addSerializer(Finish.class, new MaterialJson<>(Finish.table()));
    module.addSerializer(Adhesive.class, new MaterialJson<>(Adhesive.table()));
    module.addSerializer(Solvent.class, new MaterialJson<>(Solvent.table()));
    module.addSerializer(Species.class, new MaterialJson<>(Species.table()));
    module.addSerializer(Date.class, text(Date::toString));
    module.addSerializer(Moment.class, text(Moment::toString));
    module.addSerializer(StepId.class, text(StepId::name));
    module.addSerializer(Double.class, new Numbers());
    module.addSerializer(double.class, new Numbers());
    module.addSerializer(OptionalDouble.class, new OptionalDoubles());
    module.addSerializer(optional(), new Optionals());
    return module;
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // Optional has no class literal with its parameter
  private static Class<Optional<?>> optional() {
    return (Class) Optional.class;
  }

  private static <T> JsonSerializer<T> text(Function<T, String> form) {
    return new JsonSerializer<>() {
      @Override
      public void serialize(T value, JsonGenerator out, SerializerProvider p) throws IOException {
        out.writeString(form.apply(value));
      }
    };
  }

  private static final class Numbers extends JsonSerializer<Double> {
    @Override
    public void serialize(Double value, JsonGenerator out, SerializerProvider p)
        throws IOException {
      out.writeNumber(ShortestDecimal.text(value));
    }
  }

  private static final class OptionalDoubles extends JsonSerializer<OptionalDouble> {
    @Override
    public void serialize(OptionalDouble value, JsonGenerator out, SerializerProvider p)
        throws IOException {
      if (value.isPresent()) {
        out.writeNumber(ShortestDecimal.text(value.getAsDouble()));
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
