package benchlore.schedules.exchange;

import benchlore.schedules.air.Air;
import benchlore.schedules.air.Dust;
import benchlore.schedules.air.Mist;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.coating.Coating;
import benchlore.schedules.coating.SheenRoute;
import benchlore.schedules.cutting.Cutting;
import benchlore.schedules.glueup.GlueUp;
import benchlore.schedules.movement.Fit;
import benchlore.schedules.present.DayRow;
import benchlore.schedules.project.Materials;
import benchlore.schedules.project.Project;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.sanding.MachineOrSand;
import benchlore.schedules.sanding.Sanding;
import benchlore.schedules.sanding.ShelfGap;
import java.util.List;

/**
 * The engine's functions over JSON: each reads a request and writes the answer.
 *
 * <p>A request has the components of the engine's record as its keys; a range is {@code
 * {"low":1,"high":2,"unit":"METRE","from":{"kind":"INPUT","title":"","where":""}}}, a moment is ISO
 * 8601 local time, a word of a closed list is its constant's name, what is absent is left out or
 * null. An answer has {@code given} true with {@code value}, {@code working} and {@code cautions},
 * or false with {@code reasons} (refused by a rule) or {@code broken} (not a request). Durations
 * are in seconds.
 */
public final class EngineJson {
  private EngineJson() {}

  /** One of the functions below. */
  public interface Call {
    /** Reads a request and writes its answer. */
    void answer(Node request, Sink answer);
  }

  /** Plans sanding; keys as {@link benchlore.schedules.sanding.SandingRequest}. */
  public static void sanding(Node request, Sink answer) {
    AnswerJson.answer(
        request, answer, f -> Sanding.plan(SandingJson.request(f)), SandingJson::schedule);
  }

  /** Machine longer or sand longer; as {@link benchlore.schedules.sanding.MachineOrSandRequest}. */
  public static void machineOrSand(Node request, Sink answer) {
    AnswerJson.answer(
        request, answer, f -> MachineOrSand.plan(SandingJson.machineOrSand(f)), SandingJson::curve);
  }

  /** The grades worth buying for a sanding; keys as {@link #sanding}. */
  public static void shelfGap(Node request, Sink answer) {
    AnswerJson.answer(
        request, answer, f -> ShelfGap.plan(SandingJson.request(f)), SandingJson::shelfAdvice);
  }

  /** Times one coat; keys as {@link benchlore.schedules.coating.DryingRequest}. */
  public static void drying(Node request, Sink answer) {
    AnswerJson.answer(
        request, answer, f -> Coating.drying(DryingJson.request(f)), DryingJson::times);
  }

