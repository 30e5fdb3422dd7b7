package benchlore.generator.planning;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Problem;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.FieldTable;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.material.Species;
import java.util.ArrayList;
import java.util.List;

/** What the engine or the drawings refuse in records that fit their schema. */
final class RecordChecks {
  private RecordChecks() {}

  /** Every refusal, as a problem at its field. */
  static List<Problem> of(Library library) {
    List<Problem> problems = new ArrayList<>();
    for (LibraryRecord species : library.of(Kind.SPECIES)) {
      problems.addAll(faults(species, Species.table()));
    }
    for (LibraryRecord adhesive : library.of(Kind.ADHESIVES)) {
      problems.addAll(faults(adhesive, Adhesive.table()));
    }
    for (LibraryRecord solvent : library.of(Kind.SOLVENTS)) {
      problems.addAll(faults(solvent, Solvent.table()));
    }
    for (LibraryRecord finish : library.of(Kind.FINISHES)) {
      if (EngineData.schedulable(finish)) {
        problems.addAll(faults(finish, Finish.table()));
      }
    }
    for (LibraryRecord bit : library.of(Kind.ROUTER_BITS)) {
      problems.addAll(BitChecks.problems(bit));
    }
    return problems;
  }

  private static List<Problem> faults(LibraryRecord entry, FieldTable<?> table) {
    return table.faults(FactFields.of(entry)).stream()
        .map(fault -> EngineRefusal.of(entry.facts(), fault))
        .toList();
  }
}
