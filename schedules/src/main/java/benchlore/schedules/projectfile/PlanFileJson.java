package benchlore.schedules.projectfile;

import benchlore.schedules.exchange.EngineJson;
import benchlore.schedules.exchange.Node;
import benchlore.schedules.exchange.Sink;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Species;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.project.Layer;
import benchlore.schedules.project.Materials;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Suits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plan files for a page: its own objects in, a request or problems out. */
public final class PlanFileJson {
  private PlanFileJson() {}

  /** The records a page has looked up for the one plan it asks about, finishes by their order. */
  private record Chosen(Materials materials, List<String> finishes) implements Records {
    @Override
    public Optional<Species> species(String id) {
      return Optional.of(materials.wood());
    }

    @Override
    public Optional<Adhesive> adhesive(String id) {
      return Optional.of(materials.adhesive());
    }

    @Override
    public Optional<Layer> finish(String id) {
      int at = finishes.indexOf(id);
      return at >= 0 && at < materials.layers().size()
          ? Optional.of(materials.layers().get(at))
          : Optional.empty();
    }

    @Override
    public Suits suits(String species, String adhesive, List<String> ids, PlaceClimate place) {
      return materials.suits();
    }
  }

  /**
   * Whether an object is a plan file in form. Gives a list of problems, each with its {@code path},
   * {@code what} and {@code todo}, and whether it {@code isOutOfBounds}: a number, but too small or
   * too large; empty if it is one.
   */
  public static void forms(Node file, Sink answer) {
    problems("", ProjectFile.forms(file), answer);
  }

  /**
   * Reads a plan: {@code plan} and {@code shop} are the files, {@code materials} the records the
   * plan names, as a request has them, {@code layers} with or without their {@code coats}. Gives
   * {@code problems} and, if there are none, the {@code request} less its materials; or {@code
   * broken}, if the forms were not checked before.
   */
  public static void read(Node request, Sink answer) {
    Reading<ProjectRequest> reading;
    try {
      FileGroup plan = FileGroup.of(request.field("plan"), FileProblem.Source.PLAN);
      List<String> finishes = new ArrayList<>();
      PlanReader.finishes(plan).forEach(finish -> finishes.add(finish.text("record")));
      Records records = new Chosen(EngineJson.materials(request.field("materials")), finishes);
      reading = ProjectFile.read(request.field("plan"), request.field("shop"), records);
    } catch (IllegalArgumentException e) {
      answer.open("", false);
      answer.text("broken", String.valueOf(e.getMessage()));
      answer.close();
      return;
    }
    answer.open("", false);
    problems("problems", reading.problems(), answer);
    reading.value().ifPresent(value -> EngineJson.write("request", value, answer));
    answer.close();
  }

  private static void problems(String key, List<FileProblem> problems, Sink answer) {
    answer.open(key, true);
    for (FileProblem problem : problems) {
      answer.open("", false);
      answer.open("path", true);
      problem.path().forEach(part -> answer.text("", part));
      answer.close();
      answer.text("what", problem.what());
      answer.text("todo", problem.todo());
      answer.flag("isOutOfBounds", problem.isOutOfBounds());
      answer.close();
    }
    answer.close();
  }
}
