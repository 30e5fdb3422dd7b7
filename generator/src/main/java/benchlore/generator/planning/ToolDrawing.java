package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.content.Problem;
import benchlore.generator.drawing.Silhouette;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A tool's drawing.
 *
 * @param silhouette what is drawn
 * @param size the usual size with its provenance: figures {@code wide} and {@code high}
 */
public record ToolDrawing(Silhouette silhouette, Facts size) {
  /**
   * Every tool's drawing of a content folder, by the tool's id.
   *
   * @param folder a folder laid out like {@code content/}
   * @param library its records, already loaded
   * @return the drawings, or every problem
   * @throws IOException if the folder can't be read
   */
  public static LoadResult<Map<String, ToolDrawing>> load(Path folder, Library library)
      throws IOException {
    LoadResult<Map<String, Facts>> files = LibraryLoader.loadDrawings(folder, library);
    if (files.value().isEmpty()) {
      return LoadResult.failed(files.problems());
    }
    List<Problem> problems = new ArrayList<>();
    Map<String, ToolDrawing> drawings = new TreeMap<>();
    files
        .value()
        .get()
        .forEach(
            (id, file) -> {
              List<Problem> found = SilhouetteChecks.problems(file);
              problems.addAll(found);
              if (found.isEmpty()) {
                drawings.put(id, new ToolDrawing(SilhouetteData.of(file), file.group("size")));
              }
            });
    return problems.isEmpty() ? LoadResult.of(drawings) : LoadResult.failed(problems);
  }
}
