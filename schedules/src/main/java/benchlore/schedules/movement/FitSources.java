package benchlore.schedules.movement;

import benchlore.schedules.quantity.Provenance;

/** Where the rules and limits of this package come from: one row each. */
final class FitSources {
  private static final String HANDBOOK = "USDA FPL-GTR-190 Wood Handbook (2010)";

  static final Provenance EMC = Provenance.source(HANDBOOK, "equation 4-5; FPL-RN-0268 (1998)");
  static final Provenance MOVEMENT =
      Provenance.source(HANDBOOK, "chapter 13, dimensional change, 6 to 14 % moisture");
  static final Provenance BEYOND =
      Provenance.source(
          HANDBOOK, "equation 13-3, from green dimensions, beyond 6 to 14 % and to 30 %");
  static final Provenance FROM_SHRINKAGE =
      Provenance.source(HANDBOOK, "Tables 4-3 and 13-5: C = S/(3000 - 20 S) links the two");
  static final Provenance RINGS =
      Provenance.commonPractice("strain between two main directions: cos^2 and sin^2 of the angle");
  static final Provenance MIDPOINT =
      Provenance.source(
          "USDA Forest Products Laboratory report 1655, Moisture content of wood in use",
          "summary");
  static final Provenance GAP =
      Provenance.commonPractice("what is added to both faces, what grows, and room to slide");
  static final Provenance SLOT =
      Provenance.commonPractice("screw, travel both ways and room to spare");
  static final Provenance FILM =
      Provenance.commonPractice("dry film = wet film x solids by volume");
  static final Provenance SETTLING =
      Provenance.fromMemory(
          "first-order drying of stickered boards, 5 to 15 days for 25 mm; a meter wins");
  static final Provenance RIGID =
      Provenance.fromMemory("about 0.8 mm (1/32 in) of travel is taken up by screws and joint");

  static final Provenance SLOT_SPARE = Provenance.fromMemory("1 mm, both ends together");

  private FitSources() {}
}
