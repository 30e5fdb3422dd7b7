package benchlore.schedules.exchange;

/**
 * Takes an answer piece by piece: as text on the JVM, as a page's own objects in a browser. Keys
 * are empty for items of a list and for the whole.
 */
public interface Sink {
  /** Begins an object or a list. */
  void open(String key, boolean list);

  /** Ends what was begun last. */
  void close();

  /** A finite number. */
  void number(String key, double value);

  /** True or false. */
  void flag(String key, boolean value);

  /** A text. */
  void text(String key, String value);

  /** What is absent. */
  void nothing(String key);
}
