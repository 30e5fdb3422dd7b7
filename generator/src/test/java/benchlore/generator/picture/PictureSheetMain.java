package benchlore.generator.picture;

import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes pages with every picture kept as a file, for looking at: the content folder, the style
 * sheet, the folder to write to, then perhaps names.
 */
final class PictureSheetMain {
  private PictureSheetMain() {}

  public static void main(String[] args) throws IOException {
    Path content = Path.of(args[0]);
    LibraryLoader loader = LibraryLoader.open(content);
    LoadResult<Library> library = loader.library();
    library.problems().forEach(System.err::println);
    if (library.value().isEmpty()) {
      return;
    }
    LoadResult<ContentPictures> pictures = ContentPictures.load(content, library.value().get());
    pictures.problems().forEach(System.err::println);
    if (pictures.value().isEmpty()) {
      return;
    }
    List<String> names = Stream.of(args).skip(3).toList();
    String css = Files.readString(Path.of(args[1]), StandardCharsets.UTF_8);
    for (boolean dark : new boolean[] {false, true}) {
      Files.writeString(
          Path.of(args[2]).resolve(dark ? "pictures-dark.html" : "pictures-light.html"),
          sheet(
              pictures.value().get(),
              names,
              dark ? css.replace("(prefers-color-scheme: dark)", "all") : css),
          StandardCharsets.UTF_8);
    }
  }

  private static String sheet(ContentPictures pictures, List<String> names, String css) {
    StringBuilder page = new StringBuilder("<!doctype html><meta charset=utf-8><style>");
    page.append(css);
    page.append("body{background:var(--drw-paper);color:var(--drw-ink);font:13px sans-serif}");
    page.append("main{display:grid;grid-template-columns:repeat(4,330px);gap:14px}");
    page.append("section{border:1px solid #8885;padding:4px}</style><main>");
    pictures
        .tools()
        .forEach((id, tool) -> add(page, names, id, tool.small() + tool.page(id, 1, 1)));
    pictures.sketches().forEach((id, sketch) -> add(page, names, id, sketch.page(id, id)));
    pictures.faults().forEach((id, fault) -> add(page, names, id, fault.page(id, id)));
    return page.append("</main>").toString();
  }

  private static void add(StringBuilder page, List<String> names, String id, String svg) {
    if (names.isEmpty() || names.contains(id)) {
      page.append("<section><b>").append(id).append("</b>").append(svg).append("</section>");
    }
  }
}
