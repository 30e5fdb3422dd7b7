package benchlore.generator.browser;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.planning.EngineData;
import benchlore.generator.planning.Planned;
import benchlore.generator.planning.Plans;
import benchlore.schedules.air.AirRequest;
import benchlore.schedules.air.DustCapture;
import benchlore.schedules.air.DustRequest;
import benchlore.schedules.air.DustSource;
import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.air.MistRequest;
import benchlore.schedules.air.Release;
import benchlore.schedules.air.RoomAir;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.CoatedArea;
import benchlore.schedules.coating.CoatsRequest;
import benchlore.schedules.coating.DewRequest;
import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.coating.QuantityRequest;
import benchlore.schedules.coating.SheenRequest;
import benchlore.schedules.cutting.Bit;
import benchlore.schedules.cutting.CutMaterial;
import benchlore.schedules.cutting.CuttingRequest;
import benchlore.schedules.cutting.Machine;
import benchlore.schedules.cutting.ReachRequest;
import benchlore.schedules.cutting.SurfacingRequest;
import benchlore.schedules.cutting.TabsRequest;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Pores;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.Species;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.movement.Film;
import benchlore.schedules.movement.FitRequest;
import benchlore.schedules.movement.Opening;
import benchlore.schedules.movement.Panel;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.movement.Tape;
import benchlore.schedules.project.CoatChoice;
import benchlore.schedules.project.Habits;
import benchlore.schedules.project.Layer;
import benchlore.schedules.project.Materials;
import benchlore.schedules.project.Moves;
import benchlore.schedules.project.Part;
import benchlore.schedules.project.Progress;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Shop;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.DailySwing;
import benchlore.schedules.sanding.FinishLook;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.sanding.MachineOrSandRequest;
import benchlore.schedules.sanding.MillingPass;
import benchlore.schedules.sanding.SandingArea;
import benchlore.schedules.sanding.SandingRequest;
import benchlore.schedules.sanding.SandingShop;
import benchlore.schedules.sanding.SandingTool;
import benchlore.schedules.sanding.SandingWood;
import benchlore.schedules.sanding.SawnBy;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.sanding.SurfaceWanted;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Random requests over the demo content's woods, adhesives, finishes and plans. */
final class RandomRequests {
  private final Library library;
  private final List<Species> woods;
  private final List<Adhesive> adhesives;
  private final List<Finish> finishes;
  private final List<Planned> plans;
  private final Dice dice;

  RandomRequests(Path content, long seed) throws IOException {
    this.library = LibraryLoader.load(content).value().orElseThrow();
    this.woods = library.of(Kind.SPECIES).stream().map(EngineData::wood).toList();
    this.adhesives = library.of(Kind.ADHESIVES).stream().map(EngineData::adhesive).toList();
    this.finishes =
        library.of(Kind.FINISHES).stream().flatMap(f -> EngineData.finish(f).stream()).toList();
    this.plans = Plans.all(LibraryLoader.open(content), library).value().orElseThrow();
    this.dice = new Dice(seed);
  }

  SandingRequest sanding() {
    return new SandingRequest(
        surface(),
        new SandingWood(
            dice.figure(1500, 12000),
            dice.figure(300, 1100),
            dice.one(Pores.values()),
            dice.yes(),
            dice.yes(),
            dice.yes()),
        new SandingArea(dice.figure(0.1, 12), dice.figure(0, 0.1), dice.whole(1, 40)),
        new SurfaceWanted(
            dice.one(finishes).use().finalGrade(),
            dice.one(FinishLook.values()),
            dice.yes()
                ? Optional.of(dice.one(finishes).use().betweenCoatGrade())
                : Optional.empty(),
            dice.whole(0, 6),
            dice.yes(),
            dice.yes()),
        sandingShop());
  }

  private SandingShop sandingShop() {
    return new SandingShop(
        dice.some(Grits.all(GritSystem.FEPA_P)),
        dice.some(List.of(SandingTool.values())),
        dice.figure(1.3, 3));
  }

  private StartSurface surface() {
    return switch (dice.whole(0, 6)) {
      case 0 -> new StartSurface.Sawn(dice.one(SawnBy.values()));
      case 1 -> new StartSurface.Planed(dice.figure(0.0005, 0.004), dice.figure(0.02, 0.08));
      case 2 -> new StartSurface.BallNose(dice.figure(0.003, 0.02), dice.figure(0.0001, 0.002));
      case 3 -> new StartSurface.StraightCut(dice.figure(0.003, 0.03), dice.figure(5e-5, 8e-4));
      case 4 -> new StartSurface.TornGrain(dice.figure(50, 400));
      case 5 ->
          new StartSurface.OldFilm(
              dice.figure(20, 300), dice.one(StartSurface.OldFilm.Fate.values()));
      default -> new StartSurface.SandedTo(dice.one(Grits.all(GritSystem.FEPA_P)));
    };
  }

