package benchlore.schedules.projectfile;

import benchlore.schedules.answer.StepId;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.project.CoatChoice;
import benchlore.schedules.project.Layer;
import benchlore.schedules.project.Materials;
import benchlore.schedules.project.Moves;
import benchlore.schedules.project.Part;
import benchlore.schedules.project.Progress;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.sanding.SawnBy;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a plan that {@link FileChecks} has found sound into the engine's request.
 *
 * @param plan the plan's file
 * @param shop the shop, with what the plan says of it
 * @param records the records it names
 */
record PlanReader(FileGroup plan, ShopReader shop, Records records) {
  ProjectRequest read() {
    List<Layer> layers = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    for (FileGroup finish : finishes(plan)) {
      ids.add(finish.text("record"));
      layers.add(layer(finish));
    }
    String species = plan.text("species");
    String adhesive = plan.text("adhesive");
    PlaceClimate place = plan.word("place", PlaceClimate.values());
    Materials materials =
        new Materials(
            records.species(species).orElseThrow(),
            adhesive(),
            layers,
            records.suits(species, adhesive, ids, place));
    FileGroup boards = plan.group("boards");
    ProjectRequest begun =
        new ProjectRequest(
            start(plan),
            parts(),
            materials,
            shop.read(),
            place.seasons(),
            boards.flag("settled"),
            boards.amount("moisture"));
    return plan.has("run") ? begun.with(progress(plan.group("run"))) : begun;
  }

  /**
   * The record's adhesive; the least temperature on the label at hand decides over the record's.
   */
  private Adhesive adhesive() {
    Adhesive record = records.adhesive(plan.text("adhesive")).orElseThrow();
    return plan.has("adhesive-minimum") ? record.byLabel(plan.amount("adhesive-minimum")) : record;
  }

  /** What the page that runs the plan has ticked off; the rest begins when that was saved. */
  private static Progress progress(FileGroup run) {
    List<Progress.Done> done = new ArrayList<>();
    for (FileGroup step : run.groups("done")) {
      List<Interval> slots = new ArrayList<>();
      for (FileGroup.Text at : step.texts("at")) {
        slots.add(slot(at.text()));
      }
      done.add(new Progress.Done(StepId.parse(step.text("step")).orElseThrow(), slots));
    }
    return new Progress(Optional.of(moment(run.text("saved"))), done);
  }

  private static Interval slot(String text) {
    int to = text.indexOf(" to ");
    return new Interval(moment(text.substring(0, to)), moment(text.substring(to + 4)));
  }

  private static Moment moment(String text) {
    return Moment.parse(text.replace(' ', 'T'));
  }

  /** The first moment of a plan. */
  static Moment start(FileGroup plan) {
    return moment(plan.text("start"));
  }

  /** The finishes of a plan, the first on the wood first; one is a list of one. */
  static List<FileGroup> finishes(FileGroup plan) {
    return plan.has("finish") ? List.of(plan.group("finish")) : plan.groups("finishes");
  }

  /** What the plan leaves out is as the record has it. */
  private Layer layer(FileGroup f) {
    Layer usual = records.finish(f.text("record")).orElseThrow();
    CoatChoice coats = usual.coats();
    return usual.with(
        new CoatChoice(
            f.has("coats") ? f.whole("coats") : coats.coats(),
            f.has("wet-film") ? f.amount("wet-film") : coats.wetFilmMicron(),
            f.has("method") ? f.word("method", ApplicationMethod.values()) : coats.method(),
            f.has("sheen") ? f.word("sheen", Sheen.values()) : coats.sheen()));
  }

  private List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    for (FileGroup part : plan.groups("parts")) {
      parts.add(part(part));
    }
    return parts;
  }

  /** One group of like parts. */
  static Part part(FileGroup part) {
    return new Part(
        part.text("name"),
        part.whole("count"),
        part.amount("length"),
        part.amount("width"),
        part.amount("thickness"),
        rings(part.text("grain")),
        part.whole("boards"),
        surface(part.group("surface")),
        part.amount("machining"),
        moves(part));
  }

  /** How it moves; older files say only whether it does, and most that did were doors. */
  private static Moves moves(FileGroup part) {
    if (part.text("moves").isEmpty()) {
      return part.flag("moves") ? Moves.HINGED : Moves.FIXED;
    }
    return part.word("moves", Moves.values());
  }

  /** How the boards are sawn; flat where nothing is said, since that moves most. */
  private static RingAngle rings(String grain) {
    return switch (grain) {
      case "quarter" -> RingAngle.QUARTERED;
      case "rift" -> RingAngle.RIFT;
      default -> RingAngle.FLAT;
    };
  }

  private static StartSurface surface(FileGroup f) {
    if (f.has("ball-nose")) {
      FileGroup cut = f.group("ball-nose");
      return new StartSurface.BallNose(cut.amount("diameter"), cut.amount("stepover"));
    }
    if (f.has("planed")) {
      FileGroup cut = f.group("planed");
      return new StartSurface.Planed(cut.amount("pitch"), cut.amount("radius"));
    }
    if (f.has("straight-cut")) {
      FileGroup cut = f.group("straight-cut");
      return new StartSurface.StraightCut(cut.amount("diameter"), cut.amount("chip-load"));
    }
    return f.has("sawn")
        ? new StartSurface.Sawn(f.word("sawn", SawnBy.values()))
        : new StartSurface.SandedTo(ShopReader.grit(f.text("sanded")));
  }
}
