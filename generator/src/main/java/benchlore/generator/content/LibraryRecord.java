package benchlore.generator.content;

import java.util.List;

/**
 * One record of the library, checked against its schema.
 *
 * @param kind its kind
 * @param id unique in the library, lower case with hyphens
 * @param title trade name
 * @param names every other name
 * @param lay what someone calls it who doesn't know
 * @param text the prose
 * @param mistaken what it is taken for
 * @param related ids of related records
 * @param drawings what a technique, a tool or a fault asks to be drawn on its page
 * @param drawn the size a tool is drawn in, {@code wide} and {@code high}; without facts for others
 * @param facts the data of its kind and any further figures
 */
public record LibraryRecord(
    Kind kind,
    String id,
    String title,
    List<Name> names,
    List<String> lay,
    Text text,
    List<MistakenFor> mistaken,
    List<String> related,
    List<Drawing> drawings,
    Facts drawn,
    Facts facts) {
  /**
   * The prose of a record, Markdown.
   *
   * @param looks what it looks like
   * @param does what it does
   * @param use how to use it
   * @param wrong how it goes wrong
   * @param safety what can hurt
   * @param body anything more, may be empty
   */
  public record Text(
      String looks, String does, String use, List<String> wrong, List<String> safety, String body) {
    /** Copies the lists. */
    public Text {
      wrong = List.copyOf(wrong);
      safety = List.copyOf(safety);
    }
  }

  /**
   * A drawing asked for by name.
   *
   * @param name that of its file in {@code drawings/sketches} or {@code drawings/faults}
   * @param caption the words under a sketch; empty for the picture of a fault
   */
  public record Drawing(String name, String caption) {}

  /** Copies the lists. */
  public LibraryRecord {
    names = List.copyOf(names);
    lay = List.copyOf(lay);
    mistaken = List.copyOf(mistaken);
    related = List.copyOf(related);
    drawings = List.copyOf(drawings);
  }

  /** Its page, from the site's root. */
  public String url() {
    return kind.folder() + "/" + id + ".html";
  }
}
