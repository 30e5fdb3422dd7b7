/**
 * What the templates are given: one typed record a template, each naming its template's fields.
 *
 * <p>Enter at {@link benchlore.generator.page.PageModel}. May depend on {@code compatibility},
 * {@code content}, {@code key} and {@code planning}. Values are immutable.
 */
package benchlore.generator.page;
