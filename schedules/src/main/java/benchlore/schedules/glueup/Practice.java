package benchlore.schedules.glueup;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Unit;

/** The rules of thumb glue-ups run on, one a line, each with where it comes from. */
final class Practice {
  private static final Provenance CLAMP_GUIDE =
      Provenance.source(
          "Glue-maker's clamping guide", "first clamp 1.5-2 in from each end, then every 8-12 in");
  private static final Provenance COLUMN =
      Provenance.source(
          "Extension specialist's column on gluing pressure", "surface changes within 15-20 min");
  private static final Provenance WATER_PAGE =
      Provenance.source(
          "Adhesive question page, polyurethane glue and moisture", "8 % or more, else dampen");

  static final Datum SQUEEZE_OUT = share(1.10, "a bead along both sides of the line");
  static final Datum POT_LOSS = share(1.10, "what stays in pot, brush and roller");
  static final Datum END = Datum.range(0.0381, 0.0508, Unit.METRE, CLAMP_GUIDE);
  static final Datum SPACING = Datum.range(0.2032, 0.3048, Unit.METRE, CLAMP_GUIDE);
  static final Datum ONE_CLAMP =
      Datum.of(0.15, Unit.METRE, Provenance.commonPractice("short joints"));
  static final Datum FRESH = Datum.range(900, 1200, Unit.SECOND, COLUMN);
  static final Datum APART =
      Datum.of(2, Unit.PERCENT, Provenance.commonPractice("parts within two points"));
  static final Datum DRY = Datum.of(6, Unit.PERCENT, Provenance.commonPractice("dry indoor stock"));
  static final Datum DAMP =
      Datum.of(12, Unit.PERCENT, Provenance.commonPractice("top of the gluing range"));
  static final Datum WETTEST =
      Datum.of(20, Unit.PERCENT, Provenance.fromMemory("few adhesives bond wetter wood"));
  static final Datum FOAMING_DRY = Datum.of(8, Unit.PERCENT, WATER_PAGE);
  static final Datum HUMID = Datum.of(80, Unit.PERCENT, Rates.HUMIDITY_PAGE);
  static final Datum EXTRA_HANDS =
      share(0.7, "a second pair of hands is worth less than the first");
  static final Datum CLOSED_TO_OPEN = share(1, "covered glue keeps at least as long as bare glue");

  private Practice() {}

  /** How many pairs of hands so many people are worth. */
  static double hands(int people) {
    double others = people - 1;
    double worth = others * EXTRA_HANDS.low();
    return 1 + worth;
  }

  private static Datum share(double value, String note) {
    return Datum.of(value, Unit.RATIO, Provenance.commonPractice(note));
  }
}