  MachineOrSandRequest machineOrSand() {
    double ball = dice.figure(0.003, 0.02);
    return new MachineOrSandRequest(
        new MillingPass(
            ball,
            dice.figure(0.01, 0.2),
            dice.figure(0.00005, 0.0004),
            dice.figure(0.0006, 0.0028),
            dice.figure(0, 1)),
        sanding());
  }

  SheenRequest sheen() {
    Finish finish = dice.one(finishes);
    Moment last = moment();
    return new SheenRequest(
        new QuantityRequest(
            finish,
            new CoatedArea(dice.figure(0.1, 8), dice.figure(0, 0.5), dice.yes()),
            dice.whole(1, 5),
            dice.figure(30, 200),
            dice.one(finish.use().methods()),
            dice.one(SprayGun.values())),
        last,
        last.plusMinutes(dice.whole(-200, 100_000)),
        climate(last),
        dice.yes() ? Optional.of(dice.one(Sheen.values())) : Optional.empty(),
        dice.one(Sheen.values()));
  }

  SurfacingRequest surfacing() {
    return new SurfacingRequest(
        dice.figure(0.1, 3),
        dice.figure(0.1, 3),
        dice.figure(0.01, 0.06),
        dice.figure(5, 60),
        dice.figure(0.0002, 0.01),
        dice.figure(0.0002, 0.004),
        dice.figure(0.01, 0.3));
  }

  Object day() {
    Map<String, Object> heating =
        Map.of("fromHour", dice.whole(0, 23), "toHour", dice.whole(1, 24), "celsius", 21.5);
    double low = dice.figure(-10, 20);
    return Map.of(
        "lowCelsius",
        low,
        "highCelsius",
        dice.sound(0, 15) + low,
        "relativeHumidityPercent",
        dice.figure(10, 95),
        "heating",
        dice.yes() ? heating : Optional.empty(),
        "nights",
        nights(Date.of(2027, 2, 26)));
  }

  Object changingRoom() {
    return Map.of(
        "volume",
        dice.figure(10, 200),
        "changesPerHour",
        dice.figure(0.2, 30),
        "mixingFactor",
        dice.figure(1, 6),
        "celsius",
        dice.figure(0, 35));
  }

  DryingRequest drying() {
    Moment start = moment();
    return new DryingRequest(dice.one(finishes), dice.figure(20, 250), climate(start), start);
  }

  DewRequest dew() {
    return new DewRequest(dice.figure(-5, 35), dice.figure(20, 100), dice.figure(-5, 40));
  }

  CoatsRequest coats() {
    return new CoatsRequest(dice.one(finishes), dice.figure(20, 250), dice.figure(5, 400));
  }

  /** A grade in hand and the scale it is asked for in. */
  record Grade(Grit grit, GritSystem system) {}

  Grade grade() {
    GritSystem from = dice.one(GritSystem.values());
    return new Grade(dice.one(Grits.all(from)), dice.one(GritSystem.values()));
  }

  /** A day, often with nights that were otherwise about a moment; half of them fit to coat in. */
  private Climate climate(Moment about) {
    boolean fit = dice.yes();
    double low = fit ? dice.sound(16, 21) : dice.sound(-2, 24);
    double high = fit ? dice.sound(low, 24) : dice.sound(low, 32);
    return swing(low, high, fit ? dice.sound(40, 55) : dice.sound(20, 95))
        .climate(dice.yes() ? nights(about.date()) : List.of());
  }

  private DailySwing swing(double low, double high, double humidity) {
    Optional<DailySwing.Heater> heater =
        dice.whole(0, 4) == 0
            ? Optional.of(new DailySwing.Heater(dice.whole(0, 23), dice.whole(1, 24), 19.5))
            : Optional.empty();
    return new DailySwing(low, high, humidity, heater);
  }

  private List<DailySwing.Night> nights(Date about) {
    List<DailySwing.Night> nights = new ArrayList<>();
    Date date = about.plusDays(-2);
    for (int i = dice.whole(0, 4); i > 0; i--) {
      date = date.plusDays(dice.whole(1, 3));
      double low = dice.sound(-4, 24);
      nights.add(
          new DailySwing.Night(
              date,
              low,
              dice.sound(0, 12) + low,
              dice.yes() ? OptionalDouble.of(dice.sound(20, 95)) : OptionalDouble.empty(),
              dice.yes()));
    }
    return nights;
  }

  private Moment moment() {
    return Moment.of(2027, 1, 1, 0, 0).plusMinutes(dice.whole(0, 525_600));
  }

