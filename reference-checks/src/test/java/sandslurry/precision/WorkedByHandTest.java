package sandslurry.precision;

import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.Carriers;
import sandslurry.pipe.Bore;
import sandslurry.plant.pen.Nennich2005;
import sandslurry.separation.channel.Merritt2009;
import sandslurry.transport.friction.DarbyMelson1981;

/**
 * Values worked by hand, every step written out, where a band around a published value would let a
 * changed constant pass. The constants are those of the sources named in the classes.
 */
class WorkedByHandTest {
  private static final double SECONDS_A_DAY = 86400;

  /** τ = 0.867 (0.2)^0.277 = 0.867 e^(−0.277 · 1.609438) = 0.867 · 0.640303 = 0.555142 Pa. */
  @Test
  void tractiveStressOfFineSand() {
    ours(new Merritt2009().neededStressPa(0.2e-3).value()).isCloseTo(0.555142, within(1e-6));
    // 0.867 (5)^0.277 = 0.867 e^(0.277 · 1.609438) = 0.867 · 1.561761
    ours(new Merritt2009().neededStressPa(5e-3).value()).isCloseTo(1.354047, within(1e-6));
  }

  /** Milk 20 kg/d: dry matter 0.0874 · 20 + 5.6 = 7.348 kg/d; 40 kg/d: 9.096 kg/d. */
  @Test
  void dryMatterOfACow() {
    ours(Nennich2005.dryMatterKgps(20 / SECONDS_A_DAY).value() * SECONDS_A_DAY)
        .isCloseTo(7.348, within(1e-9));
    ours(Nennich2005.dryMatterKgps(40 / SECONDS_A_DAY).value() * SECONDS_A_DAY)
        .isCloseTo(9.096, within(1e-9));
  }

  /**
   * Row of 9.1 % at 35 °C: 1.052 · 11^(0.467 − 1) = 1.052 e^(−0.533 · 2.397895) = 0.293058 Pa.s.
   */
  @Test
  void viscosityOfThickManure() {
    ours(Carriers.manure(0.091, Carriers.MEASURED_K).liquidAt(11).viscosityPaS())
        .isCloseTo(0.293058, within(2e-6));
  }

  /**
   * 100 mm, 4 m/s, 1000 kg/m³, 0.2 Pa, 0.02 Pa.s: Re = 20 000, He = 1000 · 0.1² · 0.2/0.02² = 5000;
   * a = −1.378 (1 + 0.146 e^−0.145) = −1.552032; f_T = 10^a · 20 000^−0.193 = 0.00414829; f_L =
   * 0.000833333 (Buckingham and Reiner: 16/Re (1 + He/(6 Re)) = 0.000833333); m = 1.7 + 2 = 3.7; f
   * = (f_L^3.7 + f_T^3.7)^(1/3.7) = 0.00415124; τw = f ρV²/2 = 33.2099 Pa.
   */
  @Test
  void wallStressOfAThinBinghamLiquid() {
    ours(new DarbyMelson1981()
            .wallStressPa(new Bingham(0.2, 0.02), 1000, new Bore(0.1, 0), 4)
            .value())
        .isCloseTo(33.2099, within(1e-3));
  }
}
