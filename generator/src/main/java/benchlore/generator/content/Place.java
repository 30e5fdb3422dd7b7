package benchlore.generator.content;

/**
 * A place in a content file.
 *
 * @param file path from the content folder's parent, with forward slashes
 * @param line 1 for the first line
 * @param column 1 for the first character
 */
public record Place(String file, int line, int column) {
  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
