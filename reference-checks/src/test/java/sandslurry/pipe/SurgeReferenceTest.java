package sandslurry.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.pipe.surge.Joukowsky1898;

/** Pressure surge and segments of a circle against published examples and a public library. */
class SurgeReferenceTest {
  private final Joukowsky1898 surge = new Joukowsky1898();

  /**
   * Source: water-hammer tutorials (read at scribd.com, document 482544630), problem 3: bore 600
   * mm, wall 18 mm, K 2060 MPa, E 200 000 MPa, 2.5 m/s stopped in 1 s at 1050 m: 1238.35 m/s and
   * 3095.9 kPa. Tolerance: printed digits.
   */
  @Test
  void aSteelMainStoppedInASecond() {
    double speed = surge.waveSpeedMps(1000, 2.06e9, 0.6, 0.018, 2e11);
    ours(speed).isCloseTo(1238.35, within(0.01));
    assertThat(surge.returnTimeS(1050, speed)).isGreaterThan(1);
    ours(surge.stopPa(1000, speed, 2.5, 1050, 1)).isCloseTo(3095.9e3, within(50.0));
  }

  /** Source: as above, problem 4: rigid pipe, K 2.0164 GPa: 1420 m/s. Tolerance: printed digits. */
  @Test
  void aRigidPipe() {
    ours(surge.waveSpeedMps(1000, 2.0164e9, 0.15, 1, 1e18)).isCloseTo(1420, within(0.5));
  }

  /**
   * Source: CalebBell/fluids 1.3.1, fluids.geometry.V_horiz_conical with flat ends, bore and length
   * 1: volume of a lying cylinder filled to a depth. All digits.
   */
  @ParameterizedTest
  @CsvSource({
    "0.10, 0.04087527719832104",
    "0.25, 0.15354621232609464",
    "0.50, 0.39269908169872414",
    "0.75, 0.6318519510713537",
    "0.90, 0.7445228861991272",
  })
  void theAreaOfASegment(double depth, double area) {
    ours(new CircularSegment(1, depth).areaM2()).isCloseTo(area, within(1e-14));
    ours(CircularSegment.ofAreaShare(1, area / (Math.PI / 4)).depthM())
        .isCloseTo(depth, within(1e-12));
  }
}
