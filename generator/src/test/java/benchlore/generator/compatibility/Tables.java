package benchlore.generator.compatibility;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Tables of the real content, and small ones written for a test against its records. */
final class Tables {
  static final Path CONTENT = Path.of("..", "content");

  private Tables() {}

  static Library library() throws IOException {
    return LibraryLoader.load(CONTENT).value().orElseThrow();
  }

  static Table real(TableKind kind, Library library) {
    return table(kind, CONTENT.resolve(kind.file() + ".yaml"), library);
  }

  /** Glue by wood, from the rows given. */
  static Table small(String rows, Path folder, Library library) throws IOException {
    Path file = folder.resolve("adhesive-by-species.yaml");
    Files.writeString(file, "id: adhesive-by-species\nrows:\n" + rows);
    return table(TableKind.ADHESIVE_BY_SPECIES, file, library);
  }

  static Table.Cell cell(Table table, String row, String column) {
    return table.cell(thing(table.rows(), row), thing(table.columns(), column));
  }

  private static TableItem thing(List<TableItem> things, String id) {
    return things.stream().filter(thing -> thing.id().equals(id)).findFirst().orElseThrow();
  }

  private static Table table(TableKind kind, Path file, Library library) {
    try {
      Facts facts =
          LibraryLoader.open(CONTENT)
              .facts(List.of(file), kind.file(), library)
              .value()
              .orElseThrow()
              .get(kind.file());
      return Table.of(kind, facts, library);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
