package benchlore.generator.drawing;

import java.util.Map;
import java.util.function.Consumer;

/** What faults in wood and joints look like, from above, from the side or at the end. */
final class WoodFaults {
  private static final String HOLE = "drw-pit";
  private static final String DARK = "drw-scorch";
  private static final String WOOD = "drw-board";
  private static final String RING = "drw-ring";
  private static final String CRACK = "drw-crack";
  private static final String TRUE = "drw-edge";

  private WoodFaults() {}

  /** Pictures by the name a record asks for. */
  static Map<String, Consumer<FaultCanvas>> all() {
    return Map.ofEntries(
        Map.entry("tear-out", WoodFaults::tearOut),
        Map.entry("exit-chip-out", WoodFaults::chipOut),
        Map.entry("burn-marks", WoodFaults::burns),
        Map.entry("milling-scallops", WoodFaults::scallops),
        Map.entry("chatter-marks", WoodFaults::chatter),
        Map.entry("pass-steps", WoodFaults::passSteps),
        Map.entry("snipe", WoodFaults::snipe),
        Map.entry("raised-grain", WoodFaults::raisedGrain),
        Map.entry("dished-earlywood", WoodFaults::washboard),
        Map.entry("end-checks", WoodFaults::endChecks),
        Map.entry("split-panel", c -> c.wood().crack(91, 50, 12, 44, 5)),
        Map.entry("ring-shake", WoodFaults::shake),
        Map.entry("honeycomb", WoodFaults::honeycomb),
        Map.entry("cupping", WoodFaults::cup),
        Map.entry("bow", WoodFaults::bow),
        Map.entry("crook", WoodFaults::crook),
        Map.entry("twist", WoodFaults::twist),
        Map.entry("open-joint", c -> joint(c).crack(91, 48, 20, 48, 9)),
        Map.entry("glue-starved-joint", WoodFaults::starved),
        Map.entry("sunken-joint", c -> seam(c, 4)),
        Map.entry("glue-line-creep", c -> seam(c, -5)),
        Map.entry("delamination", WoodFaults::layers),
        Map.entry("worm-holes", WoodFaults::worms),
        Map.entry("loose-knots", c -> knot(c.wood(), CRACK + " drw-thick")),
        Map.entry("knot-bleed", c -> knot(c.wood().blob("drw-film-deep", 46, 50, 30), RING)),
        Map.entry("iron-stain", c -> c.wood().blob(DARK, 46, 46, 21).circle(HOLE, 47, 45, 4)),
        Map.entry("sap-stain", c -> c.wood().path(DARK, "M5 5L91 5L91 22L60 30L34 52L14 34L5 36Z")),
        Map.entry("clamp-dents", WoodFaults::dents),
        Map.entry("plunge-marks", WoodFaults::plunge),
        Map.entry("sander-gouges", WoodFaults::gouges),
        Map.entry("scratches-under-stain", WoodFaults::scratches),
        Map.entry("glue-stain", WoodFaults::glueStain));
  }

  private static void tearOut(FaultCanvas c) {
    c.wood()
        .each(
            (x, y, r) -> {
              String d = "M" + Svg.pair(x, y) + "q" + Svg.pair(r * .7, -r * .5) + " ";
              String back = Svg.pair(r * 1.8, 0) + "l-3 1.5l2 1.6q-" + Num.of(r) + " 3-";
              c.path("drw-pit", d + back + Num.of(r * 1.8 - 1) + "-3Z");
              c.line(CRACK, x + r * .4, y + 1, x + r * 1.2, y);
            },
            16,
            24,
            11,
            48,
            34,
            15,
            22,
            50,
            13,
            60,
            60,
            12,
            30,
            76,
            14,
            66,
            20,
            9);
  }

  private static void chipOut(FaultCanvas c) {
    c.path(WOOD, "M5 22L70 22L74 30L68 36L80 43L72 52L84 60L76 68L82 76L5 76Z");
    c.line("drw-board-grain", 8, 33, 64, 33).line("drw-board-grain", 8, 45, 74, 44);
    c.line("drw-board-grain", 8, 57, 72, 57).line("drw-board-grain", 8, 67, 72, 67);
    c.line(CRACK, 68, 36, 50, 37).line(CRACK, 72, 52, 48, 51).line(CRACK, 76, 68, 58, 68);
    c.line("drw-dim", 86, 10, 86, 86);
  }

  private static void burns(FaultCanvas c) {
    c.wood().path(DARK, "M5 91L5 82Q18 74 28 82T48 72Q60 62 68 76T91 80L91 91Z");
    c.path(DARK, "M40 91Q50 74 62 80L70 91Z");
  }

