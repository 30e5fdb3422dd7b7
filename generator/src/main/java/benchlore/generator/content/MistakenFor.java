package benchlore.generator.content;

/**
 * What a thing is taken for and how to tell.
 *
 * @param id id of the other record, or empty
 * @param thing the other thing in words where there is no record, or empty
 * @param tell how to tell them apart, Markdown
 */
public record MistakenFor(String id, String thing, String tell) {}
