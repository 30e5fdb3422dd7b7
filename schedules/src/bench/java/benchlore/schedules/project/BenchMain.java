package benchlore.schedules.project;

import java.io.PrintStream;
import java.util.Collection;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs the benchmarks and prints one table. */
public final class BenchMain {
  private BenchMain() {}

  /** Takes no arguments. */
  public static void main(String[] args) throws RunnerException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include(PlanBenchmark.class.getName())
                    .shouldFailOnError(true)
                    .verbosity(VerboseMode.SILENT)
                    .build())
            .run();
    PrintStream out = System.out;
    out.printf("%-10s %7s %7s %14s %12s %s%n", "benchmark", "parts", "alike", "score", "+-", "unit");
    for (RunResult result : results) {
      out.printf(
          Locale.ROOT,
          "%-10s %7s %7s %14.3f %12.3f %s%n",
          result.getPrimaryResult().getLabel(),
          param(result, "parts"),
          param(result, "alike"),
          result.getPrimaryResult().getScore(),
          result.getPrimaryResult().getScoreError(),
          result.getPrimaryResult().getScoreUnit());
    }
  }

  private static String param(RunResult result, String name) {
    String value = result.getParams().getParam(name);
    return value == null ? "" : value;
  }
}
