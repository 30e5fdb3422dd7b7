package benchlore.generator.drawing;

/** Sketches of how a thing is done; they hold no figures. */
public enum ShopSketch {
  /** Which way to go round a part, and round a hole. */
  FEED_ROUND_A_PART(
      "A frame from above. A hand router goes anticlockwise round its outside and clockwise round the"
          + " opening inside; the bit turns clockwise."),
  /** What holds a part to its sheet at the end of a CNC cut. */
  TABS_AND_SKIN(
      "Above, a section: one groove stops short and leaves a thin skin, the other goes through to the"
          + " waste board with a tab standing in it. Below, the part from above, held by four tabs."),
  /** A router on rails over a rough board. */
  ROUTER_SLED(
      "Seen from the end: a board wedged still between two rails; a router on a sled slides over them and"
          + " cuts down to one level plane."),
  /** The edge of a card scraper, from file to shaving. */
  SCRAPER_EDGE(
      "Three sections of a scraper's edge: filed square; a burnisher tilted a little turns each corner"
          + " into a hook; leaning forward, the hook lifts a shaving."),
  /** How to move a spray gun. */
  SPRAY_PATH(
      "From above. A gun moved in a straight line square to the board covers evenly; swung in an arc it is"
          + " wet in the middle and dry at the ends."),
  /** What a test spray says. */
  FAN_PATTERNS(
      "Five test patterns: an even oval; heavy in the middle; split into two; bent like a banana; heavy on"
          + " one side."),
  /** Two boards with hollow edges. */
  SPRING_JOINT(
      "Two boards edge to edge, each hollow by a hair in the middle, drawn much too much; one clamp in the"
          + " middle closes the whole joint."),
  /** A rounded fillet of thick epoxy in a corner. */
  FILLET(
      "A section of two boards at right angles with a hollow fillet in the corner, drawn by a round tool.");

  private final String words;

  ShopSketch(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
