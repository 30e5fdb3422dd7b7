package benchlore.generator.content;

import java.util.regex.Pattern;

/** A record's prose: Markdown with links to other records. */
public final class Prose {
  /** {@code [[id]]} or {@code [[id|shown text]]}. */
  public static final Pattern LINK = Pattern.compile("\\[\\[([a-z0-9-]+)(?:\\|([^\\]]*))?\\]\\]");

  private Prose() {}

  /** Prose without its signs, good enough to search and to quote. */
  public static String plain(String markdown) {
    return LINK.matcher(markdown)
        .replaceAll(m -> m.group(2) == null ? m.group(1).replace('-', ' ') : m.group(2))
        .replaceAll("[*_`#|>]", "")
        .replaceAll("\\s+", " ")
        .strip();
  }
}
