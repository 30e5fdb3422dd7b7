/**
 * Writes SVG: shapes, words, figures, arrows and dimension lines, in one visual language.
 *
 * <p>Enter at {@link benchlore.generator.drawing.svg.Svg}. Looks are classes of {@code drawing.css}
 * alone. Depends on the JDK alone: knows no file and no record.
 */
package benchlore.generator.drawing.svg;
