package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.CoatingSchedule;
import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays the finishes one over the other, each once the one under it is ready for it. */
final class LayerSteps {
  /**
   * What lies under a finish.
   *
   * @param layer which finish; empty for bare wood
   * @param opens when it is ready for the next; empty for bare wood
   * @param notes what the tables say of the two, and of the upper one in its place
   */
  record Under(Optional<Layer> layer, Optional<Moment> opens, List<Message> notes) {
    boolean fills() {
      return layer.map(Layer::fills).orElse(false);
    }

    Optional<Step.Window> window() {
      return opens.map(o -> new Step.Window(o.upToQuarterHour(), Optional.empty()));
    }
  }

  private final ProjectRequest request;
  private final PlanBuilder draft;
  private final LayerOver over;
  private final List<ProjectPlan.Laid> laid = new ArrayList<>();
  private final List<WorkingLine> working = new ArrayList<>();
  private final List<Caution> cautions = new ArrayList<>();

  LayerSteps(ProjectRequest request, PlanBuilder draft) {
    this.request = request;
    this.draft = draft;
    this.over = new LayerOver(request.materials().suits());
  }

  /** Adds every coat of every finish, or a refusal. */
  void add() {
    List<Layer> layers = request.materials().layers();
    for (int i = 0; i < layers.size() && !draft.refused(); i++) {
      Optional<LayerOver.Next> next = Optional.empty();
      if (i > 0) {
        next = next(layers.get(i), layers.get(i - 1));
        if (next.isEmpty()) {
          return;
        }
        rubbedBefore();
        draft.readyFrom(next.get().from());
      }
      layer(i, next);
    }
  }

  private Optional<LayerOver.Next> next(Layer upper, Layer under) {
    CoatStep last = last().last();
    DryingRequest coat =
        new DryingRequest(
            under.finish(), under.coats().wetFilmMicron(), request.shop().climate(), last.start());
    Optional<LayerOver.Next> next = over.after(upper, under, last.drying(), coat);
    if (next.isEmpty()) {
      draft.refuse(
          List.of(
              Refusal.of(
                  "finishes",
                  upper.title() + " does not hold over " + under.title() + ".",
                  "Leave one of the two out, or choose another.")));
    }
    return next;
  }

  /** A film that has to be rubbed to its sheen is, before anything goes over it. */
  private void rubbedBefore() {
    if (last().rubOut() && laid.size() - 1 == request.materials().faceIndex()) {
      CureSteps.between(request, draft, last());
    }
  }

  private void layer(int i, Optional<LayerOver.Next> next) {
    Layer layer = request.materials().layers().get(i);
    int before = 0;
    for (ProjectPlan.Laid one : laid) {
      before = one.coats().coats().size() + before;
    }
    CoatJob.Place place =
        new CoatJob.Place(layer, before, next.map(LayerOver.Next::scuffed).orElse(false));
    List<Message> notes = new ArrayList<>();
    next.ifPresent(n -> n.why().forEach(why -> notes.add(Message.of(why))));
    notes.addAll(Suited.notes(request, i));
    Optional<Layer> below =
        i == 0 ? Optional.empty() : Optional.of(request.materials().layers().get(i - 1));
    Under under = new Under(below, next.map(LayerOver.Next::from), notes);
    new CoatSteps(request, draft, place, under)
        .add()
        .ifPresent(
            coated -> {
              laid.add(coated.laid());
              working.addAll(coated.working());
              cautions.addAll(coated.cautions());
            });
  }

  /** The coats of the finish that is on last so far. */
  CoatingSchedule last() {
    return laid.get(laid.size() - 1).coats();
  }

  List<ProjectPlan.Laid> laid() {
    return laid;
  }

  List<WorkingLine> working() {
    return working;
  }

  /** Of all coats; of one finish each as its own sequence has them. */
  List<Caution> cautions() {
    return cautions;
  }
}
