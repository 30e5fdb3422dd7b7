package benchlore.schedules.exchange;

import java.util.List;

/**
 * One value of a request, in whatever form the platform keeps it: parsed text on the JVM, the
 * page's own objects in a browser.
 */
public interface Node {
  /** What a value is. */
  enum Kind {
    /** Missing, null, or nothing JSON can hold. */
    ABSENT,
    /** True or false. */
    FLAG,
    /** A finite number. */
    NUMBER,
    /** A text. */
    TEXT,
    /** A list. */
    LIST,
    /** An object. */
    OBJECT
  }

  /** What this is; the methods below are for the kind they fit alone. */
  Kind kind();

  /** True or false. */
  boolean flag();

  /** The number. */
  double number();

  /** The text. */
  String text();

  /** How many items a list has. */
  int size();

  /** An item of a list, from 0. */
  Node item(int index);

  /** A field of an object; of kind {@link Kind#ABSENT} where there is none. */
  Node field(String key);

  /** The keys of an object, in the order written. */
  List<String> keys();
}
