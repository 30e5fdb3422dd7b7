package benchlore.schedules.glueup;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.glueup.GlueUpRequest.Arrangement;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.glueup.GlueUpRequest.Wood;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Adhesive.Family;
import benchlore.schedules.material.Adhesive.OilyWoods;
import benchlore.schedules.material.Adhesive.Setting;
import benchlore.schedules.material.Adhesive.WaterResistance;
import benchlore.schedules.material.Directions;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;

/** Adhesives and jobs to vary in tests; the figures are examples, not published data. */
final class Samples {
  static final double INCH = 0.0254;
  static final double PSI = 6894.757;
  static final double POUND_FORCE = 4.4482216;
  static final Moment NINE = Moment.of(2024, 3, 4, 9, 0);

  private static final Provenance TEST = Provenance.fromMemory("test");

  private Samples() {}

  static SourcedRange of(double value, Unit unit) {
    return SourcedRange.of(value, unit, TEST);
  }

  static SourcedRange range(double low, double high, Unit unit) {
    return SourcedRange.range(low, high, unit, TEST);
  }

  static SourcedRange minutes(double low, double high) {
    return range(low * 60, high * 60, Unit.SECOND);
  }

  static AdhesiveBuilder yellow() {
    return new AdhesiveBuilder();
  }

  static AdhesiveBuilder epoxy() {
    AdhesiveBuilder builder = new AdhesiveBuilder();
    builder.family = Family.EPOXY;
    builder.setting = Setting.REACTION;
    builder.waterBased = false;
    builder.open = minutes(30, 40);
    builder.clamp = minutes(360, 720);
    builder.handle = minutes(720, 1440);
    builder.full = minutes(7200, 10080);
    builder.gap = of(0.5e-3, Unit.METRE);
    builder.pressure(range(30e3, 100e3, Unit.PASCAL));
    builder.pot = Optional.of(minutes(20, 20));
    builder.oily = OilyWoods.FINE;
    return builder;
  }

  static final class AdhesiveBuilder {
    Family family = Family.PVA_YELLOW;
    Setting setting = Setting.WATER_LOSS;
    boolean waterBased = true;
    SourcedRange open = minutes(5, 10);
    Optional<SourcedRange> closed = Optional.of(minutes(10, 15));
    SourcedRange clamp = minutes(30, 60);
    SourcedRange handle = minutes(60, 120);
    SourcedRange full = minutes(1440, 1440);
    Optional<SourcedRange> machine = Optional.empty();
    SourcedRange reference = of(20, Unit.CELSIUS);
    SourcedRange minimum = of(8, Unit.CELSIUS);
    Optional<SourcedRange> maximum = Optional.of(of(40, Unit.CELSIUS));
    SourcedRange spread = range(0.15, 0.2, Unit.KILOGRAM_PER_SQUARE_METRE);
    SourcedRange density = of(1100, Unit.KILOGRAM_PER_CUBIC_METRE);
    SourcedRange soft = range(500e3, 1000e3, Unit.PASCAL);
    SourcedRange medium = soft;
    SourcedRange hard = soft;
    SourcedRange gap = of(0.15e-3, Unit.METRE);
    Optional<SourcedRange> q10 = Optional.empty();
    Optional<SourcedRange> energy = Optional.empty();
    Optional<SourcedRange> datum = Optional.empty();
    Optional<SourcedRange> potQ10 = Optional.empty();
    Optional<SourcedRange> least = Optional.empty();
    Optional<SourcedRange> most = Optional.empty();
    Optional<SourcedRange> pot = Optional.empty();
    OilyWoods oily = OilyWoods.WITH_CARE;

    void pressure(SourcedRange each) {
      soft = each;
      medium = each;
      hard = each;
    }

    Adhesive build() {
      return new Adhesive(
          family,
          setting,
          waterBased,
          new Adhesive.Times(open, closed, clamp, handle, full, machine, pot),
          new Adhesive.Air(
              reference,
              minimum,
              maximum,
              new Adhesive.Speed(q10, energy, datum, potQ10),
              new Adhesive.WoodMoisture(least, most)),
          new Adhesive.Line(spread, density, soft, medium, hard, gap),
          new Adhesive.Bond(oily, WaterResistance.SPLASH, true),
          new Adhesive.Spreading(
              Adhesive.Laid.BEAD,
              Adhesive.Faces.ONE,
              new Directions(
                  Optional.empty(),
                  "Spread it.",
                  Optional.empty(),
                  Optional.empty(),
                  "small beads.")));
    }
  }

  static Joint panel(int joints) {
    return new Joint("panel", 0.8, 0.02, joints, Arrangement.IN_LINE, 0.1, 0);
  }

  static Joint rails(int joints) {
    return new Joint("rail", 0.06, 0.03, joints, Arrangement.SEPARATE, 0.06, 0);
  }

  static GlueUpRequest request(Adhesive adhesive, Joint... joints) {
    return new GlueUpRequest(
        adhesive,
        List.of(joints),
        new Wood(600, false, List.of(8.0, 9.0), 300),
        new Clamps(12, 2500, 0, 0),
        Climate.steady(20, 50),
        NINE,
        Pace.usual(1));
  }

  static GlueUpRequest in(GlueUpRequest from, Climate climate) {
    return new GlueUpRequest(
        from.adhesive(),
        from.joints(),
        from.wood(),
        from.clamps(),
        climate,
        from.start(),
        from.pace());
  }

  static GlueUpRequest with(GlueUpRequest from, Clamps clamps) {
    return new GlueUpRequest(
        from.adhesive(),
        from.joints(),
        from.wood(),
        clamps,
        from.climate(),
        from.start(),
        from.pace());
  }

  static GlueUpRequest with(GlueUpRequest from, Wood wood) {
    return new GlueUpRequest(
        from.adhesive(),
        from.joints(),
        wood,
        from.clamps(),
        from.climate(),
        from.start(),
        from.pace());
  }

  static GlueUpRequest with(GlueUpRequest from, Pace pace) {
    return new GlueUpRequest(
        from.adhesive(),
        from.joints(),
        from.wood(),
        from.clamps(),
        from.climate(),
        from.start(),
        pace);
  }

  static GlueUpSchedule given(GlueUpRequest request) {
    return GlueUp.plan(request).fold(Answer.Given::value, refused -> fail(refused.reasons()));
  }

  private static GlueUpSchedule fail(Object reasons) {
    throw new AssertionError(reasons.toString());
  }
}
