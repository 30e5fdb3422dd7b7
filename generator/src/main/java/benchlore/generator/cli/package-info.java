/**
 * The command line: the only place that prints or sets an exit code.
 *
 * <p>Enter at {@link benchlore.generator.cli.Benchlore}. May depend on every package of the
 * generator.
 */
package benchlore.generator.cli;
