package benchlore.generator.content;

/**
 * A published work that figures rest on.
 *
 * @param id name used by records
 * @param title title of the work
 * @param publisher who published it, in general words where it would name a trade mark
 * @param year year of publication, 0 where unknown
 * @param kind standard, handbook, guide, regulation, article, data-sheets or reference-site
 * @param note remark for the reader, may be empty
 */
public record Source(
    String id, String title, String publisher, int year, String kind, String note) {}
