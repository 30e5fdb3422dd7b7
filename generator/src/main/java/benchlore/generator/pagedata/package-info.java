/**
 * Scripts that carry data into a page.
 *
 * <p>Enter at {@link benchlore.generator.pagedata.ScriptData}. Depends on the JDK alone. Stateless.
 */
package benchlore.generator.pagedata;
