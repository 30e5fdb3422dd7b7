package benchlore.generator.cli;

import benchlore.generator.content.Kind;
import benchlore.generator.content.LoadResult;
import benchlore.generator.planning.Content;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code benchlore check}: reads the content and lists every problem. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Checks the content and lists every problem with its place. Writes nothing.")
final class CheckCommand implements Callable<Integer> {
  @Mixin private ContentOption content;
  @ParentCommand private Benchlore benchlore;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    return content.open(
        (folder, template) -> {
          LoadResult<Content> loaded = Content.load(folder);
          var err = spec.commandLine().getErr();
          if (loaded.value().isEmpty()) {
            Report.problems(err, loaded.problems(), "Nothing was written.");
            return Benchlore.PROBLEMS;
          }
          StringBuilder counts = new StringBuilder();
          for (Kind kind : Kind.values()) {
            int count = loaded.value().get().library().of(kind).size();
            counts.append(count(count, kind.title().toLowerCase(Locale.ROOT)));
          }
          counts.append(count(loaded.value().get().pictures().tools().size(), "tools drawn"));
          counts.append(count(loaded.value().get().plans().size(), "plans"));
          benchlore.output().words(counts.toString());
          benchlore.output().line("No problems.");
          return 0;
        });
  }

  private static String count(int count, String what) {
    return String.format("%5d %s%n", count, what);
  }
}
