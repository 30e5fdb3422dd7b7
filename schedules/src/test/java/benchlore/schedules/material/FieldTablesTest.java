package benchlore.schedules.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A material's table, its records and what is read and written say the same under one word. */
final class FieldTablesTest {
  private static final Provenance MEMORY = Provenance.fromMemory("test");

  static Stream<FieldTable<?>> tables() {
    return Stream.of(Finish.table(), Adhesive.table(), Solvent.table(), Species.table());
  }

  /** Says of every field something else, within its limits. */
  private record Sample(Map<String, Field<?, ?>> fields, boolean full) implements FieldSource {
    static Sample of(FieldTable<?> table, boolean full) {
      Map<String, Field<?, ?>> fields = new LinkedHashMap<>();
      table.fields().forEach(field -> fields.put(field.key(), field));
      return new Sample(fields, full);
    }

    private int place(String key) {
      return List.copyOf(fields.keySet()).indexOf(key) + 1;
    }

    @Override
    public SourcedRange figure(String key) {
      Field.Limits limits = fields.get(key).limits().orElseThrow();
      double step = (limits.high() - limits.low()) / (fields.size() + 1);
      return SourcedRange.of(limits.low() + place(key) * step, limits.unit(), MEMORY);
    }

    @Override
    public Optional<SourcedRange> optionalFigure(String key) {
      return full ? Optional.of(figure(key)) : Optional.empty();
    }

    @Override
    public boolean flag(String key) {
      return place(key) % 2 == 0;
    }

    @Override
    public String text(String key) {
      return "text of " + key;
    }

    @Override
    public Optional<String> optionalText(String key) {
      return full ? Optional.of(text(key)) : Optional.empty();
    }

    @Override
    public String word(String key, List<String> known) {
      return known.get(place(key) % known.size());
    }

    @Override
    public List<String> words(String key, List<String> known) {
      return List.of(known.get(known.size() - 1), known.get(0));
    }

    @Override
    public List<FieldSource> groups(String key) {
      return full ? List.of(of(SolventShare.TABLE, true)) : List.of();
    }

    Map<String, Object> said() {
      Map<String, Object> said = new LinkedHashMap<>();
      for (Field<?, ?> field : fields.values()) {
        said.put(field.key(), written(field.read(this)));
      }
      return said;
    }
  }

  /** Keeps what is written. */
  private record Kept(Map<String, Object> fields) implements FieldSink {
    @Override
    public void figure(String key, SourcedRange value) {
      fields.put(key, value);
    }

    @Override
    public void flag(String key, boolean value) {
      fields.put(key, value);
    }

    @Override
    public void text(String key, String value) {
      fields.put(key, value);
    }

    @Override
    public void texts(String key, List<String> values) {
      fields.put(key, values);
    }

    @Override
    public void groups(String key, List<Consumer<FieldSink>> groups) {
      List<Object> written = new ArrayList<>();
      for (Consumer<FieldSink> group : groups) {
        Kept kept = new Kept(new LinkedHashMap<>());
        group.accept(kept);
        written.add(kept.fields());
      }
      fields.put(key, written);
    }

    @Override
    public void nothing(String key) {
      fields.put(key, "nothing");
    }
  }

