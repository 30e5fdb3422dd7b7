package benchlore.generator.picture;

import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** The content's own records and pictures, read once, and pictures written in a test. */
final class LoadedPictures {
  static final Path CONTENT = Path.of("..", "content");
  static final Library LIBRARY = library();
  static final ContentPictures PICTURES = pictures();

  private LoadedPictures() {}

  private static Library library() {
    try {
      return value(LibraryLoader.load(CONTENT));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static ContentPictures pictures() {
    try {
      return value(ContentPictures.load(CONTENT, LIBRARY));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static <T> T value(LoadResult<T> loaded) {
    return loaded.value().orElseThrow(() -> new AssertionError(loaded.problems().toString()));
  }

  /** The root of a picture with this within it. */
  static Element root(String attributes, String within) {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" "
            + attributes
            + "><title>A thing, from the side</title><desc>What is seen.</desc>"
            + within
            + "</svg>";
    return value(PictureFile.parse("x.svg", svg.getBytes(StandardCharsets.UTF_8)));
  }
}
