package benchlore.generator.planning;

import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.drawing.Drawings;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Writes pages with the drawing of every tool, for looking at: the content folder, the style sheet,
 * the folder to write to, then perhaps ids.
 */
final class ToolSheetMain {
  private ToolSheetMain() {}

  public static void main(String[] args) throws IOException {
    Path content = Path.of(args[0]);
    LoadResult<Library> library = LibraryLoader.load(content);
    library.problems().forEach(System.err::println);
    if (library.value().isEmpty()) {
      return;
    }
    LoadResult<Map<String, ToolDrawing>> drawings =
        ToolDrawing.load(content, library.value().get());
    drawings.problems().forEach(System.err::println);
    if (drawings.value().isEmpty()) {
      return;
    }
    List<String> ids = Stream.of(args).skip(3).toList();
    String css = Files.readString(Path.of(args[1]), StandardCharsets.UTF_8);
    for (boolean dark : new boolean[] {false, true}) {
      Files.writeString(
          Path.of(args[2]).resolve(dark ? "tools-dark.html" : "tools-light.html"),
          sheet(
              drawings.value().get(),
              ids,
              dark ? css.replace("(prefers-color-scheme: dark)", "all") : css),
          StandardCharsets.UTF_8);
    }
  }

  private static String sheet(Map<String, ToolDrawing> drawings, List<String> ids, String css) {
    StringBuilder page = new StringBuilder("<!doctype html><meta charset=utf-8><style>");
    page.append(css);
    page.append("body{background:var(--drw-paper);color:var(--drw-ink);font:13px sans-serif}");
    page.append("main{display:grid;grid-template-columns:repeat(4,330px);gap:14px}");
    page.append("section{border:1px solid #8885;padding:4px}</style><main>");
    drawings.forEach(
        (id, drawing) -> {
          if (ids.isEmpty() || ids.contains(id)) {
            page.append("<section><b>").append(id).append("</b>");
            page.append(Drawings.glyph(drawing.silhouette()));
            page.append(Drawings.tool(drawing.silhouette(), id, "t-" + id)).append("</section>");
          }
        });
    return page.append("</main>").toString();
  }
}
