package benchlore.generator.site;

import benchlore.schedules.quantity.Provenance;
import java.util.Map;

/** Words shown for keys and closed-list words of the records. */
final class Labels {
  private static final Map<String, String> KEYS =
      Map.ofEntries(
          Map.entry("cas", "CAS number"),
          Map.entry("voc", "Solvent in the tin (VOC)"),
          Map.entry("osha-pel", "OSHA limit, 8 h (PEL)"),
          Map.entry("niosh-rel", "NIOSH limit (REL)"),
          Map.entry("idlh", "Immediately dangerous (IDLH)"),
          Map.entry("rate-q10", "Rate factor for 10 °C"),
          Map.entry("pot-rate-q10", "Rate factor in the pot for 10 °C"),
          Map.entry("rate-activation-energy", "Activation energy of setting"),
          Map.entry("rate-datum", "Setting stops at"),
          Map.entry("least-wood-moisture", "Wood moisture, least"),
          Map.entry("most-wood-moisture", "Wood moisture, most"),
          Map.entry("wet-film", "Wet film, one coat"),
          Map.entry("lower-explosive-limit", "Lower explosive limit (LEL)"),
          Map.entry("upper-explosive-limit", "Upper explosive limit (UEL)"),
          Map.entry("specific-gravity", "Specific gravity, 12 % moisture"),
          Map.entry("hardness", "Side hardness"),
          Map.entry("evaporation-rate", "Evaporation rate (butyl acetate = 1)"),
          Map.entry("bearing-place", "Bearing"),
          Map.entry("on", "Where it shows"),
          Map.entry("gloss-60", "Gloss at 60 degrees"),
          Map.entry("gloss-20", "Gloss at 20 degrees"),
          Map.entry("gloss-85", "Gloss at 85 degrees"),
          Map.entry("planned-as", "A schedule plans it as"),
          Map.entry("reflection", "A window in it"),
          Map.entry("thickness-share", "Share of the thickness"),
          Map.entry("lap-share", "Lap, share of the thickness"),
          Map.entry("slope", "Slope, length for 1"),
          Map.entry("gap", "Room"),
          Map.entry("suits", "Where it belongs"),
          Map.entry("life", "Life of a sheet or disc"));
  private static final Map<String, String> WORDS =
      Map.of("none", "none", "two-part", "two-part reaction", "hand-router", "hand router");

  private Labels() {}

  /** A key as a label: {@code recoat-opens} is "Recoat opens". */
  static String label(String key) {
    return KEYS.getOrDefault(key, capital(key.replace('-', ' ')));
  }

  /** A closed-list word as shown: {@code within-window} is "within window". */
  static String word(String word) {
    boolean kebab = word.matches("[a-z]+(-[a-z]+)+");
    return WORDS.getOrDefault(word, kebab ? word.replace('-', ' ') : word);
  }

  /** What a reader sees of a figure's provenance where it has no published source. */
  static String trust(Provenance.Kind kind) {
    return switch (kind) {
      case SOURCE -> "published";
      case COMMON_PRACTICE -> "common practice";
      case FROM_MEMORY -> "from memory, not checked";
      case INPUT -> "you gave it";
      case COMPUTED -> "worked out";
    };
  }

  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
