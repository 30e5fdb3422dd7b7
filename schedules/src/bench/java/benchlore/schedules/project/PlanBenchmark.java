package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.cutting.Bit;
import benchlore.schedules.cutting.CutMaterial;
import benchlore.schedules.cutting.Cutting;
import benchlore.schedules.cutting.CuttingRequest;
import benchlore.schedules.cutting.CuttingSchedule;
import benchlore.schedules.cutting.Machine;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.ShopWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What an answer costs, on one core. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
public class PlanBenchmark {
  private static final Climate HEATED = Climate.swing(17, 21, 50);

  /** Projects of more and more parts, anyone in the shop at any hour. */
  @State(Scope.Benchmark)
  public static class Project {
    /** All parts of the project. */
    @Param({"1", "10", "100", "1000"})
    public int parts;

    /** Parts alike in one group. */
    @Param({"1", "100"})
    public int alike;

    ProjectRequest request;

    /** Builds the request; a refusal would measure nothing. */
    @Setup(Level.Trial)
    public void build() {
      ProjectRequest base = Projects.of(ShopWeek.ALWAYS, HEATED, 1);
      List<Part> groups = new ArrayList<>();
      for (int left = parts; left > 0; left -= alike) {
        groups.add(small("part " + groups.size(), Math.min(alike, left)));
      }
      request =
          new ProjectRequest(
              base.start(),
              groups,
              base.materials(),
              base.shop(),
              base.place(),
              base.settled(),
              base.moisturePercent());
      if (Project.plan(request) instanceof Answer.Refused<ProjectPlan> refused) {
        throw new IllegalStateException(refused.reasons().toString());
      }
    }
  }

  /** A handle or a knob: a thousand of them still fit into one coat's air and one day. */
  private static Part small(String name, int count) {
    Part part = Projects.part(name, count, 1);
    return new Part(
        name, count, 0.08, 0.03, 0.02, part.rings(), 1, part.surface(), 60, part.moves());
  }

  /** A plan of some parts. */
  @Benchmark
  public Answer<ProjectPlan> plan(Project project) {
    return Project.plan(project.request);
  }

  /** Glue-up, sanding, fit, coats and air of a small project on evenings, and a cut. */
  @State(Scope.Benchmark)
  public static class Small {
    final ProjectRequest project = Projects.of(Projects.evenings(), HEATED, 2);
    final CuttingRequest cut =
        CuttingRequest.of(
            CutMaterial.HARDWOOD,
            Bit.plain(0.00635, 2, 0.025, 0.00635),
            new Machine(Machine.Kind.LIGHT_CNC, 8_000, 24_000, 0.05),
            CuttingRequest.Side.SLOT,
            0.012);
  }

  /** The six parts together. */
  @Benchmark
  @BenchmarkMode(Mode.Throughput)
  @OutputTimeUnit(TimeUnit.SECONDS)
  public int sixParts(Small small) {
    Answer<ProjectPlan> plan = Project.plan(small.project);
    Answer<CuttingSchedule> cut = Cutting.plan(small.cut);
    int lines = plan.fold(g -> g.working().size(), r -> -1);
    return cut.fold(g -> g.working().size(), r -> -1) + lines;
  }
}
