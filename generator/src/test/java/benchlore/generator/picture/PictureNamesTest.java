package benchlore.generator.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import benchlore.generator.content.Kind;
import benchlore.generator.content.LibraryRecord;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The names a record may ask for are those of the files there are, and a record asks for each. */
class PictureNamesTest {
  @Test
  void everySketchIsOnARecordAndEveryNameIsASketch() {
    Set<String> asked = asked(Kind.TECHNIQUES);
    asked.addAll(asked(Kind.TOOLS));
    assertEquals(LoadedPictures.PICTURES.sketches().keySet(), asked);
  }

  @Test
  void everyPictureIsOfAFaultAndEveryNameIsAPicture() {
    assertEquals(LoadedPictures.PICTURES.faults().keySet(), asked(Kind.DEFECTS));
  }

  @Test
  void everyToolDrawnTellsItsSize() {
    Set<String> sized = new TreeSet<>();
    for (LibraryRecord tool : LoadedPictures.LIBRARY.of(Kind.TOOLS)) {
      if (tool.drawn().find("wide").isPresent()) {
        sized.add(tool.id());
      }
    }
    assertEquals(LoadedPictures.PICTURES.tools().keySet(), sized);
  }

  private static Set<String> asked(Kind kind) {
    List<LibraryRecord> entries = LoadedPictures.LIBRARY.of(kind);
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
