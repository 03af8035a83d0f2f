package sandslurry.transport.bed;

import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.pipe.Bore;

/** Stopped lines against measurements and the rule of thumb of sliding beds. */
class StoppedLineReferenceTest {
  /**
   * Source: Shook, Rollins and Vassie (1974), Canadian Journal of Chemical Engineering 52:300,
   * abstract read: settled layers slid at inclinations above 22 degrees. Tolerance: the printed
   * degree, for a thin bed with the usual friction of 0.4, which was not fitted to it.
   */
  @Test
  void aSettledBedSlidesAboveTwentyTwoDegrees() {
    StoppedLine line = new StoppedLine(new Bore(0.05, 0), 10, 0.005);
    ours(Math.toDegrees(line.slideAngleRad())).isCloseTo(22, within(1.0));
  }

  /**
   * Source: rule of thumb for beds in laminar flow after A. D. Thomas, Cooke (2002) and Gillies and
   * others (1999, 2007), 1 to 2 kPa/m; from memory, unverified. The two estimates must part by no
   * more than the factor that the restart states, for beds that take 10 to 30 % of the section.
   */
  @Test
  void theBalanceAndTheRuleOfThumbPartByNoMoreThanTheFactorStated() {
    for (double share : new double[] {0.1, 0.2, 0.3}) {
      StoppedLine line = new StoppedLine(new Bore(0.154, 0), 1, share * 0.6);
      double factor = StoppedLine.Restart.UNCERTAINTY;
      ours(line.slidingBedPa(2650, 1000, 1e-3)).isBetween(1000 / factor, 2000 * factor);
    }
  }

  /**
   * Source: pressure that breaks the gel of drilling mud in a pipe, psi = gel strength in lb/100
   * ft2 times length in ft over 300 times bore in inches, after Lyons, Carter and Lapeyrouse,
   * Formulas and Calculations for Drilling, Production and Workover, as coded in the public
   * repository ddjokic/Oil-Drilling-Calculations (read). With 12 lb/100 ft2, 1000 ft and 6 in that
   * is 6.667 psi. A pound-force is 4.4482216 N and a foot 0.3048 m. Tolerance: the 300 is a round
   * number, and exact here.
   */
  @Test
  void theYieldStressRestartsAsTheGelOfDrillingMud() {
    double pound = 4.4482216152605;
    double gel = 12 * pound / (100 * 0.3048 * 0.3048);
    StoppedLine line = new StoppedLine(new Bore(6 * 0.0254, 0), 1000 * 0.3048, 0);
    double psi = line.yieldPa(gel) * 0.0254 * 0.0254 / pound;
    ours(psi).isCloseTo(12.0 * 1000 / (300 * 6), within(1e-9));
  }

  /**
   * Source: K. Kinosita (1949), Sedimentation in tilted vessels (read at scribd.com, document
   * 586734914), who prints Nakamura's balance for a vessel of width b, tilted by θ from upright,
   * with sand that falls at s: in dt the clear liquid grows by (b sec θ + (c − h) tan θ) a s dt = a
   * b sec θ dh, c height of the vessel, h of the clear liquid. Stepped through here until a
   * twentieth of the height is left. A round pipe has the width A/D. Tolerance: that of the steps.
   */
  @ParameterizedTest
  @CsvSource({"10, 5", "30, 5", "60, 5", "70, 2"})
  void sandSinksInATiltedPipeAsInNakamurasVessel(double tiltDegrees, double lengthM) {
    double tilt = Math.toRadians(tiltDegrees);
    Bore bore = new Bore(0.154, 1e-4);
    double width = bore.areaM2() / bore.diameterM();
    double settling = 0.03;
    double height = lengthM * Math.cos(tilt);
    double clear = 0;
    double time = 0;
    double dt = 1e-4;
    while (clear < 0.95 * height) {
      clear +=
          settling
              * dt
              * (width / Math.cos(tilt) + (height - clear) * Math.tan(tilt))
              / (width / Math.cos(tilt));
      time += dt;
    }
    StoppedLine line = new StoppedLine(bore, lengthM, 0.03);
    ours(line.slidingTimeS(settling, Math.PI / 2 - tilt)).isCloseTo(time, within(0.005 * time));
  }

  /**
   * Source: the gradient of a pipe packed with sliding sand in Wilson's theory of plugs, 2 μ (S −
   * 1) Cb, is 0.79 m of water a metre for sand with μ = 0.4 and Cb = 0.6; from memory, unverified.
   * Tolerance: printed digits.
   */
  @Test
  void aPackedPipeSlidesAtEightTenthsOfAMetreOfWaterAMetre() {
    double water = 1000 * 9.80665;
    PackedPlug plug =
        new PackedPlug(List.of(new PackedPlug.Part(0.154, 1, 0)), 1.65 * water * 0.6, 0.4, 0.5);
    ours(plug.seepingPa() / water).isCloseTo(0.79, within(0.005));
  }

  /**
   * Source: Janssen (1895) as silo codes write it, pressure on the floor γ D/(4 μ K) (1 − exp(−4 μ
   * K z/D)) (from memory, unverified). With the friction reversed the same column is pushed up by
   * that times exp(4 μ K z/D). Grain of 8 kN/m3, bore 0.5 m, 1 m high, μ 0.35, K 0.5: 4.305 kPa on
   * the floor, worked out by hand. Tolerance: printed digits.
   */
  @Test
  void aColumnPushedUpIsJanssensSiloWithTheFrictionReversed() {
    double turns = 4 * 0.35 * 0.5 * 1 / 0.5;
    double silo = 8000 * 0.5 / (4 * 0.35 * 0.5) * (1 - Math.exp(-turns));
    ours(silo).isCloseTo(4305, within(1.0));
    PackedPlug column =
        new PackedPlug(List.of(new PackedPlug.Part(0.5, 1, Math.PI / 2)), 8000, 0.35, 0.5);
    ours(column.wedgedPa().orElseThrow()).isCloseTo(silo * Math.exp(turns), within(1e-6 * silo));
  }
}
