package benchlore.generator.drawing;

/**
 * What a drawing is called, and what it says to someone who cannot see it.
 *
 * @param idPrefix start of every id in the drawing: a letter, then letters, digits, - or _
 */
record Label(String idPrefix, String title, String description) {
  Label {
    if (!idPrefix.matches("[A-Za-z][A-Za-z0-9_-]*")) {
      throw new IllegalArgumentException("idPrefix must be a plain id, is: " + idPrefix);
    }
    if (title.isBlank()) {
      throw new IllegalArgumentException("title must not be blank");
    }
  }
}
