package benchlore.generator.planning;

import benchlore.generator.compatibility.Table;
import benchlore.generator.content.Fact;
import benchlore.generator.content.FactFile;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.content.Problem;
import benchlore.schedules.project.Project;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.project.Shop;
import benchlore.schedules.projectfile.FileProblem;
import benchlore.schedules.projectfile.ProjectFile;
import benchlore.schedules.projectfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads plan files and has the engine plan them. */
public final class Plans {
  private Plans() {}

  /**
   * Plans every file in {@code plans/} of a content folder.
   *
   * @param loader the content folder
   * @param library its records
   * @return each plan with its answer, by file name; or every problem in the files
   * @throws IOException if a file can't be read
   */
  public static LoadResult<List<Planned>> all(LibraryLoader loader, Library library)
      throws IOException {
    Path folder = loader.content().resolve("plans");
    if (!Files.isDirectory(folder)) {
      return LoadResult.of(List.of());
    }
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> plans = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
      return of(loader, plans, library);
    }
  }

  /**
   * The shop of a content folder, as no plan says otherwise about it.
   *
   * @param loader the content folder
   * @param library its records
   * @return the shop, empty where there is no {@code shop.yaml}; or every problem in it
   * @throws IOException if the file can't be read
   */
  public static LoadResult<Optional<Shop>> shop(LibraryLoader loader, Library library)
      throws IOException {
    Path file = loader.content().resolve("shop.yaml");
    if (!Files.exists(file)) {
      return LoadResult.of(Optional.empty());
    }
    LoadResult<Map<String, Facts>> shop = loader.facts(List.of(file), "shop", library);
    if (shop.value().isEmpty()) {
      return LoadResult.failed(shop.problems());
    }
    Fact facts = shop.value().get().get("shop").data();
    Reading<Shop> reading = ProjectFile.readShop(FactNode.of(facts));
    return reading.problems().isEmpty()
        ? LoadResult.of(reading.value())
        : LoadResult.failed(problems(reading, facts, facts));
  }

  /** Problems of a plan and its shop, each at its line. */
  private static List<Problem> problems(Reading<?> reading, Fact plan, Fact shop) {
    List<Problem> problems = new ArrayList<>();
    for (FileProblem problem : reading.problems()) {
      Fact file = problem.file() == FileProblem.Source.SHOP ? shop : plan;
      problems.add(FactNode.problem(file, problem.path(), problem.what(), problem.todo()));
    }
    return problems;
  }

  /**
   * Plans the files given.
   *
   * @param loader the content folder, for its schemas and its {@code shop.yaml}
   * @param files plan files
   * @param library what they refer to
   * @return each plan with its answer; or every problem in the files
   * @throws IOException if a file can't be read
   */
  public static LoadResult<List<Planned>> of(
      LibraryLoader loader, List<Path> files, Library library) throws IOException {
    LoadResult<Map<String, Facts>> shop =
        loader.facts(List.of(loader.content().resolve("shop.yaml")), "shop", library);
    LoadResult<List<FactFile>> plans = loader.files(files, "plans", library);
    LoadResult<List<Table>> tables = TableFiles.load(loader, library);
    List<Problem> problems = new ArrayList<>(shop.problems());
    problems.addAll(plans.problems());
    problems.addAll(tables.problems());
    if (!problems.isEmpty()) {
      return LoadResult.failed(problems);
    }
    Fact shopFacts = shop.value().get().get("shop").data();
    PlanSuits suits =
        new PlanSuits(library, tables.value().get(), TableFiles.over(loader, library));
    PlanRecords records = new PlanRecords(library, suits);
    List<Planned> planned = new ArrayList<>();
    for (FactFile plan : plans.value().get()) {
      Fact facts = plan.facts().data();
      Reading<ProjectRequest> reading =
          ProjectFile.read(FactNode.of(facts), FactNode.of(shopFacts), records);
      problems.addAll(problems(reading, facts, shopFacts));
      reading.value().ifPresent(request -> planned.add(planned(plan, request)));
    }
    return problems.isEmpty()
        ? LoadResult.of(planned)
        : LoadResult.failed(problems.stream().distinct().toList());
  }

  private static Planned planned(FactFile plan, ProjectRequest request) {
    return new Planned(plan.id(), plan.facts(), request, Project.plan(request), plan.text());
  }
}
