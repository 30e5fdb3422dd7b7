package benchlore.schedules.material;

import benchlore.schedules.answer.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * All fields of one kind of material: the one description that reading, writing and checking go by.
 *
 * @param <M> the material
 */
public final class FieldTable<M> {
  /**
   * A field whose figure won't do.
   *
   * @param key of the field
   * @param words why, to follow the key: "must be 0.05 to 1.5: 2.1, 2.1"
   */
  public record Fault(String key, String words) {
    /** Refuses nulls. */
    public Fault {
      if (key == null) {
        throw new NullPointerException("key");
      }
      if (words == null) {
        throw new NullPointerException("words");
      }
    }
  }

  private final List<Field<M, ?>> fields;
  private final Function<FieldSource, M> maker;

  FieldTable(List<Field<M, ?>> fields, Function<FieldSource, M> maker) {
    this.fields = List.copyOf(fields);
    this.maker = maker;
  }

  /** The fields, in the order they are written in. */
  public List<Field<M, ?>> fields() {
    return fields;
  }

  /**
   * Reads a material.
   *
   * @throws IllegalArgumentException for what is missing or of the wrong kind, as the source tells
   */
  public M read(FieldSource source) {
    return maker.apply(source);
  }

  /** Writes every field of a material, in order; what isn't stated as nothing. */
  public void write(M material, FieldSink sink) {
    for (Field<M, ?> field : fields) {
      field.write(material, sink);
    }
  }

  /** Everything outside its limits in what a source says, in order. */
  public List<Fault> faults(FieldSource source) {
    List<Fault> faults = new ArrayList<>();
    for (Field<M, ?> field : fields) {
      field.fault(source).ifPresent(words -> faults.add(new Fault(field.key(), words)));
    }
    return faults;
  }

  /**
   * Adds a refusal for every figure outside its limits.
   *
   * @param checks what they are added to
   * @param input the request's name of the material; a dot and the key follow
   * @param material what is checked
   */
  public void check(Checks checks, String input, M material) {
    for (Field<M, ?> field : fields) {
      field.check(checks, input, material);
    }
  }

  /** The first fault of a material, its key before it; empty if there is none. */
  Optional<String> fault(M material) {
    for (Field<M, ?> field : fields) {
      Optional<String> fault = field.faultOf(material);
      if (fault.isPresent()) {
        return Optional.of(field.key() + " " + fault.get());
      }
    }
    return Optional.empty();
  }
}
