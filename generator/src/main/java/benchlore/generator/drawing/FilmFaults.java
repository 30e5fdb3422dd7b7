package benchlore.generator.drawing;

import java.util.Map;
import java.util.function.Consumer;

/** What faults in a film, a stain or an oil look like from above. */
final class FilmFaults {
  private static final String LINE = "drw-film-line";
  private static final String HAZE = "drw-haze";
  private static final String HOLE = "drw-pit";
  private static final String RIM = "drw-rim";
  private static final String DARK = "drw-scorch";

  private FilmFaults() {}

  /** Pictures by the name a record asks for. */
  static Map<String, Consumer<FaultCanvas>> all() {
    return Map.ofEntries(
        Map.entry("orange-peel", c -> c.film().all(9, 3.6, 4.9, (x, y, r) -> dimple(c, x, y, r))),
        Map.entry("fisheyes", FilmFaults::fisheyes),
        Map.entry("pinholes", FilmFaults::pinholes),
        Map.entry("solvent-pop", c -> c.film().all(7, 1.2, 2.9, (x, y, r) -> bubble(c, x, y, r))),
        Map.entry("dust-nibs", FilmFaults::nibs),
        Map.entry("dry-spray", c -> c.film().all(19, .5, 1.2, (x, y, r) -> c.circle(RIM, x, y, r))),
        Map.entry("runs-and-sags", FilmFaults::runs),
        Map.entry("silking", FilmFaults::silk),
        Map.entry("brush-marks", FilmFaults::brushMarks),
        Map.entry("lap-marks", c -> c.film().path("drw-film-deep", "M38 5L58 5L58 91L38 91Z")),
        Map.entry("blush", FilmFaults::blush),
        Map.entry("white-rings", FilmFaults::rings),
        Map.entry("heat-marks", FilmFaults::heat),
        Map.entry("swirl-scratches", FilmFaults::swirls),
        Map.entry("print-marks", FilmFaults::prints),
        Map.entry("witness-lines", FilmFaults::contours),
        Map.entry("wrinkling", FilmFaults::wrinkles),
        Map.entry("film-crazing", c -> c.film().net("drw-crack", 8)),
        Map.entry("alligatoring", c -> c.film().net("drw-crack drw-thick", 4)),
        Map.entry("peeling-coat", FilmFaults::peeling),
        Map.entry("rub-through", FilmFaults::rubThrough),
        Map.entry("wool-rust-spots", c -> c.film().all(5, .8, 1.6, (x, y, r) -> rust(c, x, y, r))),
        Map.entry("blotching", FilmFaults::blotches));
  }

  private static void dimple(FaultCanvas c, double x, double y, double r) {
    c.circle("drw-dimple", x, y, r);
    String arc = "a" + Num.of(r) + " " + Num.of(r) + " 0 0 1 " + Svg.pair(r * .9, -r * .7);
    c.path("drw-shine-line", "M" + Svg.pair(x - r * .8, y - r * .1) + arc);
  }

  private static void fisheyes(FaultCanvas c) {
    c.film()
        .each(
            (x, y, r) ->
                c.circle(RIM, x, y, r).circle("drw-board", x, y, r * .66).circle(HOLE, x, y, .9),
            26,
            24,
            11,
            66,
            30,
            8,
            40,
            58,
            13,
            76,
            66,
            10,
            18,
            76,
            7,
            82,
            12,
            5,
            58,
            82,
            5);
  }

  private static void pinholes(FaultCanvas c) {
    c.film();
    for (double y = 14; y < 90; y += 13) {
      for (double x = 8 + c.any(0, 6); x < 90; x += c.any(4, 9)) {
        c.circle(HOLE, x, y + c.any(-1, 1), c.any(.7, 1.2));
      }
    }
  }

  private static void bubble(FaultCanvas c, double x, double y, double r) {
    c.circle(RIM, x, y, r);
    if (r > 2.2) {
      c.circle(HOLE, x, y, r * .45);
    }
  }

  private static void nibs(FaultCanvas c) {
    c.film().all(4, 1.1, 2.3, (x, y, r) -> c.circle(RIM, x, y, r * 1.5).circle(HOLE, x, y, r * .7));
    c.path("drw-crack", "M30 60q8-10 15-2t12-4");
  }

