package benchlore.generator.export;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.exchange.EngineJson;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.ProjectRequest;

/**
 * A plan as JSON, its request and its answer, as {@link EngineJson} describes them: what a page's
 * {@code benchlore.plan} takes and gives.
 */
public final class PlanJson {
  private PlanJson() {}

  /** The answer to a request as JSON, ending in a line break. */
  public static String render(ProjectRequest request, Answer<ProjectPlan> answer) {
    JsonText text = new JsonText(true);
    EngineJson.write(request, answer, text);
    return text.text() + "\n";
  }

  /** The request as JSON, ending in a line break. */
  public static String render(ProjectRequest request) {
    return RequestJson.indented(request);
  }

  /**
   * The request a text holds.
   *
   * @throws IllegalArgumentException if it holds none, naming what is wrong
   */
  public static ProjectRequest parse(String text) {
    return EngineJson.planRequest(JsonTree.read(text));
  }
}
