package benchlore.generator.planning;

import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableKind;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.content.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The compatibility tables whose files lie in a content folder. */
final class TableFiles {
  private TableFiles() {}

  /** Every table there, or every problem; the loader has checked the files' form before. */
  static LoadResult<List<Table>> load(LibraryLoader loader, Library library) throws IOException {
    List<Table> tables = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (TableKind kind : TableKind.values()) {
      Path file = loader.content().resolve(kind.file() + ".yaml");
      if (Files.exists(file)) {
        Facts facts =
            loader
                .facts(List.of(file), kind.file(), library)
                .value()
                .orElseThrow()
                .get(kind.file());
        problems.addAll(Table.problems(kind, facts));
        tables.add(Table.of(kind, facts, library));
      }
    }
    return problems.isEmpty() ? LoadResult.of(List.copyOf(tables)) : LoadResult.failed(problems);
  }
}