  private static void runs(FaultCanvas c) {
    c.film().path("drw-film-deep", "M5 26q9 17 18 2t17 3L40 5L5 5Z");
    c.each(
        (x, y, r) ->
            c.path(
                "drw-film-deep",
                "M"
                    + Svg.pair(x - 1.2, 12)
                    + "L"
                    + Svg.pair(x - r * .6, y - r)
                    + "A"
                    + r
                    + " "
                    + r
                    + " 0 1 0 "
                    + Svg.pair(x + r * .6, y - r)
                    + "L"
                    + Svg.pair(x + 1.2, 12)
                    + "Z"),
        54,
        66,
        6,
        70,
        44,
        4.5,
        82,
        80,
        5.5);
  }

  private static void silk(FaultCanvas c) {
    c.film();
    for (double x = 8; x < 91; x += 3.1) {
      double top = c.any(5, 20);
      c.path(LINE, "M" + Svg.pair(x, top) + "q1.4 20-.6 34t.4 " + Num.of(c.any(20, 36)));
    }
  }

  private static void brushMarks(FaultCanvas c) {
    c.film();
    for (double y = 8; y < 91; y += 3.6) {
      c.wave(LINE, y + c.any(-.5, .5), c.any(.4, 1.6), c.any(50, 90));
    }
  }

  private static void blush(FaultCanvas c) {
    c.film()
        .each((x, y, r) -> c.blob(HAZE, x, y, r), 34, 34, 20, 60, 52, 24, 30, 66, 15, 70, 24, 12);
  }

  private static void rings(FaultCanvas c) {
    c.film().circle("drw-haze-line", 42, 44, 25);
    c.path("drw-haze-line", "M60 84a16 16 0 1 1 24-6");
  }

  private static void heat(FaultCanvas c) {
    c.film().circle(HAZE, 47, 48, 30).circle(HAZE, 47, 48, 21);
    c.circle("drw-scorch-line", 47, 48, 33);
  }

  private static void swirls(FaultCanvas c) {
    c.film()
        .all(
            4,
            6,
            9,
            (x, y, r) -> {
              String bow = "a" + Num.of(r) + " " + Num.of(r) + " 0 1 1 ";
              String turn = Svg.pair(c.any(-r, r), c.any(2, r));
              c.path(LINE, "M" + Svg.pair(x - r / 2, y - r / 2) + bow + turn);
            });
    c.path("drw-crack", "M40 58a9 9 0 1 1 12 5q-5 2-7-2");
  }

  private static void prints(FaultCanvas c) {
    c.film();
    for (double i = 0; i < 46; i += 5) {
      c.line(LINE, 24 + i, 20, 34 + i, 74);
      c.line(LINE, 22, 22 + i, 76, 28 + i);
    }
  }

  private static void contours(FaultCanvas c) {
    c.film()
        .each((x, y, r) -> c.blob(LINE, x, y, r), 46, 48, 34, 46, 48, 24, 44, 46, 15, 44, 46, 7);
  }

  private static void wrinkles(FaultCanvas c) {
    c.film();
    for (double y = 8; y < 94; y += 6.5) {
      c.wave("drw-film-fold", y, c.any(3, 8), c.any(11, 19));
    }
  }

  private static void peeling(FaultCanvas c) {
    c.wood().path("drw-film", "M5 5L91 5L91 34L78 39L70 33L58 44L46 40L40 53L27 50L22 66L5 70Z");
    c.path("drw-rim", "M58 44L46 40L40 53Q52 66 64 60Q66 50 58 44Z");
  }

  private static void rubThrough(FaultCanvas c) {
    c.film().blob("drw-board", 88, 88, 26).blob("drw-board", 40, 90, 9);
    c.line("drw-board-grain", 66, 84, 91, 83).line("drw-board-grain", 72, 76, 91, 75);
  }

  private static void rust(FaultCanvas c, double x, double y, double r) {
    c.circle(DARK, x, y, r * 2.2).circle(HOLE, x, y, r * .7);
  }

  private static void blotches(FaultCanvas c) {
    c.wood();
    c.each((x, y, r) -> c.blob(DARK, x, y, r), 26, 26, 15, 66, 36, 18, 40, 66, 17, 80, 78, 12);
  }
}
