package benchlore.generator.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** x. */
@Command(name = "build")
final class BuildCommand implements Callable<Integer> {
  @Override
  public Integer call() {
    return 0;
  }
}
