package benchlore.schedules.air;

import benchlore.schedules.quantity.Provenance;
import java.util.OptionalDouble;

/**
 * Classes of respirator, with the assigned protection factor: how many times the exposure limit the
 * air may hold for a mask that is fitted, tested and looked after.
 */
public enum Respirator {
  /** None needed by these figures. */
  NONE(OptionalDouble.empty(), "no mask needed by these figures"),
  /** Half mask or filtering facepiece of at least 95 % class, for dust. */
  DUST_HALF_MASK(OptionalDouble.of(10), "half mask with a particle filter of at least 95 % class"),
  /** Full facepiece with high-efficiency particle filters. */
  DUST_FULL_FACE(OptionalDouble.of(50), "full facepiece with high-efficiency particle filters"),
  /** Half mask with organic-vapour cartridges. */
  VAPOUR_HALF_MASK(OptionalDouble.of(10), "half mask with organic-vapour cartridges"),
  /** Half mask with organic-vapour cartridges and particle prefilters, for spray. */
  VAPOUR_HALF_MASK_PREFILTER(
      OptionalDouble.of(10), "half mask with organic-vapour cartridges and oil-proof prefilters"),
  /** Full facepiece with organic-vapour cartridges, prefilters where sprayed. */
  FULL_FACE_VAPOUR(
      OptionalDouble.of(50), "full facepiece with organic-vapour cartridges and prefilters"),
  /**
   * Full facepiece with cartridges approved for formaldehyde; 29 CFR 1910.1048(g) asks for no less,
   * and up to ten times its limit.
   */
  FULL_FACE_FORMALDEHYDE(
      OptionalDouble.of(10),
      "full facepiece with cartridges approved for formaldehyde and organic vapour"),
  /** Breathing air through a hose from clean air: isocyanates, and sprayed formaldehyde. */
  SUPPLIED_AIR(OptionalDouble.empty(), "supplied air; never a cartridge");

  /** Where the protection factors come from. */
  static final Provenance FROM =
      Provenance.source(
          "OSHA, Assigned Protection Factors, final rule, 71 FR 50121, 24 August 2006",
          "29 CFR 1910.134 table 1, as reprinted: air-purifying half mask 10, full facepiece 50");

  private final OptionalDouble protectionFactor;
  private final String words;

  Respirator(OptionalDouble protectionFactor, String words) {
    this.protectionFactor = protectionFactor;
    this.words = words;
  }

  /** The assigned protection factor; empty where this engine gives none. */
  public OptionalDouble protectionFactor() {
    return protectionFactor;
  }

  /** What to do, as a part of a sentence: "wear a half mask with organic-vapour cartridges". */
  public String advice() {
    return switch (this) {
      case NONE -> "air the room";
      case SUPPLIED_AIR -> "work in supplied air, never with a cartridge";
      default -> "wear a " + words;
    };
  }

  /** What to look for in the shop. */
  public String words() {
    return words;
  }
}
