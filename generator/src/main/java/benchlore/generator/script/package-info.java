/**
 * Makes the engine's script small, at build time alone: nothing of it runs in a page or in the
 * runnable jar's commands.
 *
 * <p>The data flows so: the Java compiler's classes go to the compiler to JavaScript, which this
 * package extends by two plugins (no checks of null, a small calendar); it writes a readable
 * script; {@link benchlore.generator.script.ScriptPress} rewrites what that compiler writes at
 * length and hands the rest to a JavaScript optimiser.
 */
package benchlore.generator.script;