  private static void scallops(FaultCanvas c) {
    StringBuilder top = new StringBuilder("M5 40");
    for (int i = 0; i < 7; i++) {
      top.append("q6.14 9 12.28 0");
    }
    c.path(WOOD, top + "L91 76L5 76Z").line(TRUE, 5, 38, 91, 38);
    c.line("drw-board-grain", 9, 56, 60, 57).line("drw-board-grain", 30, 67, 88, 66);
  }

  private static void chatter(FaultCanvas c) {
    c.section(
        78, 5, 40, 12, 34, 15, 43, 24, 36, 28, 44, 37, 33, 42, 42, 51, 37, 55, 45, 63, 34, 68, 43,
        77, 37, 80, 44, 87, 35, 91, 40);
    c.line(CRACK, 28, 44, 36, 50).line(CRACK, 55, 45, 62, 51).line(CRACK, 80, 44, 86, 49);
  }

  private static void passSteps(FaultCanvas c) {
    c.section(78, 5, 44, 26, 36, 26, 44, 48, 36, 48, 44, 70, 36, 70, 44, 91, 36);
    c.line(TRUE, 5, 34, 91, 34);
    c.line("drw-board-grain", 9, 56, 60, 57).line("drw-board-grain", 30, 67, 88, 66);
  }

  private static void snipe(FaultCanvas c) {
    c.section(74, 5, 40, 62, 40, 63, 44, 76, 47, 91, 46).line(TRUE, 5, 37, 91, 37);
    c.line("drw-board-grain", 8, 52, 88, 54).line("drw-board-grain", 8, 63, 88, 64);
  }

  private static void raisedGrain(FaultCanvas c) {
    c.section(80, 5, 52, 91, 52);
    for (double x = 7; x < 90; x += 2.7) {
      double high = c.any(5, 17);
      c.path(
          RING,
          "M"
              + Svg.pair(x, 52)
              + "q"
              + Svg.pair(c.any(-3, 3), -high / 2)
              + " "
              + Svg.pair(c.any(-4, 5), -high));
    }
  }

  private static void washboard(FaultCanvas c) {
    StringBuilder top = new StringBuilder("M5 36");
    for (int i = 0; i < 5; i++) {
      top.append("q6.5 16 13 0l4.2 0");
    }
    c.path(WOOD, top + "L91 78L5 78Z");
    for (double x = 18; x < 90; x += 17.2) {
      c.path(DARK, "M" + Svg.pair(x, 36) + "l4.2 0l-3 42l-4.2 0Z");
    }
  }

  private static void endChecks(FaultCanvas c) {
    c.wood().crack(91, 20, 58, 22, 3).crack(91, 38, 30, 40, 5).crack(91, 56, 64, 55, 3);
    c.crack(91, 74, 44, 72, 4);
  }

  private static FaultCanvas rings(FaultCanvas c) {
    c.face(WOOD);
    for (double r = 22; r < 110; r += 11) {
      c.circle(RING, 48, 104, r);
    }
    return c;
  }

  private static void shake(FaultCanvas c) {
    rings(c).path(CRACK + " drw-thick", "M8 58A61 61 0 0 1 74 49");
  }

  private static void honeycomb(FaultCanvas c) {
    rings(c)
        .each(
            (x, y, r) ->
                c.path(
                    HOLE,
                    "M"
                        + Svg.pair(x, y - r)
                        + "q3 "
                        + Num.of(r)
                        + " 0 "
                        + Num.of(2 * r)
                        + "q-3-"
                        + Num.of(r)
                        + " 0-"
                        + Num.of(2 * r)
                        + "Z"),
            26,
            40,
            10,
            40,
            56,
            9,
            52,
            34,
            12,
            64,
            52,
            8,
            74,
            40,
            9,
            34,
            72,
            6);
  }

  private static void cup(FaultCanvas c) {
    c.path(WOOD, "M5 30Q48 66 91 30L91 50Q48 86 5 50Z");
    c.path(RING, "M22 42Q48 90 74 42M34 49Q48 74 62 49M10 34Q20 44 16 57M86 34Q76 44 80 57");
    c.line(TRUE, 5, 28, 91, 28);
  }

  private static void bow(FaultCanvas c) {
    c.path(WOOD, "M3 60Q48 22 93 60L93 68Q48 30 3 68Z").line(TRUE, 3, 69.5, 93, 69.5);
    c.path("drw-board-grain", "M6 62Q48 26 90 62");
  }

  private static void crook(FaultCanvas c) {
    c.path(WOOD, "M4 30Q48 52 92 30L92 58Q48 80 4 58Z").line(TRUE, 4, 28, 92, 28);
    c.path("drw-board-grain", "M4 37Q48 59 92 37M4 44Q48 66 92 44M4 51Q48 73 92 51");
  }

