package benchlore.generator.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** x. */
@Command(name = "plan")
final class PlanCommand implements Callable<Integer> {
  @Override
  public Integer call() {
    return 0;
  }
}
