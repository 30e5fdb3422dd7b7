package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.project.CoatChoice;
import benchlore.schedules.project.Materials;
import benchlore.schedules.project.Part;
import benchlore.schedules.project.Progress;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.sanding.SawnBy;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads one checked plan file into the engine's request. */
final class PlanFile {
  private final Facts plan;
  private final Facts shop;
  private final Library library;

  PlanFile(Facts plan, Facts shop, Library library) {
    this.plan = plan;
    this.shop = shop;
    this.library = library;
  }

  /** The request; what its parts refuse, {@link PlanChecks} has found before. */
  ProjectRequest request() {
    Facts finish = plan.group("finish");
    Finish data = EngineData.finish(record(Kind.FINISHES, finish.words("record"))).orElseThrow();
    Materials materials =
        new Materials(
            EngineData.wood(record(Kind.SPECIES, plan.words("species"))),
            EngineData.adhesive(record(Kind.ADHESIVES, plan.words("adhesive"))),
            data,
            EngineData.organic(data, library));
    Facts boards = plan.group("boards");
    ProjectRequest begun =
        new ProjectRequest(
            start(plan),
            parts(),
            materials,
            coats(finish, data),
            new ShopFile(shop, plan).shop(),
            plan.word("place", PlaceClimate.class).seasons(),
            boards.flag("settled"),
            Amount.of(boards.words("moisture")));
    return plan.find("run").isEmpty() ? begun : begun.with(progress(plan.group("run")));
  }

  /**
   * What the page that runs the plan has ticked off; the rest is laid out from when it was saved.
   */
  private static Progress progress(Facts run) {
    List<Progress.Done> done = new ArrayList<>();
    for (Facts step : run.groups("done")) {
      List<Interval> slots = step.list("at").stream().map(PlanFile::slot).toList();
      done.add(new Progress.Done(StepId.parse(step.words("step")).orElseThrow(), slots));
    }
    return new Progress(Optional.of(moment(run.words("saved"))), done);
  }

  private static Interval slot(String text) {
    String[] ends = text.split(" to ", 2);
    return new Interval(moment(ends[0]), moment(ends[1]));
  }

  private static Moment moment(String text) {
    return Moment.parse(text.replace(' ', 'T'));
  }

  /** The first moment of a plan. */
  static Moment start(Facts plan) {
    return moment(plan.words("start"));
  }

  private LibraryRecord record(Kind kind, String id) {
    return library.find(kind, id).orElseThrow();
  }

  private static CoatChoice coats(Facts finish, Finish data) {
    String film = finish.words("wet-film");
    return new CoatChoice(
        Integer.parseInt(finish.words("coats")),
        film.isEmpty() ? EngineData.usual(data.wetFilmMicron()) : Amount.of(film),
        finish.word("method", ApplicationMethod.class),
        finish.word("sheen", Sheen.class));
  }

  private List<Part> parts() {
    return plan.groups("parts").stream().map(PlanFile::part).toList();
  }

  /** One group of like parts. */
  static Part part(Facts part) {
    return new Part(
        part.words("name"),
        Integer.parseInt(part.words("count")),
        Amount.of(part.words("length")),
        Amount.of(part.words("width")),
        Amount.of(part.words("thickness")),
        rings(part.words("grain")),
        Integer.parseInt(part.words("boards")),
        surface(part.group("surface")),
        Amount.of(part.words("machining")),
        part.flag("moves"));
  }

  /** How the boards are sawn; flat where nothing is said, since that moves most. */
  private static RingAngle rings(String grain) {
    return switch (grain) {
      case "quarter" -> RingAngle.QUARTERED;
      case "rift" -> RingAngle.RIFT;
      default -> RingAngle.FLAT;
    };
  }

  private static StartSurface surface(Facts f) {
    String kind = f.data().facts().keySet().iterator().next();
    return switch (kind) {
      case "ball-nose" ->
          new StartSurface.BallNose(
              Amount.of(f.group(kind).words("diameter")),
              Amount.of(f.group(kind).words("stepover")));
      case "planed" ->
          new StartSurface.Planed(
              Amount.of(f.group(kind).words("pitch")), Amount.of(f.group(kind).words("radius")));
      case "straight-cut" ->
          new StartSurface.StraightCut(
              Amount.of(f.group(kind).words("diameter")),
              Amount.of(f.group(kind).words("chip-load")));
      case "sawn" ->
          new StartSurface.Sawn(
              SawnBy.valueOf(f.words(kind).replace('-', '_').toUpperCase(Locale.ROOT)));
      case "sanded" -> new StartSurface.SandedTo(ShopFile.grit(f.words(kind)));
      default -> throw new IllegalArgumentException("surface without a meaning: " + kind);
    };
  }
}
