package benchlore.generator.planning;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** What the engine or the drawings refuse in records that fit their schema. */
final class RecordChecks {
  private RecordChecks() {}

  /** Every refusal, as a problem at its field. */
  static List<Problem> of(Library library) {
    List<Problem> problems = new ArrayList<>();
    problems.addAll(refusals(library, Kind.SPECIES, EngineData::wood));
    problems.addAll(refusals(library, Kind.ADHESIVES, EngineData::adhesive));
    problems.addAll(refusals(library, Kind.SOLVENTS, EngineData::solvent));
    if (problems.isEmpty()) {
      problems.addAll(refusals(library, Kind.FINISHES, finish -> finish(finish, library)));
    }
    for (LibraryRecord bit : library.of(Kind.ROUTER_BITS)) {
      problems.addAll(BitChecks.problems(bit));
    }
    return problems;
  }

  private static void finish(LibraryRecord finish, Library library) {
    EngineData.finish(finish).ifPresent(data -> EngineData.organic(data, library));
  }

  private static List<Problem> refusals(
      Library library, Kind kind, Consumer<LibraryRecord> reading) {
    List<Problem> problems = new ArrayList<>();
    for (LibraryRecord entry : library.of(kind)) {
      problems.addAll(EngineRefusal.of(entry.facts(), () -> reading.accept(entry)));
    }
    return problems;
  }
}
