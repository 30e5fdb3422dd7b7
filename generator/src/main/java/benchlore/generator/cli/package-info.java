/**
 * The command line: the only place that prints or sets an exit code.
 *
 * <p>Enter at {@link benchlore.generator.cli.Benchlore}. May depend on {@code content}, {@code
 * export}, {@code planning} and {@code site}. Mutable while a command runs.
 */
package benchlore.generator.cli;
