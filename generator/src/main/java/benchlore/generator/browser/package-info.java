/**
 * The engine as a classic script for the site's pages: a page's own object in, a plain object out,
 * the same figures in a browser as on the JVM.
 *
 * <p>Enter at {@link benchlore.generator.browser.EngineEntry}. Depends on the JDK alone. Held to
 * the engine's rules; runs in a browser alone.
 */
package benchlore.generator.browser;
