package benchlore.generator.planning;

import benchlore.generator.compatibility.OverRows;
import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableKind;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.content.Problem;
import benchlore.schedules.compatibility.OverRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

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

  /** The rows of what may go over what; none where there is no such file. */
  static List<OverRow> over(LibraryLoader loader, Library library) throws IOException {
    return OverRows.of(groups(loader, "finish-over-finish", "rows", library));
  }

  /** The groups of a file beside the folders; none where there is no such file. */
  static List<Facts> groups(LibraryLoader loader, String schema, String key, Library library)
      throws IOException {
    Path file = loader.content().resolve(schema + ".yaml");
    if (!Files.exists(file)) {
      return List.of();
    }
    Map<String, Facts> facts = loader.facts(List.of(file), schema, library).value().orElseThrow();
    return facts.values().iterator().next().groups(key);
  }
}
