/**
 * The engine as a classic script for the site's pages: a page's own object in, a plain object out,
 * the same figures to the last bit in a browser as on the JVM.
 *
 * <p>Enter at {@link benchlore.generator.browser.EngineEntry}. Depends on {@code json} and the
 * engine and is held to the engine's rules; runs in a browser alone.
 */
package benchlore.generator.browser;
