/**
 * The finished demo site, read as a reader and a browser read it.
 *
 * <p>The classes ending in {@code IT} run in the verify phase, after the site is written. Enter at
 * {@link benchlore.generator.browser.SiteFolder} for the files and {@link
 * benchlore.generator.browser.Browser} for a running browser; nothing here depends on the generator
 * itself.
 */
package benchlore.generator.browser;
