package benchlore.generator.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The looks a drawing may ask for: the classes of the drawings' style sheet. */
final class Looks {
  private static final String SHEET = "/benchlore/template/css/drawing.css";
  private static final Pattern CLASS = Pattern.compile("\\.(drw-[a-z-]+)");
  private static final SortedSet<String> NAMES = Collections.unmodifiableSortedSet(read());

  private Looks() {}

  /** Every class, in order. */
  static SortedSet<String> names() {
    return NAMES;
  }

  private static SortedSet<String> read() {
    // The style sheet is part of the program, as its template is.
    try (InputStream sheet = Looks.class.getResourceAsStream(SHEET)) {
      String css = new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
      SortedSet<String> names = new TreeSet<>();
      CLASS.matcher(css).results().forEach(found -> names.add(found.group(1)));
      return names;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
