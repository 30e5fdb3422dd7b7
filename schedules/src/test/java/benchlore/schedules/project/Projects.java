package benchlore.schedules.project;

import benchlore.schedules.air.Release;
import benchlore.schedules.air.RoomAir;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.AirLimits;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.Curing;
import benchlore.schedules.material.Directions;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.FilmBuild;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.FinishUse;
import benchlore.schedules.material.Hazards;
import benchlore.schedules.material.Liquid;
import benchlore.schedules.material.Pores;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.material.SolventShare;
import benchlore.schedules.material.Species;
import benchlore.schedules.material.StatedTimes;
import benchlore.schedules.material.UsePlace;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.sanding.SandingShop;
import benchlore.schedules.sanding.SandingTool;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import benchlore.schedules.time.Weekday;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Invented projects for tests: cherry, a yellow glue, a brushed oil varnish, a heated shop. */
final class Projects {
  static final Moment START = Moment.of(2027, 1, 12, 18, 0);
  private static final Provenance FROM = Provenance.fromMemory("test");

  private Projects() {}

  static ProjectRequest of(ShopWeek week, Climate climate, int panels) {
    return of(week, climate, panels, new Surface(false, false, Sheen.SATIN));
  }

  /** What else than the last grade the bare wood gets hangs on these. */
  record Surface(boolean openGrained, boolean raisesGrain, Sheen sheen) {}

  static ProjectRequest of(ShopWeek week, Climate climate, int panels, Surface surface) {
    return new ProjectRequest(
        START,
        List.of(part("panel", panels, 4), part("loose rail", 1, 1)),
        Materials.of(
            cherry(surface.openGrained()),
            yellow(),
            new Layer(
                "varnish",
                varnish(surface.raisesGrain()),
                List.of(new Release.Share(spirit(), 1)),
                new CoatChoice(3, 80, ApplicationMethod.BRUSH, surface.sheen()))),
        new Shop(
            week,
            climate,
            RoomAir.ofAirChanges(60, 12, 3, climate.meanCelsius()),
            List.of(),
            new SandingShop(
                grits(),
                List.of(SandingTool.RANDOM_ORBIT, SandingTool.BLOCK),
                SandingShop.USUAL_JUMP),
            new GlueUpRequest.Clamps(10, 4_500, 0.045, 0.03),
            1),
        PlaceClimate.HEATED_ROOM.seasons(),
        true,
        8);
  }

  /** Tuesday and Thursday evenings, Saturday and Sunday. */
  static ShopWeek evenings() {
    Map<Weekday, List<ShopWeek.Span>> days = new EnumMap<>(Weekday.class);
    List<ShopWeek.Span> evening = List.of(new ShopWeek.Span(18 * 60 + 30, 21 * 60 + 30));
    days.put(Weekday.TUESDAY, evening);
    days.put(Weekday.THURSDAY, evening);
    days.put(
        Weekday.SATURDAY,
        List.of(new ShopWeek.Span(9 * 60, 12 * 60 + 30), new ShopWeek.Span(13 * 60 + 30, 18 * 60)));
    days.put(Weekday.SUNDAY, List.of(new ShopWeek.Span(10 * 60, 16 * 60)));
    return ShopWeek.of(days, List.of());
  }

  static Part part(String name, int count, int boards) {
    return new Part(
        name,
        count,
        0.8,
        0.4,
        0.02,
        RingAngle.FLAT,
        boards,
        new StartSurface.Planed(0.0015, 0.03),
        2_400,
        name.equals("panel") ? Moves.HINGED : Moves.FIXED);
  }

  private static List<Grit> grits() {
    List<Grit> grits = new ArrayList<>();
    for (int number : List.of(80, 100, 120, 150, 180, 220, 320)) {
      grits.add(Grits.find(GritSystem.FEPA_P, number).orElseThrow());
    }
    return grits;
  }

  private static SourcedRange of(double value, Unit unit) {
    return SourcedRange.of(value, unit, FROM);
  }

  private static Optional<SourcedRange> hours(double low, double high) {
    return Optional.of(SourcedRange.range(low * 3_600, high * 3_600, Unit.SECOND, FROM));
  }

  private static Species cherry(boolean openGrained) {
    return new Species(
        Species.Group.HARDWOOD,
        of(0.50, Unit.RATIO),
        Optional.of(of(4_226, Unit.NEWTON)),
        new Species.Movement(
            of(3.7, Unit.PERCENT), of(7.1, Unit.PERCENT), Optional.empty(), Optional.empty()),
        new Species.Surface(
            Pores.DIFFUSE,
            openGrained,
            false,
            true,
            false,
            Species.Resin.NONE,
            Species.UnderFilm.BARE));
  }

