package benchlore.generator.drawing.svg;

/**
 * What a drawing is called, and what it says to someone who cannot see it.
 *
 * @param idPrefix start of every id in the drawing: a letter, then letters, digits, - or _
 */
public record Label(String idPrefix, String title, String description) {
  /** Refuses a prefix that is no plain id, and a blank title. */
  public Label {
    if (!idPrefix.matches("[A-Za-z][A-Za-z0-9_-]*")) {
      throw new IllegalArgumentException("idPrefix must be a plain id, is: " + idPrefix);
    }
    if (title.isBlank()) {
      throw new IllegalArgumentException("title must not be blank");
    }
  }
}
