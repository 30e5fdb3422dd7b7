package benchlore.generator.cli;

import benchlore.generator.export.PlanCalendar;
import benchlore.generator.export.PlanJson;
import benchlore.generator.export.PlanText;
import benchlore.generator.library.Library;
import benchlore.generator.library.Loaded;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.Planned;
import benchlore.generator.planning.Plans;
import benchlore.schedules.answer.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
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
    ics
  }

  @Mixin private ContentOption content;

  @Parameters(paramLabel = "FILE", description = "A plan file (YAML).")
  private Path file;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
  private Format format;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    return content.open((folder, template) -> plan(folder));
  }

  private int plan(Path folder) throws IOException {
    if (Files.isDirectory(file)) {
      throw new IOException(file + " is a folder; give a plan file");
    }
    var err = spec.commandLine().getErr();
    Loaded<Library> library = Content.library(folder);
    if (library.value().isEmpty()) {
      Report.problems(err, library.problems(), "Nothing was planned.");
      return Benchlore.PROBLEMS;
    }
    Loaded<List<Planned>> plans = Plans.of(folder, List.of(file), library.value().get());
    if (plans.value().isEmpty()) {
      Report.problems(err, plans.problems(), "Nothing was planned.");
      return Benchlore.PROBLEMS;
    }
    Planned planned = plans.value().get().get(0);
    spec.commandLine().getOut().print(render(planned));
    spec.commandLine().getOut().flush();
    return planned.answer() instanceof Answer.Given ? 0 : Benchlore.PROBLEMS;
  }

  /** A calendar of a plan that can't be is no calendar: the reasons are told as text. */
  private String render(Planned planned) {
    return switch (format) {
      case json -> PlanJson.render(planned.answer());
      case text -> PlanText.render(planned);
      case ics ->
          planned
              .answer()
              .fold(
                  given -> PlanCalendar.render(planned, given.value()),
                  refused -> PlanText.render(planned));
    };
  }
}
