package benchlore.generator.drawing;

import java.util.function.Consumer;

/**
 * A sketch of how a thing is done; it holds no figures.
 *
 * @param name as records ask for it
 * @param height in page units
 * @param painter draws it
 * @param words for someone who cannot see it
 */
record ShopSketch(String name, double height, Consumer<Svg> painter, String words) {
  String draw(String title, String idPrefix) {
    Svg svg = Svg.titled(Dimensions.PAGE_WIDTH, height, new Label(idPrefix, title, words));
    painter.accept(svg);
    return svg.end();
  }
}
