package benchlore.generator.planning;

import benchlore.generator.compatibility.Table;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.content.Problem;
import benchlore.generator.picture.ContentPictures;
import benchlore.schedules.compatibility.OverRow;
import benchlore.schedules.project.Shop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A whole content folder, loaded, checked and planned.
 *
 * @param library every record
 * @param lexicon lay words for the finder
 * @param over what finish may go over what
 * @param tables what goes with what
 * @param joints joints with the sizes they are drawn by
 * @param edges edge profiles
 * @param plans each plan with its answer, by file name
 * @param shop the shop they are made in, if the folder holds one
 * @param pictures those kept as files
 */
public record Content(
    Library library,
    List<Facts> lexicon,
    List<OverRow> over,
    List<Table> tables,
    List<Facts> joints,
    List<Facts> edges,
    List<Planned> plans,
    Optional<Shop> shop,
    ContentPictures pictures) {
  /** Copies the lists. */
  public Content {
    lexicon = List.copyOf(lexicon);
    over = List.copyOf(over);
    tables = List.copyOf(tables);
    joints = List.copyOf(joints);
    edges = List.copyOf(edges);
    plans = List.copyOf(plans);
  }

  /**
   * Loads the records, has the engine and the drawings check them, and plans every plan.
   *
   * @param folder a folder laid out like {@code content/}
   * @return the content, or every problem
   * @throws IOException if the folder can't be read
   */
  public static LoadResult<Content> load(Path folder) throws IOException {
    return load(LibraryLoader.open(folder));
  }

  /**
   * Loads as {@link #load(Path)} does, by a loader that may have read some of the files already.
   *
   * @param loader a folder that has been opened
   * @return the content, or every problem
   * @throws IOException if the folder can't be read
   */
  public static LoadResult<Content> load(LibraryLoader loader) throws IOException {
    LoadResult<Library> loaded = library(loader);
    Library library = loaded.value().orElse(new Library(Map.of(), Map.of()));
    LoadResult<ContentPictures> pictures = ContentPictures.load(loader.content(), library);
    List<Problem> before = new ArrayList<>(loaded.problems());
    before.addAll(pictures.problems());
    if (!before.isEmpty()) {
      return LoadResult.failed(before);
    }
    LoadResult<List<Planned>> plans = Plans.all(loader, library);
    LoadResult<List<Table>> tables = TableFiles.load(loader, library);
    List<Problem> problems = new ArrayList<>(plans.problems());
    tables.problems().stream().filter(p -> !problems.contains(p)).forEach(problems::add);
    if (!problems.isEmpty()) {
      return LoadResult.failed(problems);
    }
    // Where there are plans, they have told what is wrong with the shop.
    LoadResult<Optional<Shop>> shop = Plans.shop(loader, library);
    if (shop.value().isEmpty()) {
      return LoadResult.failed(shop.problems());
    }
    return LoadResult.of(
        new Content(
            library,
            TableFiles.groups(loader, "lexicon", "words", library),
            TableFiles.over(loader, library),
            tables.value().get(),
            TableFiles.groups(loader, "joints", "rows", library),
            TableFiles.groups(loader, "edge-profiles", "rows", library),
            plans.value().get(),
            shop.value().get(),
            pictures.value().get()));
  }

  /**
   * Loads the records and has the engine and the drawings check them.
   *
   * @param folder a folder laid out like {@code content/}
   * @return the records, or every problem
   * @throws IOException if the folder can't be read
   */
  public static LoadResult<Library> library(Path folder) throws IOException {
    return library(LibraryLoader.open(folder));
  }

  /**
   * Loads as {@link #library(Path)} does, by a loader that is then asked for other files too.
   *
   * @param loader a folder that has been opened
   * @return the records, or every problem
   * @throws IOException if the folder can't be read
   */
  public static LoadResult<Library> library(LibraryLoader loader) throws IOException {
    LoadResult<Library> loaded = loader.library();
    if (loaded.value().isEmpty()) {
      return loaded;
    }
    List<Problem> problems = RecordChecks.of(loaded.value().get());
    return problems.isEmpty() ? loaded : LoadResult.failed(problems);
  }
}
