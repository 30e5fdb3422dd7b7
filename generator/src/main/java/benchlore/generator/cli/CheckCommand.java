package benchlore.generator.cli;

import benchlore.generator.library.Kind;
import benchlore.generator.library.Loaded;
import benchlore.generator.planning.Content;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code benchlore check}: reads the content and lists every problem. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Checks the content and lists every problem with its place. Writes nothing.")
final class CheckCommand implements Callable<Integer> {
  @Mixin private ContentOption content;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    return content.open(
        (folder, template) -> {
          Loaded<Content> loaded = Content.load(folder);
          var err = spec.commandLine().getErr();
          if (loaded.value().isEmpty()) {
            Report.problems(err, loaded.problems(), "Nothing was written.");
            return Benchlore.PROBLEMS;
          }
          var out = spec.commandLine().getOut();
          for (Kind kind : Kind.values()) {
            int count = loaded.value().get().library().of(kind).size();
            out.println(
                String.format("%5d %s", count, kind.title().toLowerCase(java.util.Locale.ROOT)));
          }
          out.println(String.format("%5d tools drawn", loaded.value().get().drawings().size()));
          out.println(String.format("%5d plans", loaded.value().get().plans().size()));
          out.println("No problems.");
          out.flush();
          return 0;
        });
  }
}
