package benchlore.generator.content;

import java.util.List;
import java.util.Optional;

/**
 * A file that has been read, and checked by its schema.
 *
 * @param schema name of the schema
 * @param content the file, if it could be parsed
 * @param problems what the parser or the schema objects to
 */
record CheckedFile(String schema, Optional<YamlFile> content, List<Problem> problems) {
  /** Copies the list; refuses a file that could not be parsed for no reason. */
  CheckedFile {
    problems = List.copyOf(problems);
    if (content.isEmpty() && problems.isEmpty()) {
      throw new IllegalArgumentException("problems must say why there is no content");
    }
  }

  /** Whether it could be parsed. */
  boolean parsed() {
    return content.isPresent();
  }

  /** Whether nothing is wrong with it. */
  boolean sound() {
    return problems.isEmpty();
  }

  /** The file as parsed. */
  YamlFile yaml() {
    return content.orElseThrow();
  }
}
