package sandslurry.speed;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;

/** Whole evaluations: the examples, and lines and plants that grow. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class EvaluationBenchmark {
  /** An example. */
  @State(Scope.Benchmark)
  public static class Example {
    @Param({
      "parlor-line",
      "viscometer-readings",
      "valley-of-dilution",
      "thick-liquor-rotodynamic",
      "two-pumps-six-states",
      "settling-lane",
      "closed-loop-dairy",
      "flushed-barn-lagoon",
      "pen-to-storage"
    })
    public String example;

    private Design design;

    @Setup
    public void read() throws Exception {
      design = Inputs.design(Inputs.example(example));
    }
  }

  /** A line of many runs, up to as many as a design may have. */
  @State(Scope.Benchmark)
  public static class Runs {
    @Param({"1", "10", "25", "50"})
    public int runs;

    private Design design;

    @Setup
    public void read() throws Exception {
      design = Inputs.runs(runs);
    }
  }

  /** A plant of many units. */
  @State(Scope.Benchmark)
  public static class Units {
    @Param({"1", "10", "25", "50"})
    public int units;

    private Design design;

    @Setup
    public void read() throws Exception {
      design = Inputs.units(units);
    }
  }

  @Benchmark
  public Assessment example(Example example) {
    return Evaluation.assess(example.design);
  }

  @Benchmark
  public Assessment runs(Runs runs) {
    return Evaluation.assess(runs.design);
  }

  @Benchmark
  public Assessment units(Units units) {
    return Evaluation.assess(units.design);
  }
}
