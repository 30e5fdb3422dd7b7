/**
 * What the templates are given: one typed record a template, whose components are the template's
 * variables, and the frame every page has.
 *
 * <p>Enter at {@link benchlore.generator.page.PageModel}. Public, since the template engine reads
 * the records by their names. May depend on {@code compatibility}, {@code content}, {@code key} and
 * {@code planning}. Values are immutable.
 */
package benchlore.generator.page;
