package benchlore.schedules.quantity.guard;

/**
 * A place in a source that would give other digits in a browser, or not compile to JavaScript.
 *
 * @param rule what is broken
 * @param file the source's file name
 * @param line counted from 1
 * @param code the offending expression as written
 */
record Finding(Rule rule, String file, long line, String code) {
  @Override
  public String toString() {
    return file + ":" + line + ": " + rule.words() + ": " + code;
  }
}
