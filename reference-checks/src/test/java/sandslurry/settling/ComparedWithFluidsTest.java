package sandslurry.settling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.transport.friction.PipeFriction;

/**
 * The same equations as the general-purpose Python library fluids 1.0.22 (Debian package
 * python3-fluids) has them, over a thousand inputs spread evenly by their logarithms. The values
 * were made by inputs.py beside them, which also takes its times for docs/performance.md.
 */
class ComparedWithFluidsTest {
  private static final double ONE_BILLIONTH = 1e-7;
  private static final double SAND_KG_M3 = 2650;
  private static final double WATER_KG_M3 = 998.2;

  private static List<double[]> rows() throws Exception {
    return Files.readAllLines(Path.of("src/test/resources/fluids/by-fluids.csv")).stream()
        .filter(line -> !line.startsWith("#"))
        .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray())
        .toList();
  }

  /** Our value beside that of the library. */
  private record Pair(double ours, double theirs) {
    double apart() {
      return Math.abs(ours / theirs - 1);
    }
  }

  private static Pair worst(List<Pair> pairs) {
    assertThat(pairs).hasSize(1000);
    return pairs.stream().max(Comparator.comparingDouble(Pair::apart)).orElseThrow();
  }

  // fluids.friction.Churchill_1977: Churchill (1977). The worst of the thousand.
  @Test
  void frictionIsThatOfFluids() throws Exception {
    Pair worst =
        worst(
            rows().stream()
                .map(row -> new Pair(PipeFriction.darcyFactor(row[0], row[1]), row[2]))
                .toList());
    ours(worst.ours()).isCloseTo(worst.theirs(), withinPercentage(ONE_BILLIONTH));
  }

  // fluids.drag.v_terminal by Haider_Levenspiel: their line of spheres (1989). The worst of the
  // thousand.
  @Test
  void terminalVelocityIsThatOfFluids() throws Exception {
    Pair worst =
        worst(rows().stream().map(row -> new Pair(fallMps(row[3], row[4]), row[5])).toList());
    ours(worst.ours()).isCloseTo(worst.theirs(), withinPercentage(ONE_BILLIONTH));
  }

  private static double fallMps(double diameterM, double viscosityPaS) {
    return HaiderLevenspiel1989.dragLaw(1)
        .terminalVelocityMps(
            new Grain(diameterM, SAND_KG_M3, GrainShape.SPHERE),
            new Liquid(WATER_KG_M3, viscosityPaS),
            Trace.NONE);
  }
}
