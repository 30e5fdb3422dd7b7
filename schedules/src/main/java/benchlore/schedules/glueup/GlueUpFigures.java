package benchlore.schedules.glueup;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/** The rules of thumb glue-ups run on, one a line, each with where it comes from. */
final class GlueUpFigures {
  private static final Provenance CLAMP_GUIDE =
      Provenance.source(
          "Glue-maker's clamping guide", "first clamp 1.5-2 in from each end, then every 8-12 in");
  private static final Provenance COLUMN =
      Provenance.source(
          "Extension specialist's column on gluing pressure", "surface changes within 15-20 min");
  private static final Provenance WATER_PAGE =
      Provenance.source(
          "Adhesive question page, polyurethane glue and moisture", "8 % or more, else dampen");

  static final SourcedRange SQUEEZE_OUT = share(1.10, "a bead along both sides of the line");
  static final SourcedRange POT_LOSS = share(1.10, "what stays in pot, brush and roller");
  static final SourcedRange END = SourcedRange.range(0.0381, 0.0508, Unit.METRE, CLAMP_GUIDE);
  static final SourcedRange SPACING = SourcedRange.range(0.2032, 0.3048, Unit.METRE, CLAMP_GUIDE);
  static final SourcedRange ONE_CLAMP =
      SourcedRange.of(0.15, Unit.METRE, Provenance.commonPractice("short joints"));
  static final SourcedRange RUBBED =
      SourcedRange.of(0.3, Unit.METRE, Provenance.commonPractice("edges short enough to rub"));
  static final SourcedRange FRESH = SourcedRange.range(900, 1200, Unit.SECOND, COLUMN);
  static final SourcedRange APART =
      SourcedRange.of(2, Unit.PERCENT, Provenance.commonPractice("parts within two points"));
  static final SourcedRange DRY =
      SourcedRange.of(6, Unit.PERCENT, Provenance.commonPractice("dry indoor stock"));
  static final SourcedRange DAMP_TO_WETTEST =
      SourcedRange.range(
          12,
          20,
          Unit.PERCENT,
          Provenance.fromMemory("top of the gluing range; few adhesives bond wetter wood"));
  static final SourcedRange FOAMING_DRY = SourcedRange.of(8, Unit.PERCENT, WATER_PAGE);
  static final SourcedRange HUMID = SourcedRange.of(80, Unit.PERCENT, SettingRates.HUMIDITY_PAGE);
  static final SourcedRange EXTRA_HANDS =
      share(0.7, "a second pair of hands is worth less than the first");
  static final SourcedRange CLOSED_TO_OPEN =
      share(1, "covered glue keeps at least as long as bare glue");

  private GlueUpFigures() {}

  /** How many pairs of hands so many people are worth. */
  static double hands(int people) {
    double others = people - 1;
    double worth = others * EXTRA_HANDS.low();
    return 1 + worth;
  }

  private static SourcedRange share(double value, String note) {
    return SourcedRange.of(value, Unit.RATIO, Provenance.commonPractice(note));
  }
}
