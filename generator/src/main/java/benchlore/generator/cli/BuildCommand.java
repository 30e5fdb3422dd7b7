package benchlore.generator.cli;

import benchlore.generator.library.Facts;
import benchlore.generator.library.Library;
import benchlore.generator.library.LibraryLoader;
import benchlore.generator.library.Loaded;
import benchlore.generator.library.Problem;
import benchlore.generator.planning.Planned;
import benchlore.generator.planning.Plans;
import benchlore.generator.site.Site;
import benchlore.generator.site.SiteWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code benchlore build}: reads the content, plans, draws and writes the site. */
@Command(
    name = "build",
    mixinStandardHelpOptions = true,
    description =
        "Writes the offline site. Open index.html in it with any browser; no server needed.")
final class BuildCommand implements Callable<Integer> {
  @Mixin private ContentOption content;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "site",
      description = "Folder for the site, replaced whole. Default: ${DEFAULT-VALUE}.")
  private Path out;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    return content.open(this::build);
  }

  private int build(Path folder, Path template) throws IOException {
    Progress progress = new Progress(spec.commandLine().getErr());
    progress.stage("load and check");
    Loaded<Library> loaded = LibraryLoader.load(folder);
    if (loaded.value().isEmpty()) {
      progress.done();
      Report.problems(spec.commandLine().getErr(), loaded.problems(), "No site was written.");
      return Benchlore.PROBLEMS;
    }
    Library library = loaded.value().get();
    Loaded<Map<String, Facts>> lexicon =
        LibraryLoader.loadFacts(
            folder, List.of(folder.resolve("lexicon.yaml")), "lexicon", library);
    progress.stage("plan");
    Loaded<List<Planned>> plans = Plans.all(folder, library);
    List<Problem> problems = new ArrayList<>(lexicon.problems());
    problems.addAll(plans.problems());
    if (!problems.isEmpty()) {
      progress.done();
      Report.problems(spec.commandLine().getErr(), problems, "No site was written.");
      return Benchlore.PROBLEMS;
    }
    progress.stage("render");
    List<Facts> words = lexicon.value().get().get("lexicon").groups("words");
    SortedMap<String, byte[]> files =
        Site.render(new Site.Input(library, words, plans.value().get(), template));
    progress.stage("write");
    SiteWriter.write(files, out);
    progress.done();
    spec.commandLine()
        .getOut()
        .println("Wrote " + files.size() + " files. Open " + out.resolve("index.html"));
    spec.commandLine().getOut().flush();
    return 0;
  }
}
