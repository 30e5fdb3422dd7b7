/**
 * The engine as a classic script for the site's pages: JSON text in, JSON text out, the same bytes
 * in a browser as on the JVM.
 *
 * <p>Enter at {@link benchlore.generator.browser.EngineEntry}. Depends on the engine alone and is
 * held to the engine's rules; immutable.
 */
package benchlore.generator.browser;
