package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;

/** Where a tool and the words about it stand on the page. */
interface CalloutPlan {
  /** Page units a millimetre. */
  double scale();

  /** Where the middle of the drawing comes to lie. */
  Point middle();

  /** The lowest of it all. */
  double bottom();

  /** Writes the words with their pointers. */
  void write(Svg svg, Placing page);
}
