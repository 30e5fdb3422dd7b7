package benchlore.generator.page;

/**
 * A drawing on a page.
 *
 * @param svg the drawing
 * @param caption words under it
 */
public record CaptionedDrawing(String svg, String caption) {}
