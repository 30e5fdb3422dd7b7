/**
 * Makes the pages of the site from the library and its plans, and writes them whole.
 *
 * <p>Enter at {@link benchlore.generator.site.Site} (pages as bytes) and {@link
 * benchlore.generator.site.SiteWriter} (to a folder). May depend on {@code compatibility}, {@code
 * content}, {@code drawing}, {@code export}, {@code key}, {@code pagedata}, {@code planning},
 * {@code search} and {@code units}. Besides, the template and Markdown libraries.
 */
package benchlore.generator.site;
