package benchlore.generator.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.planning.Content;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A build opens and parses each file once, and the one parser reads as the usual one does. */
final class OneReadingTest {
  private static final Path CONTENT = Path.of("..", "content");
  private static final YAMLMapper USUAL = new YAMLMapper();

  private static final Counting COUNTED = new Counting();

  /** Counts what is opened and what is parsed. */
  private static final class Counting implements FileReading {
    private final SortedMap<String, Integer> opened = new TreeMap<>();
    private final SortedMap<String, Integer> parsed = new TreeMap<>();
    private final List<byte[]> schemas = new ArrayList<>();

    @Override
    public byte[] bytes(Path path) throws IOException {
      opened.merge("content/" + CONTENT.relativize(path), 1, Integer::sum);
      return FileReading.super.bytes(path);
    }

    @Override
    public LoadResult<YamlFile> yaml(String shown, byte[] bytes) {
      parsed.merge(shown, 1, Integer::sum);
      return FileReading.super.yaml(shown, bytes);
    }

    @Override
    public JsonNode json(byte[] bytes) throws IOException {
      schemas.add(bytes);
      return FileReading.super.json(bytes);
    }
  }

  @BeforeAll
  static void loadAll() throws IOException {
    LibraryLoader loader = LibraryLoader.open(CONTENT, COUNTED);
    assertEquals(List.of(), Content.load(loader).problems());
  }

  @Test
  void everyFileOfTheFolderIsOpenedOnce() throws IOException {
    SortedMap<String, Integer> once = new TreeMap<>();
    files(".yaml").forEach(file -> once.put(file, 1));
    files(".schema.json").forEach(file -> once.put(file, 1));
    assertEquals(once, COUNTED.opened);
  }

  @Test
  void everyFileOfTheFolderIsParsedOnce() throws IOException {
    SortedMap<String, Integer> once = new TreeMap<>();
    files(".yaml").forEach(file -> once.put(file, 1));
    assertEquals(once, COUNTED.parsed);
    assertEquals(files(".schema.json").size(), COUNTED.schemas.size());
  }

  @Test
  void everyFileOfTheFolderReadsAsTheUsualParserReadsIt() throws IOException {
    for (String file : files(".yaml")) {
      String text = Files.readString(CONTENT.resolveSibling(file));
      assertEquals(USUAL.readTree(text), YamlTree.parse(file, text).root(), file);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a: 7",
        "a: -7",
        "a: +7",
        "a: 2147483648",
        "a: 9223372036854775808",
        "a: 6.35",
        "a: 1.",
        "a: .5",
        "a: 1.5e+3",
        "a: 1e3",
        "a: -0.0",
        "a: yes",
        "a: Off",
        "a: TRUE",
        "a: y",
        "a: null",
        "a: ~",
        "a:",
        "a: ''",
        "a: '7'",
        "a: 2027-02-28",
        "a: 12 mm",
        "~: 1",
        "7: 1",
        "<<: {b: 1}",
        "a: [1, [2, {b: c}]]",
        "a: |\n  one\n  two\n",
        "a: !!str 7",
        "a: !!int '7'",
        "a: !!float '7'",
        "a: !other 7",
        "a: 0x",
        "a: =",
        "{}",
        "[]",
        "7",
        ""
      })
  void aStrangeValueReadsAsTheUsualParserReadsIt(String text) throws IOException {
    YamlTree tree = YamlTree.parse("f.yaml", text);
    assertEquals(List.of(), tree.problems());
    assertEquals(USUAL.readTree(text), tree.root());
  }

  @Test
  void aFieldNamedByAListIsAProblemAtItsPlace() {
    byte[] bytes = "id: x\n? [a, b]\n: c\n".getBytes(StandardCharsets.UTF_8);
    List<Problem> problems = YamlFile.parse("f.yaml", bytes).problems();
    assertEquals(1, problems.size());
    assertEquals(new Place("f.yaml", 2, 3), problems.get(0).place());
  }

  private static List<String> files(String ending) throws IOException {
    try (Stream<Path> found = Files.walk(CONTENT)) {
      List<String> files =
          found
              .filter(file -> file.toString().endsWith(ending))
              .map(file -> "content/" + CONTENT.relativize(file))
              .sorted()
              .toList();
      assertTrue(files.size() > 10, "too few files to mean anything");
      return files;
    }
  }
}
