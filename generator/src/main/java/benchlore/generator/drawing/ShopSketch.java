package benchlore.generator.drawing;

/** Sketches of how a thing is done; they hold no figures. */
public enum ShopSketch {
  /** Which way to go round a part, and round a hole. */
  FEED_ROUND_A_PART(
      250,
      "A frame from above. A hand router goes anticlockwise round its outside and clockwise round the"
          + " opening inside; the bit turns clockwise."),
  /** What holds a part to its sheet at the end of a CNC cut. */
  TABS_AND_SKIN(
      244,
      "Above, a section: one groove stops short and leaves a thin skin, the other goes through to the"
          + " waste board with a tab standing in it. Below, the part from above, held by four tabs."),
  /** A router on rails over a rough board. */
  ROUTER_SLED(
      196,
      "Seen from the end: a board wedged still between two rails; a router on a sled slides over them and"
          + " cuts down to one level plane."),
  /** The edge of a card scraper, from file to shaving. */
  SCRAPER_EDGE(
      186,
      "Three sections of a scraper's edge: filed square; a burnisher tilted a little turns each corner"
          + " into a hook; leaning forward, the hook lifts a shaving."),
  /** How to move a spray gun. */
  SPRAY_PATH(
      268,
      "From above. A gun moved in a straight line square to the board covers evenly; swung in an arc it is"
          + " wet in the middle and dry at the ends."),
  /** What a test spray says. */
  FAN_PATTERNS(
      168,
      "Five test patterns: an even oval; heavy in the middle; split into two; bent like a banana; heavy on"
          + " one side."),
  /** Two boards with hollow edges. */
  SPRING_JOINT(
      172,
      "Two boards edge to edge, each hollow by a hair in the middle, drawn much too much; one clamp in the"
          + " middle closes the whole joint."),
  /** A rounded fillet of thick epoxy in a corner. */
  FILLET(
      188,
      "A section of two boards at right angles with a hollow fillet in the corner, drawn by a round tool."),
  /** Air across a garage. */
  AIR_THROUGH_A_GARAGE(
      230,
      "A garage from above. Clean air comes in at an open door, passes the painter, "
          + "then the work, and a fan built for vapour pulls it out on the far side; the door "
          + "to the house is shut."),
  /** What to do with oily rags, and what never to do. */
  OILY_RAGS(
      214,
      "Oily cloths hang flat and singly on a line outdoors, or lie under water in a "
          + "lidded metal can; a heap of them, giving off heat, is crossed out."),
  /** Sanding a film between coats. */
  NIBS_LEVELLED(
      190,
      "A section of a film on wood. A block with paper levels the nibs and stops short "
          + "of the edge, where the film is thinnest."),
  /** Wet sanding, part of the way and done. */
  WET_SANDING(
      190,
      "Two sections of a film on wood. Above, a wet block has cut the tops and hollows "
          + "still shine; below, the film is level, thinner, and still covers the wood."),
  /** Open grain, filled. */
  PORES_FILLED(
      164,
      "Three sections of open-grained wood: pores open; a blade packs filler into them; "
          + "wiped level, filler in the pores only."),
  /** Pulling masking tape. */
  TAPE_PULLED(
      202,
      "Above, tape beside a soft film is folded back low over itself and pulled slowly. "
          + "Below, a section across the line: the pressed edge of the tape keeps the film "
          + "out."),
  /** Mixing in two pots. */
  SECOND_POT(
      174,
      "Two pots. In the first a stick scrapes what clings to the sides and the bottom; "
          + "the mix is tipped into a clean pot and stirred again."),
  /** The holes for a screw. */
  TWO_HOLES(
      176,
      "A section of two boards. On the left the holes: countersink and clearance in the "
          + "near board, a narrower pilot in the far one. On the right the screw in them."),
  /** A top free to move. */
  SOLID_TOP(
      234,
      "A table top from below. Screws on the middle line hold it; all others stand in "
          + "slots that run across the grain, and arrows show both edges moving."),
  /** A hinge leaf let in. */
  HINGE_LEAF(
      176,
      "A section of a hinge leaf let in flush with the wood, its knuckle standing out "
          + "past the edge; the screw's hole lies a hair to the back."),
  /** Roughing and finishing a hollow. */
  ROUGH_THEN_FINISH(
      268,
      "Two sections of a hollow. Above, a flat-ended bit roughs it in steps and leaves "
          + "a skin over the dashed shape; below, a ball end in small steps leaves low "
          + "ridges."),
  /** What a leaning spindle leaves. */
  SPINDLE_LEAN(
      246,
      "Above, a leaning cutter leaves a surface like saw teeth. Below, a cutter square "
          + "to the board leaves it flat."),
  /** Strokes over a spoilboard. */
  SURFACING_PATH(
      216,
      "A spoilboard from above. A wide cutter goes to and fro in straight passes, each "
          + "overlapping the one before."),
  /** Depth of a carved V. */
  V_DEPTH(
      202,
      "A section of three grooves cut by one V-shaped bit: the wider the groove, the "
          + "deeper the bit goes."),
  /** Low light over wood. */
  RAKING_LIGHT(
      170,
      "A board from the side, lit by a lamp held low. Two humps and a scratch throw "
          + "shadows away from the lamp; the eye looks from as low."),
  /** A dent before, under and after steam. */
  DENT_STEAMED(
      164,
      "Three sections: fibres pressed down in a dent; a wet cloth over it touched by "
          + "the tip of an iron; the fibres swollen to just proud of the face."),
  /** End grain, bare and sealed. */
  THIRSTY_ENDS(
      176,
      "A section along a board. Its tubes are open at the bare end and soak up finish "
          + "far into the wood; at the sealed end they are plugged."),
  /** Routing to a template. */
  PATTERN_ROUTING(
      192,
      "A section: a template taped on the work. The bearing of the bit runs on the "
          + "template, and the cutter below, as wide, takes the work flush with it."),
  /** A mitred box, taped. */
  TAPED_MITRES(
      204,
      "Above, four mitred sides lie in a row with their outsides on stretched tape. "
          + "Below, rolled up into a box with its mitres shut and its diagonals compared."),
  /** Clamping a curve. */
  SHAPED_CAULS(
      216,
      "A curved glue-up between two offcuts with a soft lining. Their outer faces are "
          + "flat and parallel, so that clamps press straight through the joint."),
  /** A run in a film, taken down. */
  RUN_PARED(
      132,
      "Three sections of a film on wood: a run left till it is hard; tape on each side "
          + "of it and a slightly bent blade paring it down; the film sanded flat under a "
          + "hard block."),
  /** A crack filled with epoxy. */
  CRACK_FILLED(
      176,
      "A section of a board cracked right through. Tape pressed on the back dams it; "
          + "epoxy wets the walls, fills the crack and stands a little proud."),
  /** Paths of a polishing pad. */
  POLISHING_PATHS(
      168,
      "A panel from above with the paths of a pad: straight strokes that glide on and "
          + "off the edge, then circles, then figures of eight."),
  /** Where to press on a plane. */
  PLANE_PRESSURE(
      158,
      "A plane going right along an edge, three times: starting, pressed down at the "
          + "toe; in the middle, at both ends; leaving, at the heel."),
  /** Where depth is counted from. */
  WHERE_Z_IS_ZERO(
      178,
      "Two set-ups from the side. For carving the bit touches the top of the wood; for "
          + "cutting through a straight bit touches the spoilboard beside it."),
  /** A part held by two tapes and glue. */
  TAPE_AND_GLUE(
      162,
      "A section, pulled apart: the part with tape on its underside, drops of glue, "
          + "tape, and the board below. The glue lies between the tapes only."),
  /** Strips glued over a form. */
  BENT_STRIPS(
      198,
      "Four thin strips pressed over a curved form. A dashed line shows the flatter "
          + "curve that they spring back to.");

  private final double height;
  private final String words;

  ShopSketch(double height, String words) {
    this.height = height;
    this.words = words;
  }

  double height() {
    return height;
  }

  String words() {
    return words;
  }
}
