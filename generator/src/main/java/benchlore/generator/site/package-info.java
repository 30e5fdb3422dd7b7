/**
 * Makes the pages of the site from the library and its plans, and writes them whole.
 *
 * <p>Enter at {@link benchlore.generator.site.Site} (pages as bytes) and {@link
 * benchlore.generator.site.SiteWriter} (to a folder). May depend on {@code compatibility}, {@code
 * content}, {@code drawing.bit}, {@code drawing.days}, {@code drawing.joint}, {@code
 * drawing.surface}, {@code export}, {@code key}, {@code page}, {@code pagedata}, {@code picture},
 * {@code planning}, {@code search} and {@code units}. Besides, the template and Markdown libraries.
 */
package benchlore.generator.site;
