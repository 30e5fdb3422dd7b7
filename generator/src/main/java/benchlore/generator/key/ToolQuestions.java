package benchlore.generator.key;

import static benchlore.generator.key.QuestionWords.words;

import java.util.List;
import java.util.Map;

/** The questions of the tools' key: what it is for, what it does, what it looks like. */
final class ToolQuestions {
  private static final Map<String, String> GROUP =
      words(
          "hand", "cutting or shaping by hand",
          "power", "cutting or shaping with a motor",
          "cnc", "part of a CNC machine",
          "holding", "holding the work",
          "measuring", "measuring",
          "marking", "marking out",
          "spraying", "spraying finish",
          "sanding", "sanding",
          "extraction", "catching dust",
          "protective", "protecting you",
          "finishing", "putting finish on",
          "jig", "guiding another tool");
  private static final Map<String, String> POWERED =
      words(
          "none", "only your hands",
          "mains", "a cord and plug",
          "battery", "a battery",
          "air", "compressed air");
  private static final Map<String, String> ACTION =
      words(
          "saws-straight", "saws straight",
          "saws-curves", "saws curves",
          "planes", "planes flat or straight",
          "shapes", "shapes an edge, a curve or a moulding",
          "carves", "pares, chops or carves",
          "grooves", "cuts grooves, slots or recesses",
          "scrapes", "scrapes",
          "bores", "makes holes",
          "nails", "drives nails, or pulls them",
          "turns-screws", "turns screws or nuts",
          "strikes", "strikes without a mark",
          "sharpens", "sharpens or grinds",
          "heats", "heats",
          "sands-flat", "sands flats",
          "sands-shape", "sands curves and corners",
          "carries-abrasive", "carries the abrasive or makes it ready",
          "presses", "presses parts together",
          "holds", "holds something still",
          "supports", "holds work up and clear",
          "guides-router", "guides a router",
          "guides-saw", "guides a saw or a plane",
          "guides-drill", "guides a drill",
          "measures-size", "measures a size or carries it over",
          "measures-angle", "measures or carries an angle",
          "checks-true", "shows whether something is straight, flat or true",
          "measures-damp", "reads damp or temperature",
          "measures-film", "reads a film or its shine",
          "weighs-times", "weighs, times or reads a force",
          "marks-line", "marks a straight line",
          "marks-curve", "marks a curve or steps off",
          "finds-zero", "tells the machine where it is",
          "runs-machine", "drives or steers a machine",
          "sprays", "sprays",
          "spreads", "brushes, rolls or spreads",
          "wipes", "wipes",
          "polishes", "polishes",
          "fills", "fills or touches up",
          "mixes", "mixes or measures a liquid",
          "strains", "strains or filters",
          "cleans", "cleans another tool or a surface",
          "collects", "takes dust and chips away",
          "moves-air", "moves, presses or cleans air",
          "guards-breath", "guards your breath",
          "guards-eyes", "guards your eyes and face",
          "guards-ears", "guards your ears",
          "guards-skin", "guards your skin",
          "guards-hands", "keeps your hands away from the cutter",
          "rescues", "for fire, first aid and warning");
  private static final Map<String, String> LOOKS_LIKE =
      words(
          "saw", "a saw",
          "plane", "a plane",
          "hammer", "a hammer",
          "handled", "a blade or tip in a handle",
          "two-handles", "a blade with two handles",
          "crank", "a bar or crank that you turn",
          "rod", "a rod, pin or pen",
          "strip", "a flat strip",
          "plate", "a flat plate or board",
          "block", "a block for the hand",
          "leaves", "a fan of thin leaves",
          "square", "an L, or a blade in a stock",
          "stem", "a stem with a sliding head",
          "legs", "two pointed legs",
          "frame", "a frame or a bow",
          "bar", "a bar with jaws or arms",
          "jaws", "a pair of jaws",
          "disc", "a disc or a ring",
          "dial", "a clock with a needle",
          "box", "a box, with or without a screen",
          "pistol", "a pistol",
          "motor", "a motor you hold",
          "machine", "a machine that stands or hangs",
          "table", "a table or a bed",
          "drum", "a can, drum or cylinder",
          "hose", "a hose or an arm with one",
          "cup", "a cup, tub or bottle",
          "soft", "something soft: cloth, strap, tape, pad, bag",
          "brush", "a brush",
          "roller", "a roller",
          "worn", "something you wear");

  private ToolQuestions() {}

  static List<KeyQuestion> all() {
    return List.of(
        QuestionWords.one("What is it for?", GROUP, "group"),
        QuestionWords.many("What does it do?", ACTION, "action"),
        QuestionWords.one("What does it look like?", LOOKS_LIKE, "looks-like"),
        QuestionWords.one("What drives it?", POWERED, "powered"));
  }
}
