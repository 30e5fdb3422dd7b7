package benchlore.generator.find;

import benchlore.generator.library.Entry;
import benchlore.generator.library.Facts;
import benchlore.generator.library.Kind;
import java.util.LinkedHashMap;
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
  private static final Map<String, String> APPEARED =
      words(
          "in-the-board", "it was in the board already",
          "while-machining", "while machining",
          "while-glueing", "while glueing",
          "while-sanding", "while sanding",
          "while-coating", "while the finish went on",
          "while-drying", "while it dried",
          "after-days", "days later",
          "after-months", "months later");
  private static final Map<String, String> ON =
      words(
          "bare-wood", "on bare wood",
          "glue-line", "at a glue line",
          "film", "in a film of varnish or lacquer",
          "oil", "on an oiled surface",
          "stain", "in the colour",
          "assembly", "in the whole assembly",
          "edge", "along an edge or end");

  private KeyQuestions() {}

  /** Questions for a kind; none where a key would not help. */
  public static List<KeyQuestion> of(Kind kind) {
    return switch (kind) {
      case ROUTER_BITS -> bits();
      case DEFECTS -> faults();
      case TOOLS -> tools();
      case SPECIES, FINISHES, SHEENS, ADHESIVES, ABRASIVES, SOLVENTS, FASTENERS, TECHNIQUES ->
          List.of();
    };
  }

  private static List<KeyQuestion> bits() {
    return List.of(
        one("Is there a little wheel (a bearing), and where?", BEARING, "bearing-place"),
        one("What does it leave in the wood?", LEAVES, "shape"),
        one("How do its cutting edges run?", FLUTES, "flute-form"),
        new KeyQuestion(
            "How wide is the cutter?",
            List.of("thinner than a pencil", "up to a thumb's width", "wider than a thumb"),
            e -> Set.of(width(e.facts().datum("diameter").mid()))),
        new KeyQuestion(
            "What is it driven by?",
            List.of("a hand-held router", "a router table", "a CNC machine"),
            KeyQuestions::machines));
  }

  private static List<KeyQuestion> faults() {
    return List.of(many("When did it show?", APPEARED, "appeared"), many("Where is it?", ON, "on"));
  }

  private static List<KeyQuestion> tools() {
    return List.of(
        one(
            "What is it for?",
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
                "jig", "guiding another tool"),
            "group"),
        one(
            "What drives it?",
            words(
                "none", "only your hands",
                "mains", "a cord and plug",
                "battery", "a battery",
                "air", "compressed air"),
            "powered"));
  }

  private static String width(double metre) {
    if (metre < 0.008) {
      return "thinner than a pencil";
    }
    return metre <= 0.025 ? "up to a thumb's width" : "wider than a thumb";
  }

  private static Set<String> machines(Entry entry) {
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

  private static KeyQuestion one(String question, Map<String, String> words, String key) {
    return new KeyQuestion(
        question,
        words.values().stream().distinct().toList(),
        entry -> Set.of(words.get(word(entry.facts(), key))));
  }

  private static String word(Facts facts, String key) {
    return key.equals("bearing-place") ? facts.group("bearing").words("place") : facts.words(key);
  }

  private static KeyQuestion many(String question, Map<String, String> words, String key) {
    return new KeyQuestion(
        question,
        words.values().stream().distinct().toList(),
        entry -> {
          Set<String> fitting = new LinkedHashSet<>();
          entry.facts().list(key).forEach(word -> fitting.add(words.get(word)));
          return fitting;
        });
  }

  private static Map<String, String> words(String... pairs) {
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      words.put(pairs[i], pairs[i + 1]);
    }
    return words;
  }
}
