package benchlore.generator.cli;

import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.export.PlanJson;
import benchlore.generator.export.PlanText;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.Planned;
import benchlore.generator.planning.Plans;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.present.PlanCalendar;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.project.Project;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.ProjectRequest;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code benchlore plan FILE}: plans one project and prints it. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Plans a project from a plan file and prints its dated steps with cautions.")
final class PlanCommand implements Callable<Integer> {
  /** How to print. */
  enum Format {
    /** For reading. */
    text,
    /** For programs. */
    json,
    /** For a calendar: RFC 5545. */
    ics,
    /** What the engine is asked, as a page's own script asks it. */
    request
  }

  /** Where the question stands. */
  static final class Asked {
    @Parameters(paramLabel = "FILE", description = "A plan file (YAML).")
    private Path file;

    @Option(
        names = "--request",
        paramLabel = "JSON",
        description = "A request as --format=request prints it, instead of a plan file.")
    private Path request;
  }

  /** A question with its answer. */
  private record Told(
      String id, String title, ProjectRequest request, Answer<ProjectPlan> answer) {}

  @Mixin private ContentOption content;

  @ArgGroup(exclusive = true, multiplicity = "1")
  private Asked asked;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
  private Format format;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description =
          "Write here instead of printing, whole or not at all; a refused plan is printed.")
  private Optional<Path> out = Optional.empty();

  @ParentCommand private Benchlore benchlore;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    if (out.isPresent()) {
      Path read = asked.file == null ? asked.request : asked.file;
      WholeFile.ready(out.get());
      if (Files.exists(out.get()) && Files.exists(read) && Files.isSameFile(read, out.get())) {
        throw new IOException(out.get() + " is what is read; give another file to write");
      }
    }
    return asked.file == null ? request(asked.request) : content.open((folder, t) -> plan(folder));
  }

  private int plan(Path folder) throws IOException {
    Path file = asked.file;
    if (Files.isDirectory(file)) {
      throw new IOException(file + " is a folder; give a plan file");
    }
    var err = spec.commandLine().getErr();
    LibraryLoader loader = LibraryLoader.open(folder);
    LoadResult<Library> library = Content.library(loader);
    if (library.value().isEmpty()) {
      Report.problems(err, library.problems(), "Nothing was planned.");
      return Benchlore.PROBLEMS;
    }
    LoadResult<List<Planned>> plans = Plans.of(loader, List.of(file), library.value().get());
    if (plans.value().isEmpty()) {
      Report.problems(err, plans.problems(), "Nothing was planned.");
      return Benchlore.PROBLEMS;
    }
    Planned planned = plans.value().get().get(0);
    return tell(new Told(planned.id(), planned.title(), planned.request(), planned.answer()));
  }

  private int request(Path file) throws IOException {
    if (Files.isDirectory(file)) {
      throw new IOException(file + " is a folder; give a request");
    }
    ProjectRequest request;
    Answer<ProjectPlan> answer;
    try {
      request = PlanJson.parse(Files.readString(file));
      answer = Project.plan(request);
    } catch (MalformedInputException e) {
      throw new IOException(file + " is no UTF-8 text", e);
    } catch (IllegalArgumentException e) {
      var err = spec.commandLine().getErr();
      err.println(file + ": " + e.getMessage());
      err.println("Nothing was planned. A sound request is what --format=request prints.");
      err.flush();
      return Benchlore.PROBLEMS;
    }
    String name = file.getFileName().toString();
    String id = name.endsWith(".json") ? name.substring(0, name.length() - 5) : name;
    return tell(new Told(id, id, request, answer));
  }

  private int tell(Told told) throws IOException {
    boolean done = told.answer() instanceof Answer.Given || format == Format.request;
    String text = render(told);
    if (done && out.isPresent()) {
      WholeFile.write(out.get(), text.getBytes(StandardCharsets.UTF_8));
    } else if (format == Format.text) {
      benchlore.output().words(text);
    } else {
      benchlore.output().data(text);
    }
    return done ? 0 : Benchlore.PROBLEMS;
  }

  /** A calendar of a plan that can't be is no calendar: the reasons are told as text. */
  private String render(Told told) {
    return switch (format) {
      case json -> PlanJson.render(told.request(), told.answer());
      case request -> PlanJson.render(told.request());
      case text -> PlanText.render(told.title(), told.answer());
      case ics ->
          told.answer()
              .fold(
                  given -> calendar(told, given.value()),
                  refused -> PlanText.render(told.title(), told.answer()));
    };
  }

  /** Stamped with the plan's first moment, so that the same plan gives the same text. */
  private static String calendar(Told told, ProjectPlan plan) {
    return PlanCalendar.render(
        new PlanCalendar.Head(told.id(), told.title(), plan.start(), UnitSystem.METRIC), plan);
  }
}
