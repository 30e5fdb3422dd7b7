package benchlore.generator.content;

/**
 * Another name of a thing.
 *
 * @param text the name
 * @param use who says so: trade, uk, us, slang, old, abbreviation or misspelling
 */
public record Name(String text, String use) {
  /** True for a spelling that is found but not shown. */
  public boolean misspelt() {
    return use.equals("misspelling");
  }
}
