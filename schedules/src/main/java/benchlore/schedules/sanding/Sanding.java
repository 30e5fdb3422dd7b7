package benchlore.schedules.sanding;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Plans the sanding of one surface: from its marks as they are to the grade its finish asks for,
 * over the grades on the shelf, with time, discs and dust.
 *
 * <p>The model is set out in {@link StartSurface} (depth to remove), {@link ArcMarks} (machine
 * marks) and the working of each answer. Grain sizes and ridge heights are published; removal
 * rates, scratch depth and disc life are not, so minutes are an estimate that may be out by a
 * factor of two, and the working says so. The order of grades is far less sensitive. Parts that are
 * sanded together are one question with their areas added.
 */
public final class Sanding {
  private Sanding() {}

  /**
   * The schedule with the least hands-on time among those a master would teach: opened as coarse as
   * the marks ask, no more than one everyday grade skipped, ended as the finish's look asks.
   *
   * @param request the question; figures outside the ranges its records give are refused, and so is
   *     a shelf from which there is no such way
   * @return the schedule with its working and cautions, or every reason against it
   */
  public static Answer<SandingSchedule> plan(SandingRequest request) {
    Objects.requireNonNull(request, "request");
    Checks checks = SandingChecks.of(request);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    StartDepth start = request.start().depth();
    Optional<List<SandingPass>> passes = facePasses(request, request.shop(), start);
    if (passes.isEmpty()) {
      return Answer.refuse(List.of(noWay(request, start)));
    }
    SandingSchedule schedule = SandingPlan.of(request, start, passes.get());
    return Answer.of(
        schedule,
        SandingWorking.of(request, start, schedule),
        SandingCautions.of(request, start, schedule));
  }

  /** The face passes alone, for a checked request; empty if there is no way. */
  static Optional<List<SandingPass>> facePasses(
      SandingRequest request, SandingShop shop, StartDepth start) {
    boolean overFilm = start.filmMicron() > 0;
    SandedStock stock =
        SandedStock.wood(request.wood(), request.area().totalSquareMetre(), overFilm)
            .inPieces(request.area().pieces(), SandingFigures.FACES);
    return GritPath.cheapest(stock, shop, start, target(request, start));
  }

  /** Grades that will do as the last: the finish's, or the between-coat grade for a scuff. */
  static GritTarget target(SandingRequest request, StartDepth start) {
    SurfaceWanted wanted = request.wanted();
    return start.light()
        ? GritTarget.of(wanted.betweenCoatGrade().orElse(wanted.finalGrade()))
        : GritTarget.of(wanted, request.wood());
  }

  /**
   * What a surface needs that is fine enough as it is: a few light strokes that open the wood, with
   * the coarsest grade on the shelf that the finish takes.
   *
   * @param request a question that {@link #plan} answers
   * @return the light pass; empty if the surface has to be sanded
   */
  public static Optional<SandingPass> opener(SandingRequest request) {
    StartDepth start = request.start().depth();
    GritTarget target = target(request, start);
    boolean there = target.takes(start.grainMicron()) || target.isPassedBy(start.grainMicron());
    return there ? Optional.of(new SandingExtrasPlan(request).opener(target)) : Optional.empty();
  }

  /** Hands-on seconds of passes. */
  static double seconds(List<SandingPass> passes) {
    double seconds = 0;
    for (SandingPass pass : passes) {
      seconds = seconds + pass.seconds();
    }
    return seconds;
  }

  private static Refusal noWay(SandingRequest request, StartDepth start) {
    List<Grit> missing = ShelfGap.missing(request, start);
    if (missing.isEmpty()) {
      return Refusal.of(
          "jumpLimitRatio",
          "Even with every P grade there is no way within this jump limit.",
          "Allow a larger jump between grades; 1.7 is usual.");
    }
    List<String> labels = new ArrayList<>();
    for (Grit grit : missing) {
      labels.add(grit.label());
    }
    return Refusal.of(
        "shelf",
        "The grade this finish needs can't be reached from the grades on the shelf: the marks of"
            + " this surface want a coarser one first, or too much is skipped between two.",
        "With these on the shelf too there is a way: " + String.join(", ", labels) + ".");
  }
}