  /** Whether a surface is fit to coat; keys as {@link benchlore.schedules.coating.DewRequest}. */
  public static void dew(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> Coating.dew(DryingJson.dew(f)), DryingJson::margin);
  }

  /** Coats to a dry film; keys as {@link benchlore.schedules.coating.CoatsRequest}. */
  public static void coats(Node request, Sink answer) {
    AnswerJson.answer(
        request, answer, f -> Coating.coats(DryingJson.coats(f)), AnswerJson::quantity);
  }

  /** The grade of another scale nearest to this one: keys {@code grit} and {@code system}. */
  public static void grade(Node request, Sink answer) {
    AnswerJson.answer(request, answer, SandingJson::converted, SandingJson::match);
  }

  /** Finds the ways to a sheen; keys as {@link benchlore.schedules.coating.SheenRequest}. */
  public static void sheen(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> SheenRoute.plan(SheenJson.request(f)), SheenJson::plan);
  }

  /** Plans a glue-up; keys as {@link benchlore.schedules.glueup.GlueUpRequest}. */
  public static void glueUp(Node request, Sink answer) {
    AnswerJson.answer(
        request, answer, f -> GlueUp.plan(GlueUpJson.request(f)), GlueUpJson::schedule);
  }

  /** Works out the shop's air; keys as {@link benchlore.schedules.air.AirRequest}. */
  public static void air(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> Air.plan(AirJson.request(f)), AirJson::schedule);
  }

  /** The dust of sanding in a room; keys as {@link benchlore.schedules.air.DustRequest}. */
  public static void dust(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> Dust.plan(AirJson.dust(f)), AirJson::dustSchedule);
  }

  /** The mist of spraying in a room; keys as {@link benchlore.schedules.air.MistRequest}. */
  public static void mist(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> Mist.plan(AirJson.mist(f)), AirJson::mistEstimate);
  }

  /** Works out movement and gaps; keys as {@link benchlore.schedules.movement.FitRequest}. */
  public static void fit(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> Fit.plan(FitJson.request(f)), FitJson::schedule);
  }

  /** Sets speed, feed and passes; keys as {@link benchlore.schedules.cutting.CuttingRequest}. */
  public static void cutting(Node request, Sink answer) {
    AnswerJson.answer(
        request, answer, f -> Cutting.plan(CuttingJson.request(f)), CuttingJson::schedule);
  }

  /** Whether a bit reaches; keys as {@link benchlore.schedules.cutting.ReachRequest}. */
  public static void reach(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> Cutting.plan(CuttingJson.reach(f)), CuttingJson::reach);
  }

  /** Tabs that hold a part; keys as {@link benchlore.schedules.cutting.TabsRequest}. */
  public static void tabs(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> Cutting.plan(CuttingJson.tabs(f)), CuttingJson::tabs);
  }

  /** Flattens a surface; keys as {@link benchlore.schedules.cutting.SurfacingRequest}. */
  public static void surfacing(Node request, Sink answer) {
    AnswerJson.answer(
        request, answer, f -> Cutting.plan(CuttingJson.surfacing(f)), CuttingJson::surfacing);
  }

  /**
   * The air of a day: {@code lowCelsius}, {@code highCelsius}, {@code relativeHumidityPercent} of
   * the afternoon, {@code heating} with {@code fromHour}, {@code toHour}, {@code celsius} where
   * there is any, and {@code nights} that were otherwise, where there are any: keys as {@link
   * benchlore.schedules.room.DailySwing.Night}, of which {@code afternoonHumidityPercent} and
   * {@code heated} may be missing. The value is what a request takes as its climate.
   */
  public static void climate(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> plain(DryingJson.swing(f)), DryingJson::climate);
  }

  /**
   * A room by its air changes: {@code volume}, {@code changesPerHour}, {@code mixingFactor}, {@code
   * celsius}. The value is what a request takes as its room.
   */
  public static void room(Node request, Sink answer) {
    AnswerJson.answer(request, answer, f -> plain(AirJson.changing(f)), AirJson::room);
  }

  private static <T> Answer<T> plain(T value) {
    return Answer.of(value, List.of(), List.of());
  }

  /**
   * Plans a project; keys as {@link ProjectRequest}. The value has the plan's {@code days} besides,
   * as {@link #days} gives them.
   */
  public static void plan(Node request, Sink answer) {
    AnswerJson.answer(request, answer, EngineJson::planned, ProjectJson::planned);
  }

  private static Answer<ProjectJson.Planned> planned(RequestReader f) {
    ProjectRequest request = planRequest(f);
    return planned(request, Project.plan(request));
  }

  private static Answer<ProjectJson.Planned> planned(
      ProjectRequest request, Answer<ProjectPlan> answer) {
    return answer.fold(
        given ->
            Answer.of(
                new ProjectJson.Planned(request, given.value()), given.working(), given.cautions()),
        refused -> Answer.refuse(refused.reasons()));
  }

  /** Writes the answer to a plan that was asked for otherwise. */
  public static void write(ProjectRequest request, Answer<ProjectPlan> plan, Sink answer) {
    AnswerJson.write(planned(request, plan), answer, ProjectJson::planned);
  }

  /**
   * A sentence with its figures: {@code pattern} and {@code quantities} as an answer has them. The
   * value is {@code parts}, keys as {@link benchlore.schedules.present.FigureText.Part}.
   */
  public static void sentence(Node request, Sink answer) {
    AnswerJson.answer(
        request,
        answer,
        f -> plain(ShownJson.sentence(f)),
        (out, parts) -> out.list("parts", parts, ShownJson::part));
  }

  /**
   * The days that some {@code marks} stand on, as {@code rows} to draw; a mark has the components
   * of {@link benchlore.schedules.present.DayMark}, but {@code from} and {@code to} for its
   * interval.
   */
  public static void days(Node request, Sink answer) {
    AnswerJson.answer(
        request,
        answer,
        f -> plain(DayRow.of(f.list("marks", ShownJson::mark))),
        (out, rows) -> out.list("rows", rows, ShownJson::row));
  }

  /**
   * A plan as a calendar file: {@code id}, {@code title}, {@code system}, the {@code request} of
   * the plan and, if it is not to be the plan's first moment, the {@code stamp}. The value is
   * {@code text}.
   */
  public static void calendar(Node request, Sink answer) {
    AnswerJson.answer(request, answer, EngineJson::calendar, (out, text) -> out.text("text", text));
  }

  private static Answer<String> calendar(RequestReader f) {
    return Project.plan(planRequest(f.group("request")))
        .fold(
            given -> plain(ShownJson.calendar(f, given.value())),
            refused -> Answer.refuse(refused.reasons()));
  }

  /**
   * Writes a plan's request, less its {@code materials}: whoever asks has their records. How each
   * finish goes on stands in {@code coats}, in their order.
   *
   * @param key where in what is being written; empty for the whole
   */
  public static void write(String key, ProjectRequest request, Sink to) {
    new AnswerWriter(to).group(key, request, ProjectRequestJson::request);
  }

  /**
   * The materials of a plan, as a request has them.
   *
   * @throws IllegalArgumentException if they are none, naming what is wrong
   */
  public static Materials materials(Node materials) {
    return MaterialsJson.materials(RequestReader.of(materials));
  }

  /**
   * The request of a plan.
   *
   * @throws IllegalArgumentException if it is none, naming what is wrong
   */
  public static ProjectRequest planRequest(Node request) {
    return planRequest(RequestReader.of(request));
  }

  private static ProjectRequest planRequest(RequestReader f) {
    return ProjectJson.request(f);
  }
}
