package benchlore.generator.cli;

import benchlore.generator.content.LoadResult;
import benchlore.generator.planning.Content;
import benchlore.generator.site.Site;
import benchlore.generator.site.SiteWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
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
      description =
          "Folder for the site, replaced whole; refused if it holds anything that no build wrote."
              + " Default: ${DEFAULT-VALUE}.")
  private Path out;

  @ParentCommand private Benchlore benchlore;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    return content.open(this::build);
  }

  private int build(Path folder, Path template) throws IOException {
    SiteWriter.ready(out, folder);
    Progress progress = new Progress(spec.commandLine().getErr());
    progress.stage("load, check and plan");
    LoadResult<Content> loaded = Content.load(folder);
    if (loaded.value().isEmpty()) {
      progress.done();
      Report.problems(spec.commandLine().getErr(), loaded.problems(), "No site was written.");
      return Benchlore.PROBLEMS;
    }
    Content whole = loaded.value().get();
    progress.stage("render");
    SortedMap<String, byte[]> files = Site.render(whole, template);
    progress.stage("write");
    SiteWriter.write(files, out);
    progress.done();
    benchlore.output().line("Wrote " + files.size() + " files. Open " + out.resolve("index.html"));
    return 0;
  }
}
