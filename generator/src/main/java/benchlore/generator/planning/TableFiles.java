package benchlore.generator.planning;

import benchlore.generator.library.Facts;
import benchlore.generator.library.Library;
import benchlore.generator.library.LibraryLoader;
import benchlore.generator.library.Loaded;
import benchlore.generator.library.Problem;
import benchlore.generator.tables.Table;
import benchlore.generator.tables.TableKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The compatibility tables whose files lie in a content folder. */
final class TableFiles {
  private TableFiles() {}

  /** Every table there, or every problem; the loader has checked the files' form before. */
  static Loaded<List<Table>> load(Path folder, Library library) throws IOException {
    List<Table> tables = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (TableKind kind : TableKind.values()) {
      Path file = folder.resolve(kind.file() + ".yaml");
      if (Files.exists(file)) {
        Facts facts =
            LibraryLoader.loadFacts(folder, List.of(file), kind.file(), library)
                .value()
                .orElseThrow()
                .get(kind.file());
        problems.addAll(Table.problems(kind, facts));
        tables.add(Table.of(kind, facts, library));
      }
    }
    return problems.isEmpty() ? Loaded.of(List.copyOf(tables)) : Loaded.failed(problems);
  }
}
