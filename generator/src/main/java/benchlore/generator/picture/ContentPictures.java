package benchlore.generator.picture;

import benchlore.generator.content.ContentFiles;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.LoadResult;
import benchlore.generator.content.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The pictures of a content folder, each by its name.
 *
 * @param sketches how a thing is done
 * @param faults what a fault looks like
 * @param tools tools to scale, by the tool's id
 */
public record ContentPictures(
    SortedMap<String, Sketch> sketches,
    SortedMap<String, Sketch> faults,
    SortedMap<String, ToolPicture> tools) {
  /** Keeps the maps from change. */
  public ContentPictures {
    sketches = Collections.unmodifiableSortedMap(new TreeMap<>(sketches));
    faults = Collections.unmodifiableSortedMap(new TreeMap<>(faults));
    tools = Collections.unmodifiableSortedMap(new TreeMap<>(tools));
  }

  /**
   * Reads and checks them all.
   *
   * @param content a folder laid out like {@code content/}
   * @param library its records; without that of a tool, its picture's size can't be checked
   * @return the pictures, or every problem
   * @throws IOException if a file can't be read
   */
  public static LoadResult<ContentPictures> load(Path content, Library library) throws IOException {
    ContentFiles files = new ContentFiles(content);
    List<Problem> problems = new ArrayList<>();
    SortedMap<String, Element> sketches =
        read(files, ContentFiles.SKETCHES, name -> SketchRules::sketch, problems);
    SortedMap<String, Element> faults =
        read(files, ContentFiles.FAULTS, name -> SketchRules::fault, problems);
    SortedMap<String, Element> tools =
        read(
            files,
            ContentFiles.TOOLS,
            name -> {
              Optional<LibraryRecord> tool = library.find(name);
              return root -> ToolRules.problems(root, tool);
            },
            problems);
    return problems.isEmpty()
        ? LoadResult.of(
            new ContentPictures(
                each(sketches, Sketch::of), each(faults, Sketch::of), each(tools, ToolPicture::of)))
        : LoadResult.failed(problems);
  }

  private static SortedMap<String, Element> read(
      ContentFiles files,
      String folder,
      Function<String, Function<Element, List<Problem>>> rules,
      List<Problem> problems)
      throws IOException {
    SortedMap<String, Element> sound = new TreeMap<>();
    for (Path file : files.pictures(folder)) {
      String name = ContentFiles.id(file);
      LoadResult<Element> root = PictureFile.parse(files.shown(file), Files.readAllBytes(file));
      problems.addAll(root.problems());
      if (root.value().isPresent()) {
        problems.addAll(rules.apply(name).apply(root.value().get()));
        sound.put(name, root.value().get());
      }
    }
    return sound;
  }

  private static <T> SortedMap<String, T> each(
      SortedMap<String, Element> roots, Function<Element, T> picture) {
    SortedMap<String, T> pictures = new TreeMap<>();
    roots.forEach((name, root) -> pictures.put(name, picture.apply(root)));
    return pictures;
  }
}
