package benchlore.schedules.cutting;

import benchlore.schedules.quantity.Provenance;

/** Where the rules and limits of this package come from: one row each. */
final class CuttingSources {
  static final Provenance FEED =
      Provenance.source("CNC tooling shop guide, feeds and speeds", "feed = rpm x flutes x chip");
  static final Provenance CHIP_QUARTER =
      Provenance.source(
          "CNC chip-load tables by material, two guides",
          "6.35 mm bit; lower end where they differ");
  static final Provenance CHIP_BY_DIAMETER =
      Provenance.source("CNC chip-load table by material and bit diameter", "1/8 to 1/2 in");
  static final Provenance DEEP_CUT =
      Provenance.source(
          "CNC material guides (2), depth and chip load", "less 25 % at 2 D, 50 % at 3 D");
  static final Provenance LIGHT_MACHINE =
      Provenance.fromMemory("light machines run at about half the published chip load");
  static final Provenance RUBBING =
      Provenance.source("CNC chip-load guides (2)", "0.001 to 0.002 in rubs and burns");
  static final Provenance RIM =
      Provenance.source("router-speed charts (5)", "rim speed = pi x diameter x rpm");
  static final Provenance TOP_SPEED =
      Provenance.source(
          "router-speed charts by bit diameter (5)", "most cautious chart of highest speeds");
  static final Provenance START_SPEED =
      Provenance.source("router-bit speed chart by diameter", "recommended starting speeds");
  static final Provenance HAND_DEPTH =
      Provenance.source("router operator manuals (4 printings)", "at most 1/8 in a pass");
  static final Provenance CNC_DEPTH =
      Provenance.source("CNC material guides (2)", "start at one diameter");
  static final Provenance LIGHT_DEPTH = Provenance.fromMemory("light machines: half a diameter");
  static final Provenance BITE = Provenance.commonPractice("1/16 in a trimming pass");
  static final Provenance DIRECTION =
      Provenance.source("router operator manuals (4 printings)", "feed direction");
  static final Provenance TABS =
      Provenance.fromMemory("tabs 6 to 12 mm wide, 1.5 to 3 mm high, every 150 to 300 mm");
  static final Provenance TAB_PATH =
      Provenance.source("CNC forum thread on tabs", "add the bit's diameter to the tab's width");
  static final Provenance SURFACING = Provenance.commonPractice("parallel strokes that overlap");
  static final Provenance GRIP =
      Provenance.source("safe routing sheet of a bit maker", "at least 75 % of the shank held");
  static final Provenance BORE =
      Provenance.source("spindle supplier's note on collets", "fill at least 80 % of the bore");
  static final Provenance BOTTOM =
      Provenance.source("safe routing sheet of a bit maker", "about 1/8 in off the bottom");
  static final Provenance NECK =
      Provenance.fromMemory("3 mm of neck kept out of the collet; some say 1/4 in");
  static final Provenance STICK_OUT =
      Provenance.commonPractice("what stands between collet and the bottom of the cut");
  static final Provenance BEARING =
      Provenance.fromMemory("half the bearing, and 3 mm, on the template");

  private CuttingSources() {}
}
