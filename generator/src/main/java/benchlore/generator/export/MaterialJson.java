package benchlore.generator.export;

import benchlore.schedules.material.FieldSink;
import benchlore.schedules.material.FieldTable;
import benchlore.schedules.quantity.SourcedRange;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;

/** Writes a material as its table of fields says. */
final class MaterialJson<M> extends JsonSerializer<M> {
  private final FieldTable<M> table;

  MaterialJson(FieldTable<M> table) {
    this.table = table;
  }

  @Override
  public void serialize(M material, JsonGenerator out, SerializerProvider p) throws IOException {
    try {
      out.writeStartObject();
      table.write(material, new Fields(out));
      out.writeEndObject();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** A step of writing that may fail. */
  private interface Step {
    void run() throws IOException;
  }

  private record Fields(JsonGenerator out) implements FieldSink {
    private void write(String key, Step step) {
      try {
        out.writeFieldName(key);
        step.run();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public void figure(String key, SourcedRange value) {
      write(key, () -> out.writePOJO(value));
    }

    @Override
    public void flag(String key, boolean value) {
      write(key, () -> out.writeBoolean(value));
    }

    @Override
    public void text(String key, String value) {
      write(key, () -> out.writeString(value));
    }

    @Override
    public void texts(String key, List<String> values) {
      write(key, () -> out.writePOJO(values));
    }

    @Override
    public void groups(String key, List<Consumer<FieldSink>> groups) {
      write(
          key,
          () -> {
            out.writeStartArray();
            for (Consumer<FieldSink> group : groups) {
              out.writeStartObject();
              group.accept(this);
              out.writeEndObject();
            }
            out.writeEndArray();
          });
    }

    @Override
    public void nothing(String key) {
      write(key, out::writeNull);
    }
  }
}