  GlueUpRequest glueUp() {
    List<GlueUpRequest.Joint> joints = new ArrayList<>();
    for (int i = dice.whole(1, 2); i > 0; i--) {
      joints.add(
          new GlueUpRequest.Joint(
              "joint \"" + i + "\" é",
              dice.figure(0.1, 2.4),
              dice.figure(0.01, 0.06),
              dice.whole(1, 3),
              dice.one(GlueUpRequest.Arrangement.values()),
              dice.figure(0.02, 0.2),
              dice.figure(0, 0.0001)));
    }
    double moisture = dice.figure(7, 11);
    double warm = dice.sound(17, 26);
    Moment start = moment();
    return new GlueUpRequest(
        dice.one(adhesives),
        joints,
        new GlueUpRequest.Wood(
            dice.figure(350, 1000),
            dice.whole(0, 4) == 0,
            List.of(moisture, dice.sound(0, 1) + moisture),
            dice.figure(0, 20_000)),
        clamps(),
        swing(warm, dice.sound(0, 6) + warm, dice.sound(30, 70))
            .climate(dice.yes() ? nights(start.date()) : List.of()),
        start,
        new GlueUpRequest.Pace(
            dice.figure(10, 60), dice.figure(100, 900), dice.figure(10, 40), dice.whole(1, 3)));
  }

  private GlueUpRequest.Clamps clamps() {
    return new GlueUpRequest.Clamps(
        dice.whole(8, 40), dice.figure(2000, 9000), dice.figure(0, 0.06), dice.figure(0.01, 0.05));
  }

  AirRequest air() {
    List<Release> releases = new ArrayList<>();
    for (int i = dice.whole(1, 3); i > 0; i--) {
      releases.add(
          new Release(
              dice.figure(0, 90_000),
              dice.figure(0.01, 0.5),
              EngineData.organic(dice.one(finishes), library),
              dice.one(ApplicationMethod.values()),
              Optional.empty(),
              dice.yes() ? 0 : dice.figure(60, 20_000),
              dice.yes() ? OptionalDouble.empty() : OptionalDouble.of(dice.figure(-20, 100))));
    }
    List<IgnitionSource> ignition =
        dice.whole(0, 4) == 0 ? dice.some(List.of(IgnitionSource.values())) : List.of();
    return new AirRequest(
        room(), releases, ignition, dice.whole(0, 9) == 0, dice.whole(0, 9) == 0, dice.yes());
  }

  DustRequest dust() {
    return new DustRequest(
        room(),
        dice.one(DustSource.values()),
        dice.figure(0.001, 2),
        dice.figure(60, 20_000),
        dice.one(DustCapture.values()),
        dice.yes() ? OptionalDouble.of(dice.sound(0, 1)) : OptionalDouble.empty());
  }

  MistRequest mist() {
    Finish finish = dice.one(finishes);
    return new MistRequest(
        room(),
        dice.one(SprayGun.values()),
        new MistRequest.Sprayed(dice.figure(1e-4, 3e-3), finish.liquid().solidsByVolume()),
        dice.figure(30, 4_000),
        dice.yes() ? OptionalDouble.empty() : OptionalDouble.of(dice.figure(0.05, 1)),
        dice.whole(0, 9) == 0);
  }

  private RoomAir room() {
    return RoomAir.ofAirChanges(
        dice.figure(20, 300), dice.figure(0.3, 40), dice.figure(1, 6), dice.figure(5, 30));
  }

  FitRequest fit() {
    double low = dice.figure(0, 60);
    return new FitRequest(
        dice.one(woods),
        new RingAngle(low, low + dice.sound(0, 30)),
        dice.figure(0.05, 0.9),
        dice.figure(0.006, 0.05),
        dice.figure(5, 16),
        new benchlore.schedules.movement.SteadyAir(dice.figure(5, 30), dice.figure(20, 90)),
        dice.one(PlaceClimate.values()).seasons(),
        dice.yes() ? Optional.of(opening()) : Optional.empty(),
        dice.yes()
            ? Optional.of(
                new Panel(
                    dice.figure(0.003, 0.008), List.of(dice.figure(0, 0.3), dice.figure(0, 0.3))))
            : Optional.empty());
  }

  private Opening opening() {
    return new Opening(
        new Film(dice.whole(0, 6), dice.figure(30, 150), dice.figure(20, 100)),
        new Film(dice.whole(0, 6), dice.figure(30, 150), dice.figure(20, 100)),
        dice.figure(0.0003, 0.002),
        dice.one(Opening.Hanging.values()),
        dice.some(Tape.common()));
  }

  private Bit bit() {
    return new Bit(
        dice.figure(0.002, 0.06),
        dice.whole(1, 4),
        dice.figure(0.006, 0.06),
        dice.one(List.of(0.00635, 0.008, 0.0127)),
        dice.figure(0.02, 0.06),
        dice.yes() ? OptionalDouble.of(dice.sound(12_000, 30_000)) : OptionalDouble.empty(),
        Optional.empty());
  }

