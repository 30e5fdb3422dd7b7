package benchlore.generator.key;

import static benchlore.generator.key.QuestionWords.words;

import benchlore.generator.content.Kind;
import benchlore.generator.content.LibraryRecord;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The questions of each kind's key, answered from the records' own facts. */
public final class KeyQuestions {
  private static final Map<String, String> LEAVES =
      words(
          "straight", "a square wall, groove or rebate",
          "trim", "a square wall, groove or rebate",
          "rabbet", "a square wall, groove or rebate",
          "surfacing", "a flat face",
          "corner-radius", "a tray: flat floor, round corners",
          "ball", "a round-bottomed groove or carved form",
          "tapered-ball", "a round-bottomed groove or carved form",
          "v", "a slope or a V",
          "flat-tip-v", "a slope or a V",
          "chamfer", "a slope or a V",
          "panel-bevel", "a slope or a V",
          "round-over", "a rounded edge",
          "bead", "a rounded edge",
          "point-round-over", "a rounded edge",
          "bull-nose", "a rounded edge",
          "thumbnail", "a rounded edge",
          "cove", "a hollow along the edge",
          "panel-cove", "a hollow along the edge",
          "finger-pull", "a hollow along the edge",
          "ogee", "a wavy moulding",
          "reverse-ogee", "a wavy moulding",
          "dovetail", "a joint that locks",
          "lock-mitre", "a joint that locks",
          "finger-joint", "a joint that locks",
          "tongue-and-groove", "a joint that locks",
          "slot", "a slot in the side of the board",
          "t-slot", "a slot wider inside than at its mouth",
          "keyhole", "a slot wider inside than at its mouth");
  private static final Map<String, String> BEARING =
      words(
          "none", "no bearing",
          "tip", "on the very end",
          "shank", "on the shank, above the cutter",
          "both", "one at each end");
  private static final Map<String, String> FLUTES =
      words(
          "straight", "straight edges",
          "shear", "edges leaning a little",
          "upcut", "twisted like a drill",
          "downcut", "twisted the other way from a drill",
          "compression", "twisted both ways, meeting in the middle");

  private KeyQuestions() {}

  /** Questions for a kind; none where a key would not help. */
  public static List<KeyQuestion> of(Kind kind) {
    return switch (kind) {
      case ROUTER_BITS -> bits();
      case DEFECTS -> FaultQuestions.all();
      case TOOLS -> ToolQuestions.all();
      case SPECIES, FINISHES, SHEENS, ADHESIVES, ABRASIVES, SOLVENTS, FASTENERS, TECHNIQUES ->
          List.of();
    };
  }

  /**
   * A fault's closed-list words and how a reader is asked for them, in the order asked.
   *
   * @param fact {@code appeared}, {@code on} or {@code look}
   */
  public static Map<String, String> ofFault(String fact) {
    return switch (fact) {
      case "appeared" -> FaultQuestions.APPEARED;
      case "on" -> FaultQuestions.ON;
      case "look" -> FaultQuestions.LOOK;
      default -> throw new IllegalArgumentException("fact must be appeared, on or look: " + fact);
    };
  }

  private static List<KeyQuestion> bits() {
    return List.of(
        QuestionWords.of(
            "Is there a little wheel (a bearing), and where?",
            BEARING,
            e -> List.of(e.facts().group("bearing").words("place"))),
        QuestionWords.one("What does it leave in the wood?", LEAVES, "shape"),
        QuestionWords.one("How do its cutting edges run?", FLUTES, "flute-form"),
        new KeyQuestion(
            "How wide is the cutter?",
            List.of("thinner than a pencil", "up to a thumb's width", "wider than a thumb"),
            e -> Set.of(width(e.facts().datum("diameter").mid()))),
        new KeyQuestion(
            "What is it driven by?",
            List.of("a hand-held router", "a router table", "a CNC machine"),
            KeyQuestions::machines));
  }

  private static String width(double metre) {
    if (metre < 0.008) {
      return "thinner than a pencil";
    }
    return metre <= 0.025 ? "up to a thumb's width" : "wider than a thumb";
  }

  private static Set<String> machines(LibraryRecord entry) {
    Map<String, String> words =
        words(
            "hand-router", "a hand-held router",
            "router-table", "a router table",
            "cnc", "a CNC machine");
    Set<String> fitting = new LinkedHashSet<>();
    for (String machine : entry.facts().list("machines")) {
      fitting.add(words.get(machine));
    }
    return fitting;
  }
}
