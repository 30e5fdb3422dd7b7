package benchlore.generator.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.compatibility.FinishOverTable;
import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableItem;
import benchlore.generator.compatibility.TableKind;
import benchlore.generator.content.Kind;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.compatibility.OverReason;
import benchlore.schedules.compatibility.OverRow;
import benchlore.schedules.compatibility.Verdict;
import benchlore.schedules.material.Finish;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.project.Layer;
import benchlore.schedules.project.Materials;
import benchlore.schedules.project.Project;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Suits;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The same question has one answer, asked of a plan and of the pages of the tables. */
final class SameAnswerTest {
  private static final int QUESTIONS = 150;
  private static Content content;
  private static PlanRecords records;
  private final Random random = new Random(20_261_201);

  @BeforeAll
  static void loadContent() throws IOException {
    content = Content.load(Path.of("../content")).value().orElseThrow();
    records =
        new PlanRecords(
            content.library(), new PlanSuits(content.library(), content.tables(), content.over()));
  }

  @Test
  void aFinishIsRefusedWhereItsTableSaysNoAndNowhereElse() {
    int refused = 0;
    for (int i = 0; i < QUESTIONS; i++) {
      LibraryRecord finish = finish();
      PlaceClimate place = place();
      Verdict table = kindest(TableKind.FINISH_BY_PLACE, finish, place);
      List<Refusal> refusals = refusals("sapele", "epoxy-structural", List.of(finish), place);
      boolean plan = said(refusals, "finish");
      assertEquals(table == Verdict.NO, plan, finish.id() + " " + place);
      refused = plan ? refused + 1 : refused;
    }
    assertTrue(refused > QUESTIONS / 10, "refused " + refused);
  }

  @Test
  void anAdhesiveIsRefusedWhereEitherTableSaysNo() {
    int refused = 0;
    for (int i = 0; i < QUESTIONS; i++) {
      LibraryRecord adhesive = one(content.library().of(Kind.ADHESIVES));
      LibraryRecord wood = one(content.library().of(Kind.SPECIES));
      PlaceClimate place = place();
      boolean no =
          kindest(TableKind.ADHESIVE_BY_USE, adhesive, place) == Verdict.NO
              || cell(TableKind.ADHESIVE_BY_SPECIES, wood.id(), adhesive).verdict() == Verdict.NO;
      LibraryRecord spar = record("spar-varnish");
      boolean plan = said(refusals(wood.id(), adhesive.id(), List.of(spar), place), "adhesive");
      assertEquals(no, plan, adhesive.id() + " on " + wood.id() + " " + place);
      refused = plan ? refused + 1 : refused;
    }
    assertTrue(refused > QUESTIONS / 20, "refused " + refused);
  }

  @Test
  void aFinishHoldsOnAnotherInAPlanAsOnThePageOfFinishes() {
    Map<LibraryRecord, Finish> finishes = new LinkedHashMap<>();
    for (LibraryRecord entry : content.library().of(Kind.FINISHES)) {
      EngineData.finish(entry).ifPresent(finish -> finishes.put(entry, finish));
    }
    FinishOverTable page = new FinishOverTable(finishes, OverRow.rules(content.over()));
    int held = 0;
    for (int i = 0; i < QUESTIONS; i++) {
      LibraryRecord under = finish();
      LibraryRecord upper = finish();
      if (under.equals(upper)) {
        continue;
      }
      Optional<FinishOverTable.Pair> pair =
          page.over(under).stream().filter(p -> p.upper().equals(upper)).findFirst();
      boolean holds =
          pair.isPresent() && pair.get().verdict().holds().compareTo(OverReason.Holds.SCUFFED) <= 0;
      List<Refusal> refusals =
          refusals("sapele", "epoxy-structural", List.of(under, upper), PlaceClimate.HEATED_ROOM);
      assertEquals(!holds, said(refusals, "finishes"), upper.id() + " over " + under.id());
      held = holds ? held + 1 : held;
    }
    assertTrue(held > QUESTIONS / 10, "held " + held);
  }

  @Test
  void whatWouldDoInsteadDoes() {
    for (LibraryRecord finish : content.library().of(Kind.FINISHES)) {
      for (PlaceClimate place : PlaceClimate.values()) {
        List<String> instead = records.tables().atPlace(finish.id(), place).orElseThrow().instead();
        assertTrue(instead.size() <= 3);
        for (String title : instead) {
          LibraryRecord other = titled(title);
          assertTrue(
              kindest(TableKind.FINISH_BY_PLACE, other, place) != Verdict.NO, title + " " + place);
        }
      }
    }
  }

  private static boolean said(List<Refusal> refusals, String input) {
    return refusals.stream().anyMatch(refusal -> refusal.input().equals(input));
  }

  private List<Refusal> refusals(
      String wood, String adhesive, List<LibraryRecord> finishes, PlaceClimate place) {
    ProjectRequest base = content.plans().get(0).request();
    List<Layer> layers = new ArrayList<>();
    finishes.forEach(f -> layers.add(records.finish(f.id()).orElseThrow()));
    List<String> ids = finishes.stream().map(LibraryRecord::id).toList();
    Suits suits = records.suits(wood, adhesive, ids, place);
    Materials materials =
        new Materials(
            records.species(wood).orElseThrow(),
            records.adhesive(adhesive).orElseThrow(),
            layers,
            suits);
    Answer<ProjectPlan> answer =
        Project.plan(
            new ProjectRequest(
                base.start(), base.parts(), materials, base.shop(), place.seasons(), true, 10));
    return answer.fold(given -> List.of(), refused -> refused.reasons());
  }

  /** The page's cells of the rows a place stands for; the kindest decides. */
  private static Verdict kindest(TableKind kind, LibraryRecord column, PlaceClimate place) {
    return TablePlaces.of(place).stream()
        .map(row -> cell(kind, row, column).verdict())
        .min(Verdict::compareTo)
        .orElseThrow();
  }

  private static Table.Cell cell(TableKind kind, String row, LibraryRecord column) {
    Table table = content.tables().stream().filter(t -> t.kind() == kind).findFirst().orElseThrow();
    return table.cell(
        item(table.rows().stream(), row), item(table.columns().stream(), column.id()));
  }

  private static TableItem item(Stream<TableItem> items, String id) {
    return items.filter(item -> item.id().equals(id)).findFirst().orElseThrow();
  }

  private static LibraryRecord record(String id) {
    return content.library().find(id).orElseThrow();
  }

  private static LibraryRecord titled(String title) {
    return content.library().of(Kind.FINISHES).stream()
        .filter(entry -> entry.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  private LibraryRecord finish() {
    List<LibraryRecord> finishes =
        content.library().of(Kind.FINISHES).stream()
            .filter(entry -> EngineData.finish(entry).isPresent())
            .toList();
    return one(finishes);
  }

  private PlaceClimate place() {
    return one(List.of(PlaceClimate.values()));
  }

  private <T> T one(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