  /** A value as {@link Kept} keeps it. */
  private static Object written(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.isPresent() ? optional.get() : "nothing";
    }
    if (value instanceof Enum<?> constant) {
      return Shape.word(constant);
    }
    if (value instanceof SolventShare share) {
      return Map.of("solvent", share.solvent(), "share", share.share());
    }
    return value instanceof List<?> list
        ? list.stream().map(FieldTablesTest::written).toList()
        : value;
  }

  @ParameterizedTest
  @MethodSource("tables")
  <M> void whatIsReadUnderAKeyIsWrittenUnderIt(FieldTable<M> table) {
    for (boolean full : new boolean[] {true, false}) {
      Sample sample = Sample.of(table, full);
      Kept kept = new Kept(new LinkedHashMap<>());
      table.write(table.read(sample), kept);
      assertEquals(sample.said(), kept.fields());
      assertEquals(List.copyOf(sample.said().keySet()), List.copyOf(kept.fields().keySet()));
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  <M> void aKeyIsTheComponentsName(FieldTable<M> table) throws ReflectiveOperationException {
    M material = table.read(Sample.of(table, true));
    Map<String, Object> components = new TreeMap<>();
    collect(material, components);
    Map<String, Object> fields = new TreeMap<>();
    for (Field<M, ?> field : table.fields()) {
      fields.put(camel(field.key()), field.of(material));
    }
    assertEquals(components, fields);
  }

  private static void collect(Object part, Map<String, Object> components)
      throws ReflectiveOperationException {
    for (RecordComponent component : part.getClass().getRecordComponents()) {
      Object value = component.getAccessor().invoke(part);
      if (value instanceof Record && !(value instanceof SourcedRange)) {
        collect(value, components);
      } else {
        Object before = components.put(component.getName(), value);
        assertTrue(before == null, component.getName() + " stands twice");
      }
    }
  }

  private static String camel(String key) {
    StringBuilder camel = new StringBuilder();
    for (String word : key.split("-", -1)) {
      String rest = word.substring(1);
      camel.append(camel.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + rest);
    }
    return camel.toString();
  }

  /** Says one figure otherwise than the sample does. */
  private record Spoilt(Sample sample, String key, SourcedRange figure) implements FieldSource {
    @Override
    public SourcedRange figure(String asked) {
      return asked.equals(key) ? figure : sample.figure(asked);
    }

    @Override
    public Optional<SourcedRange> optionalFigure(String asked) {
      return Optional.of(figure(asked));
    }

    @Override
    public boolean flag(String asked) {
      return sample.flag(asked);
    }

    @Override
    public String text(String asked) {
      return sample.text(asked);
    }

    @Override
    public Optional<String> optionalText(String asked) {
      return sample.optionalText(asked);
    }

    @Override
    public String word(String asked, List<String> known) {
      return sample.word(asked, known);
    }

    @Override
    public List<String> words(String asked, List<String> known) {
      return sample.words(asked, known);
    }

    @Override
    public List<FieldSource> groups(String asked) {
      return sample.groups(asked);
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  <M> void aFigureOutsideItsLimitsIsToldByItsKey(FieldTable<M> table) {
    Sample sample = Sample.of(table, true);
    assertEquals(List.of(), table.faults(sample));
    for (Field<M, ?> field : table.fields()) {
      if (field.limits().isPresent()) {
        Field.Limits limits = field.limits().get();
        for (double bad : new double[] {limits.low() - 1, limits.high() + 1}) {
          SourcedRange figure = SourcedRange.of(bad, limits.unit(), MEMORY);
          assertEquals(List.of(field.key()), keys(table, new Spoilt(sample, field.key(), figure)));
        }
        Unit wrong = limits.unit() == Unit.RPM ? Unit.RATIO : Unit.RPM;
        SourcedRange figure = SourcedRange.of(limits.low(), wrong, MEMORY);
        assertEquals(List.of(field.key()), keys(table, new Spoilt(sample, field.key(), figure)));
      }
    }
  }

  private static List<String> keys(FieldTable<?> table, FieldSource source) {
    return table.faults(source).stream().map(FieldTable.Fault::key).toList();
  }

  @Test
  void aRequestIsRefusedByTheKeyOfItsFigure() {
    Sample sample = Sample.of(Finish.table(), true);
    SourcedRange thick = SourcedRange.of(5_000, Unit.MICRON, MEMORY);
    Checks checks = new Checks();
    Finish.table()
        .check(checks, "finish", Finish.table().read(new Spoilt(sample, "wet-film", thick)));
    assertEquals(
        List.of("finish.wet-film"), checks.refusals().stream().map(Refusal::input).toList());
  }
}