  private static Adhesive yellow() {
    return new Adhesive(
        Adhesive.Family.PVA_YELLOW,
        Adhesive.Setting.WATER_LOSS,
        true,
        new Adhesive.Times(
            of(300, Unit.SECOND),
            Optional.of(of(600, Unit.SECOND)),
            of(1_800, Unit.SECOND),
            of(7_200, Unit.SECOND),
            of(86_400, Unit.SECOND),
            Optional.empty(),
            Optional.empty()),
        new Adhesive.Air(
            of(21, Unit.CELSIUS), of(5, Unit.CELSIUS), Optional.empty(), Optional.empty()),
        new Adhesive.Line(
            of(0.2, Unit.KILOGRAM_PER_SQUARE_METRE),
            of(1_100, Unit.KILOGRAM_PER_CUBIC_METRE),
            of(700_000, Unit.PASCAL),
            of(1_000_000, Unit.PASCAL),
            of(1_200_000, Unit.PASCAL),
            of(0.00015, Unit.METRE)),
        new Adhesive.Bond(Adhesive.OilyWoods.WITH_CARE, Adhesive.WaterResistance.SPLASH, true),
        new Adhesive.Spreading(
            Adhesive.Laid.BEAD,
            Adhesive.Faces.ONE,
            new Directions(
                Optional.empty(),
                "Brush it out on one edge and close.",
                Optional.empty(),
                Optional.of("Scrape the beads while they are rubbery."),
                "small beads all along.")));
  }

  private static Finish varnish(boolean raisesGrain) {
    return new Finish(
        FinishFamily.ALKYD_VARNISH,
        FinishRole.FILM,
        new Curing(
            List.of(DryingMechanism.EVAPORATION, DryingMechanism.OXIDATION),
            Optional.empty(),
            Optional.empty()),
        new StatedTimes(
            hours(4, 8),
            hours(8, 24),
            hours(20, 24),
            hours(24, 30),
            hours(48, 72),
            hours(7 * 24, 30 * 24),
            hours(48, 72),
            Optional.empty()),
        new AirLimits(
            of(21, Unit.CELSIUS),
            of(50, Unit.PERCENT),
            of(10, Unit.CELSIUS),
            of(32, Unit.CELSIUS),
            of(85, Unit.PERCENT),
            Optional.empty()),
        new Liquid(
            of(48, Unit.PERCENT),
            of(900, Unit.KILOGRAM_PER_CUBIC_METRE),
            of(450, Unit.KILOGRAM_PER_CUBIC_METRE),
            List.of(new SolventShare("white-spirit", of(100, Unit.PERCENT))),
            new Hazards(Optional.of(of(40, Unit.CELSIUS)), true, false, false)),
        new FilmBuild(
            CoatBond.WITHIN_WINDOW,
            of(80, Unit.MICRON),
            of(3, Unit.COUNT),
            Optional.empty(),
            List.of(Sheen.GLOSS, Sheen.SATIN)),
        new FinishUse(
            List.of(ApplicationMethod.BRUSH),
            List.of(UsePlace.INDOOR_DRY),
            SourcedRange.range(150, 220, Unit.COUNT, FROM),
            of(320, Unit.COUNT),
            raisesGrain,
            new Directions(
                Optional.of("Thin this coat by a tenth."),
                "Flow it on and leave it.",
                Optional.of("Spray it thin."),
                Optional.empty(),
                "bubbles.")));
  }

  private static Solvent spirit() {
    return new Solvent(
        "white-spirit",
        of(0.144, Unit.KILOGRAM_PER_MOLE),
        of(780, Unit.KILOGRAM_PER_CUBIC_METRE),
        new Solvent.Volatility(
            Optional.of(of(160, Unit.CELSIUS)),
            Optional.of(of(600, Unit.PASCAL)),
            Optional.of(of(0.1, Unit.RATIO))),
        new Solvent.Fire(
            Optional.of(of(40, Unit.CELSIUS)),
            Optional.of(of(0.6, Unit.PERCENT)),
            Optional.empty()),
        new Solvent.Exposure(
            Optional.of(of(500, Unit.PPM)),
            Optional.of(of(59, Unit.PPM)),
            Optional.of(of(305, Unit.PPM)),
            Optional.empty(),
            Optional.empty()),
        false);
  }
}
