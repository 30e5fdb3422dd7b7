package benchlore.generator.export;

import benchlore.generator.content.LibraryRecord;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.PlanSuits;
import benchlore.schedules.answer.Message;
import benchlore.schedules.compatibility.Verdict;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.project.Pairing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the tables say of every record a plan can name, for a page: {@code 0} where all is well,
 * else verdict, places in the list of sentences, and titles of what would do instead.
 */
final class SuitsData {
  private final Folded folded;
  private final List<Message> said = new ArrayList<>();

  SuitsData(Folded folded) {
    this.folded = folded;
  }

  /**
   * All of it.
   *
   * @param content the tables
   * @param finishes those the page can plan with, in the page's order
   * @param adhesives the same
   * @param species the same
   */
  Map<String, Object> of(
      Content content,
      List<LibraryRecord> finishes,
      List<LibraryRecord> adhesives,
      List<LibraryRecord> species) {
    PlanSuits suits = new PlanSuits(content.library(), content.tables(), content.over());
    Map<String, Object> all = new LinkedHashMap<>();
    Map<String, Object> atPlace = new LinkedHashMap<>();
    Map<String, Object> inUse = new LinkedHashMap<>();
    for (PlaceClimate place : PlaceClimate.values()) {
      String word = PlannerData.word(place);
      atPlace.put(word, column(finishes, f -> suits.atPlace(f.id(), place)));
      inUse.put(word, column(adhesives, a -> suits.inUse(a.id(), place)));
    }
    List<Object> onWood = new ArrayList<>();
    for (LibraryRecord wood : species) {
      onWood.add(column(adhesives, a -> suits.onWood(a.id(), wood.id())));
    }
    all.put("atPlace", atPlace);
    all.put("inUse", inUse);
    all.put("onWood", onWood);
    all.put("said", said.stream().map(folded::value).toList());
    all.put("over", folded.table(content.over()));
    all.put("barriers", folded.table(suits.barriers()));
    return all;
  }

  /** What a row of a table says of records. */
  private interface Row {
    Optional<Pairing> of(LibraryRecord column);
  }

  /** The words after each title, and a cell a record; empty where there is no such table. */
  private Map<String, Object> column(List<LibraryRecord> records, Row row) {
    Map<String, Object> column = new LinkedHashMap<>();
    List<Object> cells = new ArrayList<>();
    for (LibraryRecord entry : records) {
      Optional<Pairing> pairing = row.of(entry);
      pairing.ifPresent(p -> column.put("after", p.pair().substring(entry.title().length())));
      pairing.ifPresent(p -> cells.add(cell(p)));
    }
    column.put("cells", cells);
    return column;
  }

  private Object cell(Pairing pairing) {
    return pairing.verdict() == Verdict.GOOD
        ? 0
        : List.of(
            pairing.verdict().name(),
            pairing.why().stream().map(this::place).toList(),
            pairing.instead());
  }

  private int place(Message sentence) {
    int place = said.indexOf(sentence);
    if (place < 0) {
      said.add(sentence);
      return said.size() - 1;
    }
    return place;
  }
}
