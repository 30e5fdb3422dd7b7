package benchlore.generator.drawing.surface;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Svg;

/**
 * A window mirrored in a film over wood: blurred as {@link SheenLobe} says. The light is the same
 * for every sheen, only spread wider, so a dull film is veiled and not dark. A rubbed film spreads
 * it across the scratches and hardly along them: a third, from memory.
 */
final class SheenDrawing {
  static final double HIGH = 160;
  private static final double SCALE_TOP = 186;
  private static final double HEIGHT = 232;
  private static final double LEFT = 10;
  private static final double WIDE = 300;
  private static final double TOP = 6;
  private static final double PER_DEGREE = 4.6;
  private static final double BAR = 2.4 * PER_DEGREE;
  private static final double ALONG_SCRATCHES = 1 / 3.0;

  /** Brightness of the window in a perfect mirror of this film, on a page of paper. */
  private static final double BRIGHTEST = 0.82;

  private SheenDrawing() {}

  static String draw(SheenSwatch swatch, String title, String idPrefix) {
    Svg svg = Svg.titled(Dimensions.PAGE_WIDTH, HEIGHT, new Label(idPrefix, title, words(swatch)));
    film(svg, swatch, idPrefix);
    scale(svg, swatch);
    return svg.end();
  }

  /** The film alone, to stand in a row with others. */
  static String patch(SheenSwatch swatch, String title, String idPrefix) {
    Svg svg =
        Svg.titled(
            Dimensions.PAGE_WIDTH, HIGH + 2 * TOP, new Label(idPrefix, title, words(swatch)));
    film(svg, swatch, idPrefix);
    return svg.end();
  }

  private static void film(Svg svg, SheenSwatch swatch, String id) {
    double spread = SheenLobe.spread(swatch.middleGu()) * PER_DEGREE;
    double along = swatch.rubbed() ? spread * ALONG_SCRATCHES : spread;
    double middle = LEFT + WIDE / 2;
    double half = TOP + HIGH / 2;
    BlurredPanes level = new BlurredPanes(middle - 62, middle + 62, BAR, along);
    BlurredPanes upright = new BlurredPanes(half - 52, half + 52, BAR, spread);
    svg.rect("drw-sheen", LEFT, TOP, WIDE, HIGH);
    FilmGrain.draw(svg, new Box(LEFT, TOP, LEFT + WIDE, TOP + HIGH));
    Box window = new Box(LEFT, TOP, LEFT + WIDE, TOP + HIGH);
    svg.markup(SheenLight.over(id, window, level, upright, BRIGHTEST));
    if (swatch.rubbed()) {
      FilmGrain.scratches(svg, new Box(LEFT, TOP, LEFT + WIDE, TOP + HIGH));
    }
  }

  private static void scale(Svg svg, SheenSwatch swatch) {
    double perUnit = (WIDE - 30) / 100;
    double zero = LEFT + 15;
    double low = zero + swatch.lowGu() * perUnit;
    double high = zero + swatch.highGu() * perUnit;
    svg.rect("drw-bearing", low, SCALE_TOP, Math.max(high - low, 2), 9);
    svg.line("drw-dim", zero, SCALE_TOP + 9, zero + 100 * perUnit, SCALE_TOP + 9);
    for (int tick = 0; tick <= 100; tick += 20) {
      double x = zero + tick * perUnit;
      svg.line("drw-dim", x, SCALE_TOP + 9, x, SCALE_TOP + 14);
      svg.text("middle", x, SCALE_TOP + 26, Integer.toString(tick));
    }
    svg.text("middle", LEFT + WIDE / 2, SCALE_TOP + 42, "gloss units at 60°");
  }

  private static String words(SheenSwatch swatch) {
    double spread = SheenLobe.spread(swatch.middleGu());
    String range =
        Num.of(swatch.lowGu()) + " to " + Num.of(swatch.highGu()) + " gloss units at 60 degrees";
    return "A window of four panes mirrored in a film over wood. "
        + seen(spread)
        + (swatch.rubbed() ? " Fine scratches along the grain smear it across the grain. " : " ")
        + "The film reads "
        + range
        + "; it spreads mirrored light by about "
        + Num.of(Math.round(spread * 10) / 10.0)
        + " degrees.";
  }

  private static String seen(double spread) {
    if (spread < 0.5) {
      return "Every edge of it is sharp.";
    }
    if (spread < 2.2) {
      return "It is clear, its edges a little soft.";
    }
    if (spread < 4) {
      return "It is there, but its edges and bars are soft.";
    }
    return spread < 8
        ? "It is a bright patch without bars."
        : "No window can be made out, only a pale veil.";
  }
}
