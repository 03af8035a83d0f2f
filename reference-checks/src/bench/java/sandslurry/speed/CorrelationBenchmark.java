package sandslurry.speed;

import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Estimate;
import sandslurry.library.Amounts;
import sandslurry.library.Line;
import sandslurry.library.Mixture;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.SettlingVelocityModel;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.deposition.DepositionVelocityModel;
import sandslurry.transport.friction.PipeFriction;

/** One correlation, one run of pipe, and the typed face beside the kernel under it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CorrelationBenchmark {
  private final Grain grain = new Grain(0.3e-3, 2650, GrainShape.NATURAL);
  private final Grain sphere = new Grain(0.3e-3, 2650, GrainShape.SPHERE);
  private final Liquid water = new Liquid(998.2, 1.0e-3);
  private final Bore bore = new Bore(0.102, 1e-4);
  private final SettlingVelocityModel explicit = SettlingVelocities.DEFAULT;
  private final SettlingVelocityModel implicit =
      SettlingVelocities.FAMILY.find("haider-levenspiel-1989").orElseThrow();
  private final DepositionVelocityModel wilson =
      DepositionVelocities.FAMILY.find("wilson-bounded").orElseThrow();
  private final Materials materials;
  private final Slurry slurry;
  private final Line line;
  private double reynolds = 2e5;
  private double flowM3ps = 0.022;

  public CorrelationBenchmark() {
    try {
      materials = Materials.of(Inputs.design(Inputs.example("parlor-line")));
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
    slurry = materials.slurry(water, materials.sandFraction(flowM3ps));
    line =
        Line.of(Line.pipe("ASTM D1785", "4 in", "Sch 40"))
            .length(Amounts.ft(300))
            .carrying(
                Mixture.ofWater(Amounts.degC(15)).sand("ASTM C144").byVolume(Amounts.percent(3)));
  }

  @Benchmark
  public Estimate explicitSettlingVelocity() {
    return explicit.velocityMps(grain, water);
  }

  @Benchmark
  public Estimate implicitSettlingVelocity() {
    return implicit.velocityMps(sphere, water);
  }

  @Benchmark
  public double frictionFactor() {
    return PipeFriction.darcyFactor(reynolds, 1e-3);
  }

  @Benchmark
  public Estimate implicitDepositionVelocity() {
    return wilson.velocityMps(slurry, bore);
  }

  @Benchmark
  public double oneRunKernel() {
    LineModel model = new LineModel(materials);
    return model
        .runs(flowM3ps, materials.sandFraction(flowM3ps))
        .get(0)
        .deposition()
        .orElseThrow()
        .limitMps();
  }

  @Benchmark
  public Quantity<Speed> oneRunTypedFace() {
    return line.depositionVelocity();
  }
}