  private static void twist(FaultCanvas c) {
    c.path(WOOD, "M8 62L30 78Q60 62 92 62L70 26Q40 52 8 62Z");
    c.path("drw-board-grain", "M15 67Q46 55 77 38M23 73Q54 58 85 50");
    c.line(TRUE, 4, 59, 33, 80).line(TRUE, 68, 22, 94, 65);
  }

  private static FaultCanvas joint(FaultCanvas c) {
    c.face(WOOD).grain(12, 44, 8).grain(56, 91, 8);
    return c.line(CRACK, 5, 48, 91, 48);
  }

  private static void starved(FaultCanvas c) {
    c.path(WOOD, "M5 10L91 10L91 36L5 36Z").path(WOOD, "M5 60L91 60L91 86L5 86Z");
    c.line("drw-board-grain", 8, 18, 88, 19).line("drw-board-grain", 8, 27, 88, 27);
    c.line("drw-board-grain", 8, 69, 88, 69).line("drw-board-grain", 8, 78, 88, 77);
    for (double x = 12; x < 86; x += c.any(9, 20)) {
      c.circle("drw-film-deep", x, 37, 1.7).circle("drw-film-deep", x + 3, 59, 1.4);
    }
  }

  private static void seam(FaultCanvas c, double deep) {
    double y = 42 + deep;
    c.section(78, 5, 42, 42, 42, 48, y, 48, y).section(78, 48, y, 48, y, 54, 42, 91, 42);
    c.line("drw-board-grain", 9, 54, 44, 55)
        .line("drw-board-grain", 52, 66, 88, 65)
        .line(CRACK, 48, y, 48, 78);
    c.line(TRUE, 5, 40, 91, 40);
  }

  private static void layers(FaultCanvas c) {
    for (int i = 0; i < 4; i++) {
      double y = 66 - 12 * i;
      double rise = i == 0 ? 0 : 4.5 * i;
      String d = "M5 " + Num.of(y) + "L48 " + Num.of(y) + "Q72 " + Num.of(y) + " 91 ";
      String back = Num.of(y - rise) + "l0 9Q72 " + Num.of(y + 9) + " 48 " + Num.of(y + 9);
      c.path(i % 2 == 0 ? WOOD : "drw-cut", d + back + "L5 " + Num.of(y + 9) + "Z");
    }
  }

  private static void worms(FaultCanvas c) {
    c.wood()
        .each(
            (x, y, r) -> c.circle(HOLE, x, y, r),
            22,
            20,
            2.6,
            44,
            34,
            2.2,
            70,
            26,
            2.8,
            30,
            56,
            2.4,
            58,
            60,
            2.8,
            78,
            72,
            2.2,
            40,
            80,
            2.6,
            62,
            44,
            2);
    c.blob("drw-pit", 60, 68, 4).blob("drw-pit", 32, 62, 3);
  }

  private static void knot(FaultCanvas c, String round) {
    c.circle(DARK, 46, 48, 17).circle(RING, 46, 48, 11).circle(RING, 46, 48, 6);
    c.circle(round, 46, 48, 18);
  }

  private static void dents(FaultCanvas c) {
    c.wood();
    for (double x = 16; x < 90; x += 31) {
      c.circle("drw-pit", x, 14, 8).circle(RING, x, 14, 5).circle("drw-pit", x, 82, 8);
      c.circle(RING, x, 82, 5);
    }
  }

  private static void plunge(FaultCanvas c) {
    c.wood().path("drw-pit", "M28 36L91 36L91 60L28 60A12 12 0 0 1 28 36Z");
    c.circle(DARK, 29, 48, 12).circle(RING, 29, 48, 7);
  }

  private static void gouges(FaultCanvas c) {
    c.wood().path("drw-pit", "M20 30A26 26 0 0 1 58 24A34 34 0 0 0 20 30Z");
    c.path("drw-pit", "M44 74A30 30 0 0 1 82 58A38 38 0 0 0 44 74Z").line(CRACK, 14, 60, 34, 82);
  }

  private static void scratches(FaultCanvas c) {
    c.face("drw-film");
    for (double y = 2; y < 96; y += c.any(6, 12)) {
      double slope = c.any(-3, 3);
      c.line(CRACK, c.any(5, 30), y, c.any(55, 91), y + slope);
    }
    c.line(CRACK, 60, 10, 70, 52).line(CRACK, 66, 14, 75, 50);
  }

  private static void glueStain(FaultCanvas c) {
    c.face("drw-film").grain(12, 91, 9).line(CRACK, 5, 48, 91, 48);
    c.blob(WOOD, 30, 52, 11).blob(WOOD, 62, 44, 8).blob(WOOD, 76, 62, 5);
  }
}
