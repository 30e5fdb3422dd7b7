package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.Tree;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.lang.model.element.Modifier;
import org.junit.jupiter.api.Test;

/**
 * How many top-level types each package shows. A package that needs one more raises its number
 * here, where a reviewer sees it.
 */
final class PublicTypesTest {
  private static final Map<String, Integer> MOST =
      Map.ofEntries(
          Map.entry("generator.browser", 2),
          Map.entry("generator.cli", 1),
          Map.entry("generator.export", 5),
          Map.entry("generator.drawing.bit", 6),
          Map.entry("generator.drawing.days", 1),
          Map.entry("generator.drawing.joint", 3),
          Map.entry("generator.drawing.surface", 4),
          // The canvas of the other packages of drawings.
          Map.entry("generator.drawing.svg", 9),
          Map.entry("generator.key", 3),
          Map.entry("schedules.exchange", 3),
          // One is a file with its text, which a plan is told and opened again by.
          Map.entry("generator.content", 18),
          Map.entry("generator.picture", 3),
          Map.entry("generator.planning", 6),
          // A model a template, and what they share.
          Map.entry("generator.page", 25),
          Map.entry("generator.pagedata", 1),
          Map.entry("generator.search", 1),
          Map.entry("generator.site", 2),
          Map.entry("generator.compatibility", 6),
          Map.entry("generator.units", 2),
          Map.entry("schedules.air", 22),
          Map.entry("schedules.answer", 9),
          // A file of rows a trade, and the row.
          Map.entry("schedules.caution", 8),
          Map.entry("schedules.coating", 29),
          // The rules of every table, and the fifth table, which reckons with the wait.
          Map.entry("schedules.compatibility", 11),
          Map.entry("schedules.cutting", 12),
          Map.entry("schedules.glueup", 5),
          Map.entry("schedules.quantity", 8),
          Map.entry("schedules.project", 10),
          Map.entry("schedules.room", 4),
          // One is what the finish will look like, which a project and a page tell.
          Map.entry("schedules.sanding", 35),
          // Dates, moments, durations and intervals stand in for the JDK's.
          Map.entry("schedules.time", 7),
          // The table of units, figures, fields, days and the calendar as a page shows them.
          Map.entry("schedules.present", 9),
          // A file's reader, what it gives, its problems, the records it asks for, its JSON.
          Map.entry("schedules.projectfile", 5),
          // Seven are the parts of a finish; four the table of fields that all materials go by.
          Map.entry("schedules.material", 28),
          Map.entry("schedules.movement", 13));

  @Test
  void packagesShowNoMoreThanTheyNeed() throws IOException {
    SortedMap<String, Integer> shown = new TreeMap<>();
    for (Sources.Source source : Sources.main()) {
      String name = source.packageName().substring("benchlore.".length());
      for (Tree type : source.unit().getTypeDecls()) {
        boolean isPublic =
            type instanceof ClassTree declared
                && declared.getModifiers().getFlags().contains(Modifier.PUBLIC);
        shown.merge(name, isPublic ? 1 : 0, Integer::sum);
      }
    }
    List<String> broken = new ArrayList<>();
    shown.forEach(
        (name, count) -> {
          int most = MOST.getOrDefault(name, 0);
          if (count > most) {
            broken.add(name + " shows " + count + " public types, its number is " + most);
          }
        });
    assertEquals(List.of(), broken);
  }
}
