package benchlore.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LibraryRecord;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The names a record may ask for are those that can be drawn, and a record asks for each. */
class DrawnNamesTest {
  private static final Path CONTENT = Path.of("..", "content");

  @Test
  void schemaListsTheSketchesThereAre() throws IOException {
    String list = "/$defs/sketches/items/properties/drawing/enum";
    assertEquals(List.copyOf(SketchDrawing.names()), listed("common.schema.json", list));
  }

  @Test
  void schemaListsThePicturesOfFaultsThereAre() throws IOException {
    List<String> drawn = new ArrayList<>();
    FaultDrawing.names().forEach(drawn::add);
    assertEquals(drawn, listed("defects.schema.json", "/properties/picture/enum"));
  }

  @Test
  void everySketchIsOnARecord() throws IOException {
    Set<String> unused = new TreeSet<>(SketchDrawing.names());
    unused.removeAll(asked(Kind.TECHNIQUES));
    unused.removeAll(asked(Kind.TOOLS));
    assertEquals(Set.of(), unused);
  }

  @Test
  void everyPictureIsOfAFault() throws IOException {
    Set<String> unused = new TreeSet<>();
    FaultDrawing.names().forEach(unused::add);
    unused.removeAll(asked(Kind.DEFECTS));
    assertEquals(Set.of(), unused);
  }

  @Test
  void aNameThatIsNotDrawnGivesNone() {
    assertTrue(Drawings.sketch("no-such-sketch", "x", "p").isEmpty());
  }

  private static List<String> listed(String schema, String pointer) throws IOException {
    JsonNode root = new ObjectMapper().readTree(CONTENT.resolve("schema").resolve(schema).toFile());
    List<String> names = new ArrayList<>();
    root.at(pointer).forEach(name -> names.add(name.asText()));
    return names;
  }

  private static Set<String> asked(Kind kind) throws IOException {
    Library library = LibraryLoader.load(CONTENT).value().orElseThrow();
    List<LibraryRecord> entries = library.of(kind);
    Set<String> names = new TreeSet<>();
    entries.forEach(entry -> entry.drawings().forEach(drawing -> names.add(drawing.name())));
    System.out.println(
        kind.folder()
            + " with a drawing asked for by name: "
            + entries.stream().filter(entry -> !entry.drawings().isEmpty()).count()
            + " of "
            + entries.size());
    return names;
  }
}
