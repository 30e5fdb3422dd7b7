package benchlore.generator.key;

import static benchlore.generator.key.QuestionWords.words;

import java.util.List;
import java.util.Map;

/** The questions about a fault: when it showed, where it is, what you see. */
final class FaultQuestions {
  static final Map<String, String> APPEARED =
      words(
          "in-the-board", "it was in the board already",
          "while-machining", "while machining",
          "while-glueing", "while glueing",
          "while-sanding", "while sanding",
          "while-coating", "while the finish went on",
          "while-drying", "while it dried",
          "after-days", "days later",
          "after-months", "months later");
  static final Map<String, String> ON =
      words(
          "bare-wood", "on bare wood",
          "glue-line", "at a glue line",
          "film", "in a film of varnish or lacquer",
          "oil", "on an oiled surface",
          "stain", "in the colour",
          "assembly", "in the whole assembly",
          "edge", "along an edge or end");
  static final Map<String, String> LOOK =
      words(
          "lumps", "bumps, grit or fuzz",
          "holes", "holes or craters",
          "dent", "a dent, dip or pressed-in mark",
          "ridges", "ridges, ripples or steps",
          "lines", "lines or scratches",
          "haze", "a white or grey haze",
          "colour", "a dark or coloured mark",
          "patch", "patches that shine or colour differently",
          "worn", "worn or sanded away",
          "flakes", "flaking, lifting or powdering",
          "sticky", "sticky or wet",
          "crack", "a crack",
          "gap", "a gap, or a joint that parted",
          "torn", "torn or splintered wood",
          "bent", "bent, cupped or twisted",
          "binds", "a door that binds or springs",
          "shifted", "something slipped, shifted or broke");

  private FaultQuestions() {}

  static List<KeyQuestion> all() {
    return List.of(
        QuestionWords.many("When did it show?", APPEARED, "appeared"),
        QuestionWords.many("Where is it?", ON, "on"),
        QuestionWords.many("What do you see?", LOOK, "look"));
  }
}
