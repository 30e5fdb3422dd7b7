package benchlore.generator.drawing;

/** What a part of a tool is made of, as far as the eye tells. */
public enum Material {
  /** Steel or cast iron. */
  METAL("drw-iron"),
  /** Bright ground steel: a saw plate, a chisel's blade. */
  BLADE("drw-blade"),
  /** Brass or bronze. */
  BRASS("drw-brass"),
  /** Wood. */
  WOOD("drw-wood"),
  /** A plastic or painted housing. */
  BODY("drw-body"),
  /** A rubbery hand grip. */
  GRIP("drw-grip"),
  /** Anything black or in shadow. */
  DARK("drw-dark"),
  /** Something to see through. */
  GLASS("drw-glass"),
  /** Cloth, felt, leather, bristle. */
  CLOTH("drw-cloth"),
  /** A cutting edge: a line. */
  EDGE("drw-edge"),
  /** A thin line. */
  LINE("drw-thin");

  private final String css;

  Material(String css) {
    this.css = css;
  }

  /** Whether it is a line that fills nothing. */
  public boolean isLine() {
    return this == EDGE || this == LINE;
  }

  String css() {
    return css;
  }
}
