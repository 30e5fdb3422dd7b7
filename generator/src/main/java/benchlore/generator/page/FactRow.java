package benchlore.generator.page;

/**
 * A fact of a record, shown as a row or a line.
 *
 * @param label what it is
 * @param value HTML
 * @param from HTML: where it comes from, empty for plain words
 * @param trust css class: source, practice, memory or words
 */
public record FactRow(String label, String value, String from, String trust) {}
