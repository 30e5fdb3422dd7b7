package benchlore.schedules.projectfile;

import benchlore.schedules.exchange.Node;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Shop;
import java.util.List;
import java.util.Optional;

/**
 * Reads a plan file and the shop's file into what the engine is asked.
 *
 * <p>The forms of both, keys and words and sorts of values, have been checked before: by {@link
 * #forms} or by the schemas of the content, which a test holds to be the same.
 */
public final class ProjectFile {
  private ProjectFile() {}

  /**
   * Whether a plan's file is one at all: every key, word, amount and number, at any depth. What is
   * not known is refused, never passed over, since a word that is passed over can be the pilot
   * light in a room full of vapour.
   *
   * @param plan anything
   * @return every problem; empty if there is none
   */
  public static List<FileProblem> forms(Node plan) {
    return FileForms.problems(plan);
  }

  /**
   * Reads a plan.
   *
   * @param plan its file, sound in form
   * @param shop the shop's, for what the plan leaves out
   * @param records what it names
   */
  public static Reading<ProjectRequest> read(Node plan, Node shop, Records records) {
    FileGroup own = FileGroup.of(plan, FileProblem.Source.PLAN);
    ShopReader files = new ShopReader(FileGroup.of(shop, FileProblem.Source.SHOP), own);
    PlanReader reader = new PlanReader(own, files, records);
    List<FileProblem> problems = FileChecks.ofPlan(reader);
    return problems.isEmpty()
        ? new Reading<>(Optional.of(reader.read()), problems)
        : new Reading<>(Optional.empty(), problems);
  }

  /** Reads the shop as no plan says otherwise about it. */
  public static Reading<Shop> readShop(Node shop) {
    FileGroup own = FileGroup.of(shop, FileProblem.Source.SHOP);
    ShopReader reader = new ShopReader(own, own);
    List<FileProblem> problems = FileChecks.ofShop(reader);
    return problems.isEmpty()
        ? new Reading<>(Optional.of(reader.read()), problems)
        : new Reading<>(Optional.empty(), problems);
  }
}
