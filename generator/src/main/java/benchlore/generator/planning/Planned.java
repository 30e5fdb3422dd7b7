package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.ProjectRequest;

/**
 * A plan file with the engine's answer to it.
 *
 * @param id the file's id
 * @param facts the file as written
 * @param request what was asked
 * @param answer the plan, or why not
 * @param text the plan file as it was written
 */
public record Planned(
    String id, Facts facts, ProjectRequest request, Answer<ProjectPlan> answer, String text) {
  /** Its title. */
  public String title() {
    return facts.words("title");
  }
}