  ReachRequest reach() {
    Bit.Bearing bearing =
        new Bit.Bearing(
            dice.one(Bit.Bearing.Seat.values()),
            dice.figure(0.004, 0.06),
            dice.figure(0.002, 0.012));
    boolean guided = dice.yes();
    return new ReachRequest(
        guided ? bit().withBearing(bearing) : bit(),
        dice.figure(0.001, 0.05),
        dice.figure(0.015, 0.04),
        dice.figure(0, 0.02),
        guided ? OptionalDouble.of(dice.sound(0.004, 0.02)) : OptionalDouble.empty(),
        dice.figure(0.001, 0.03));
  }

  TabsRequest tabs() {
    return new TabsRequest(
        dice.figure(0.05, 2),
        dice.figure(0.05, 1),
        dice.figure(0.002, 0.05),
        dice.figure(0.001, 0.02),
        dice.yes());
  }

  CuttingRequest cutting() {
    return new CuttingRequest(
        dice.one(CutMaterial.values()),
        bit(),
        new Machine(
            dice.one(Machine.Kind.values()),
            dice.figure(6000, 12_000),
            dice.figure(18_000, 26_000),
            dice.figure(0.02, 0.3)),
        dice.one(CuttingRequest.Side.values()),
        dice.figure(0.001, 0.03),
        dice.yes() ? OptionalDouble.of(dice.sound(0.0005, 0.006)) : OptionalDouble.empty(),
        new CuttingRequest.Trim(dice.yes() ? 0 : dice.figure(0, 0.005), dice.figure(5e-4, 2e-3)),
        OptionalDouble.empty());
  }

  ProjectRequest plan() {
    ProjectRequest base = dice.one(plans).request();
    Materials materials = base.materials();
    List<Part> parts = new ArrayList<>();
    for (int i = dice.whole(1, 4); i > 0; i--) {
      parts.add(part("part " + i));
    }
    Shop shop = base.shop();
    Moment start = moment();
    ProjectRequest fresh =
        new ProjectRequest(
            start,
            parts,
            new Materials(
                dice.one(woods),
                dice.whole(0, 3) > 0 ? materials.adhesive() : dice.one(adhesives),
                layers(materials),
                materials.suits()),
            new Shop(
                shop.week(),
                dice.whole(0, 3) > 0 ? shop.climate() : climate(start),
                dice.yes() ? shop.room() : room(),
                List.of(),
                shop.sanding(),
                shop.clamps(),
                shop.people(),
                new Habits(
                    dice.yes() ? OptionalDouble.empty() : OptionalDouble.of(dice.figure(0.05, 1)),
                    dice.yes() ? OptionalDouble.empty() : OptionalDouble.of(dice.figure(0, 1e6)))),
            dice.one(PlaceClimate.values()).seasons(),
            dice.yes(),
            dice.figure(6, 13));
    return dice.whole(0, 2) > 0 ? fresh : fresh.with(progress(fresh.start()));
  }

  /** Some finishes, mostly one. */
  private List<Layer> layers(Materials materials) {
    List<Layer> layers = new ArrayList<>();
    for (int i = dice.whole(0, 3) > 0 ? 1 : dice.whole(2, 3); i > 0; i--) {
      Finish finish = dice.yes() ? materials.top().finish() : dice.one(finishes);
      CoatChoice coats =
          new CoatChoice(
              dice.whole(1, 5),
              dice.figure(40, 120),
              dice.one(finish.use().methods()),
              finish.film().sheens().isEmpty()
                  ? dice.one(Sheen.values())
                  : dice.one(finish.film().sheens()));
      layers.add(new Layer("finish " + i, finish, EngineData.organic(finish, library), coats));
    }
    return layers;
  }

  /** Some steps done one after the other, and a moment to go on from. */
  private Progress progress(Moment start) {
    List<Progress.Done> done = new ArrayList<>();
    Moment at = start;
    for (String step :
        List.of("dry-clamp", "glue-1", "clamps-off-1", "machine", "sand", "coat-1")) {
      if (dice.yes()) {
        Moment end = at.plusMinutes(dice.whole(5, 300));
        done.add(
            new Progress.Done(StepId.parse(step).orElseThrow(), List.of(new Interval(at, end))));
        at = end.plusHours(dice.whole(0, 60));
      }
    }
    return new Progress(dice.yes() ? Optional.of(at) : Optional.empty(), done);
  }

  private Part part(String name) {
    return new Part(
        name,
        dice.whole(1, 4),
        dice.figure(0.2, 1.6),
        dice.figure(0.1, 0.6),
        dice.figure(0.01, 0.03),
        RingAngle.FLAT,
        dice.whole(1, 5),
        surface(),
        dice.figure(60, 7200),
        dice.one(Moves.values()));
  }
}
