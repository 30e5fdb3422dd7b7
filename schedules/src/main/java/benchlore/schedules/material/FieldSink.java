package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.function.Consumer;

/** What a material is written to, field by field. */
public interface FieldSink {
  /** Writes a figure. */
  void figure(String key, SourcedRange value);

  /** Writes true or false. */
  void flag(String key, boolean value);

  /** Writes a text or a word. */
  void text(String key, String value);

  /** Writes a list of words. */
  void texts(String key, List<String> values);

  /** Writes a list of groups; each writes its own fields. */
  void groups(String key, List<Consumer<FieldSink>> groups);

  /** Writes that nothing is stated. */
  void nothing(String key);
}
