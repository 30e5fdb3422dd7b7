package benchlore.generator.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Whoever holds either of two things taken for one another reads how to tell them apart. */
class MistakenPairsTest {
  private static Library library;

  @BeforeAll
  static void loadContent() throws IOException {
    library = LibraryLoader.load(Path.of("..", "content")).value().orElseThrow();
  }

  @Test
  void everyPairIsToldFromBothSides() {
    List<String> oneSided = new ArrayList<>();
    int told = 0;
    for (LibraryRecord entry : library.entries().values()) {
      for (MistakenFor mistaken : entry.mistaken()) {
        Optional<LibraryRecord> other = library.find(mistaken.id());
        if (other.isPresent()) {
          told++;
          if (back(other.get(), entry.id()).isEmpty()) {
            oneSided.add(other.get().id() + " does not say how it differs from " + entry.id());
          }
        }
      }
    }
    System.out.println("mistaken pairs: " + told / 2);
    assertTrue(told > 0);
    assertEquals("", String.join("\n", oneSided));
  }

  @Test
  void noRecordIsTakenForItselfOrTellsTheSameThingTwice() {
    List<String> wrong = new ArrayList<>();
    for (LibraryRecord entry : library.entries().values()) {
      List<String> ids =
          entry.mistaken().stream().map(MistakenFor::id).filter(id -> !id.isEmpty()).toList();
      if (ids.contains(entry.id()) || ids.stream().distinct().count() != ids.size()) {
        wrong.add(entry.id() + " " + ids);
      }
      List<String> tells = entry.mistaken().stream().map(MistakenFor::tell).toList();
      if (tells.stream().distinct().count() != tells.size()) {
        wrong.add(entry.id() + " repeats a tell");
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static Optional<MistakenFor> back(LibraryRecord entry, String id) {
    return entry.mistaken().stream().filter(m -> m.id().equals(id)).findFirst();
  }
}
