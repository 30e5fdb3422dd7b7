package benchlore.generator.drawing;

/** Where a tool and the words about it stand on the page. */
interface CalloutPlan {
  /** Page units a millimetre. */
  double scale();

  /** Where the middle of the drawing comes to lie. */
  Point middle();

  /** The lowest of it all. */
  double bottom();

  /** Writes the words with their pointers. */
  void write(Svg svg, Affine page);
}
