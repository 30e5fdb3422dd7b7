/**
 * Pictures kept as SVG files in {@code content/drawings}: read, checked and put on a page.
 *
 * <p>Enter at {@link benchlore.generator.picture.ContentPictures}. What is wrong with a file is a
 * value with its place. May depend on {@code content} and {@code drawing.svg}. Results are
 * immutable.
 */
package benchlore.generator.picture;
