package benchlore.generator.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code benchlore reckon}: one sum of the trade, without content or plan. */
@Command(
    name = "reckon",
    mixinStandardHelpOptions = true,
    description = {
      "Does one sum of the trade: reckon wet-film 50 35 0.1. Without a sum it lists them all with"
          + " what each asks for."
    })
final class ReckonCommand implements Callable<Integer> {
  @Parameters(index = "0", arity = "0..1", paramLabel = "SUM", description = "Which sum.")
  private String word = "";

  @Parameters(index = "1..*", arity = "0..*", paramLabel = "FIGURE", description = "Its figures.")
  private List<Double> figures = List.of();

  @ParentCommand private Benchlore benchlore;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    if (word.isEmpty()) {
      for (Sum sum : Sum.values()) {
        benchlore.output().line(sum.word() + ": " + String.join("; ", sum.asks()));
      }
      return 0;
    }
    for (Sum sum : Sum.values()) {
      if (sum.word().equals(word)) {
        return answer(sum);
      }
    }
    return wrong("there is no sum " + word + "; `benchlore reckon` lists them");
  }

  private int answer(Sum sum) throws IOException {
    if (!sum.takes(figures.size())) {
      return wrong(sum.word() + " asks for " + String.join("; ", sum.asks()));
    }
    double found = figure(sum);
    if (Double.isNaN(found)) {
      return wrong("the rule does not hold for these figures: " + String.join("; ", sum.asks()));
    }
    String shown = String.format(Locale.ROOT, "%.4g", found);
    benchlore.output().line(shown + " " + sum.gives());
    return 0;
  }

  private double figure(Sum sum) {
    try {
      return sum.of(figures);
    } catch (IllegalArgumentException outside) {
      return Double.NaN;
    }
  }

  private int wrong(String why) {
    spec.commandLine().getErr().println("benchlore: " + why);
    return spec.exitCodeOnInvalidInput();
  }
}
