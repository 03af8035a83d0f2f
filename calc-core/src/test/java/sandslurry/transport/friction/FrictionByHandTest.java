package sandslurry.transport.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.ClearLiquid.Regime;

/** Friction with values worked by hand, and the ends of its ranges and regimes. */
class FrictionByHandTest {
  private static final Bore SMOOTH = new Bore(0.1, 0);

  /** n = 0.5: rho D² tau_y³/K⁴ = 1000 · 0.01 · 8/0.0625. */
  @Test
  void theHedstromNumberOfALiquidThatThins() {
    assertThat(LaminarPipeFlow.hedstromNumber(new HerschelBulkley(2, 0.5, 0.5), 1000, 0.1))
        .isCloseTo(1280, within(1e-9));
  }

  /**
   * Bingham, 2 Pa and 0.05 Pa.s, 8 Pa at the wall of 0.1 m: xi = 0.25; Buckingham and Reiner 8V/D =
   * 160 (1 - 1/3 + 0.25⁴/3) = 106.875, V = 1.335938 m/s; plug R (8 - 2)²/(2 · 8 · 0.05) = 2.25 m/s
   * over xi² of the section.
   */
  @Test
  void thePlugOfABinghamLiquid() {
    Bingham liquid = new Bingham(2, 0.05);
    LaminarPipeFlow flow = LaminarPipeFlow.at(liquid, 0.1, 1.3359375);
    assertThat(flow.wallStressPa()).isCloseTo(8, within(1e-9));
    assertThat(flow.plugRadiusRatio()).isCloseTo(0.25, within(1e-9));
    assertThat(flow.plugFlowShare()).isCloseTo(2.25 / 1.3359375 / 16, within(1e-9));
  }

  /**
   * Wilson and Thomas in a smooth pipe of 0.1 m, by thirty digits apart from this program: at a
   * wall stress of 10 Pa a Bingham liquid of 2 Pa and 0.01 Pa.s has alpha = 1.2, Omega = 0.00785888
   * and a gain of 11.6 · 0.2 - 2.5 ln 1.2 - Omega = 1.856337 shear velocities, so the viscosity of
   * the wall, 0.0125 Pa.s, is taken exp(-1.856337/2.5) times; and so on.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 0.01, 1, 1.8582572539, 10",
    "0, 0.2, 0.6, 2.1021398225, 12",
    "3, 0.1, 0.7, 2.4276386432, 15"
  })
  void aThickenedSublayer(double yield, double k, double n, double velocity, double stress) {
    assertThat(
            new WilsonThomas1985()
                .wallStressPa(new HerschelBulkley(yield, k, n), 1000, SMOOTH, velocity)
                .value())
        .isCloseTo(stress, within(1e-7));
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "0.1, 0", "NaN, 1", "0.1, NaN"})
  void aPipeWithoutBoreOrFlowIsRefused(double bore, double velocity) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LaminarPipeFlow.at(new Bingham(2, 0.05), bore, velocity))
        .withMessageContaining("a velocity > 0");
  }

  @Test
  void whatHasNoMeaningIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NonNewtonianFriction(new Newtonian(1), 0, SMOOTH))
        .withMessageContaining("density");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PipeFriction.darcyFactor(0, 0))
        .withMessageContaining("Re > 0");
    NonNewtonianFriction.Friction rest =
        new NonNewtonianFriction(new Bingham(2, 0.05), 1000, SMOOTH).at(0);
    assertThat(rest.pressureGradientPaPm()).isCloseTo(4 * 2 / 0.1, within(1e-12));
    assertThatThrownBy(rest::wallViscosityPaS).hasMessageContaining("at rest");
  }

  /** Laminar below 2100, turbulent from 4000 on: the range of TURBULENT begins there. */
  @Test
  void aRegimeBeginsAtItsReynoldsNumber() {
    assertThat(ClearLiquid.regime(2100)).isEqualTo(Regime.TRANSITIONAL);
    assertThat(ClearLiquid.regime(4000)).isEqualTo(Regime.TURBULENT);
    assertThat(ClearLiquid.TURBULENT.check(4000)).isEmpty();
    NonNewtonianFriction pipe = new NonNewtonianFriction(new Bingham(2, 0.05), 1000, SMOOTH);
    assertThat(pipe.regime(pipe.laminarBelowMps())).isEqualTo(Regime.TRANSITIONAL);
    assertThat(pipe.regime(pipe.turbulentAboveMps())).isEqualTo(Regime.TURBULENT);
  }

  /**
   * Ryan and Johnson (1959): laminar flow of n = 0.6 ends at 2337 where that of n = 1 does at 2099,
   * so Churchill's transition is scaled by 1.1134. At Re = 3000 with K = 0.05, 1000 kg/m3: 64/Re =
   * 0.021333; transition 8 (3000/1.1134/37530)²/1.1134 = 0.037038; with the turbulent factor T of
   * Wilson and Thomas f = (0.021333^12 + (T^-8 + 0.037038^-8)^-1.5)^(1/12).
   */
  @Test
  void theTransitionOfALiquidThatThinsIsThatOfChurchillScaled() {
    PowerLaw liquid = new PowerLaw(0.05, 0.6);
    // Re = 8 rho V²/tau_w rises as V^(2 - n).
    double velocity = 1;
    for (int i = 0; i < 60; i++) {
      velocity *=
          Math.pow(3000 / LaminarPipeFlow.at(liquid, 0.1, velocity).reynolds(1000), 1 / 1.4);
    }
    double dynamic = 1000 * velocity * velocity / 8;
    double turbulent =
        NonNewtonianModels.DEFAULT.wallStressPa(liquid, 1000, SMOOTH, velocity).value() / dynamic;
    double minus8 = Math.pow(turbulent, -8) + Math.pow(0.037038, -8);
    double factor = Math.pow(Math.pow(64.0 / 3000, 12) + Math.pow(minus8, -1.5), 1.0 / 12);
    NonNewtonianFriction.Friction friction =
        new NonNewtonianFriction(liquid, 1000, SMOOTH).at(velocity);
    assertThat(friction.wallStressPa()).isCloseTo(factor * dynamic, withinPercentage(0.1));
    assertThat(friction.pressureGradientPaPm())
        .isCloseTo(factor * 1000 * velocity * velocity / 2 / 0.1, withinPercentage(0.1));
    assertThat(friction.regime()).isEqualTo(Regime.TRANSITIONAL);
    assertThat(friction.model()).contains("Churchill");
  }

  @Test
  void aLaminarFlowIsNamedSoWhateverItIsJoinedWith() {
    NonNewtonianFriction pipe = new NonNewtonianFriction(new PowerLaw(0.05, 0.6), 1000, SMOOTH);
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      assertThat(pipe.at(share * pipe.laminarBelowMps()).model()).startsWith("laminar flow");
    }
  }

  /**
   * Turbulent flow begins at the greatest of three velocities: where the Reynolds number scaled by
   * that of Ryan and Johnson (2099 for a Newtonian liquid) is 4000, where the turbulent law crosses
   * the laminar one, and 26 √(tau_y/rho) of Slatter and Wasp (2000; from memory, unverified) from a
   * Hedström number of 1.5e5 on.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0.001, 1, RE",
    "0, 0.05, 0.6, RE",
    "0, 0.01, 1.5, RE",
    "2, 0.05, 1, RE",
    "1, 0.01, 0.5, CROSSING",
    "20, 0.1, 0.7, CROSSING",
    "5, 1, 0.3, CROSSING",
    "2, 0.004, 1, YIELD",
    "20, 0.01, 0.7, YIELD"
  })
  void turbulentFlowBeginsAtTheGreatestOfThreeVelocities(
      double yield, double consistency, double index, String governing) {
    Rheology liquid = new HerschelBulkley(yield, consistency, index);
    NonNewtonianFriction pipe = new NonNewtonianFriction(liquid, 1000, SMOOTH);
    assertThat(pipe.bore()).isEqualTo(SMOOTH);
    double velocity = pipe.turbulentAboveMps();
    LaminarPipeFlow laminar = LaminarPipeFlow.at(liquid, 0.1, velocity);
    double scale =
        LaminarPipeFlow.at(liquid, 0.1, pipe.laminarBelowMps()).reynolds(pipe.densityKgM3()) / 2099;
    double byReynolds = laminar.reynolds(1000) / scale / 4000;
    double byCrossing =
        NonNewtonianModels.DEFAULT.wallStressPa(liquid, 1000, SMOOTH, velocity).value()
            / laminar.wallStressPa();
    boolean strong = LaminarPipeFlow.hedstromNumber(liquid, 1000, 0.1) > 1.5e5;
    double byYield = strong ? velocity / (26 * Math.sqrt(yield / 1000)) : 1e9;
    assertThat(byReynolds).isGreaterThan(1 - 1e-3);
    assertThat(byCrossing).isGreaterThan(1 - 1e-9);
    assertThat(byYield).isGreaterThan(1 - 1e-9);
    assertThat(
            switch (governing) {
              case "RE" -> byReynolds;
              case "CROSSING" -> byCrossing;
              default -> byYield;
            })
        .isCloseTo(1, within(1e-3));
  }

  /**
   * The limits named by each model, asked just inside (nothing is said) and just outside, in a pipe
   * of 0.1 m with 1000 kg/m3. With n = 1 and K = 0.01: Re = 1e4 V, He = 1e5 tau_y.
   */
  @ParameterizedTest(name = "{0} {6}")
  @CsvSource({
    "wilson-thomas-1985, 0, 1,    0,    0.301, 1, -",
    "wilson-thomas-1985, 0, 1,    0,    0.299, 1, Reynolds number at the viscosity of the wall",
    "wilson-thomas-1985, 0, 1.01, 0,    5,     1, flow index n",
    "dodge-metzner-1959, 0, 1,    0,    0.291, 1, -",
    "dodge-metzner-1959, 0, 1,    0,    3.599, 1, -",
    "dodge-metzner-1959, 0, 1,    0,    0.289, 1, Reynolds number of Metzner and Reed",
    "dodge-metzner-1959, 0, 1,    0,    3.601, 1, Reynolds number of Metzner and Reed",
    "dodge-metzner-1959, 0, 1.01, 0,    1,     1, flow index n",
    "dodge-metzner-1959, 0, 0.37, 0,    0.5,   10, -",
    "dodge-metzner-1959, 0, 0.35, 0,    0.5,   10, flow index n",
    "dodge-metzner-1959, 1e-4, 1, 0,    1,     1, yield stress",
    "dodge-metzner-1959, 0, 1,    1e-6, 1,     1, roughness",
    "darby-melson-1981,  0.0101, 1, 0,  1,     1, -",
    "darby-melson-1981,  0.0099, 1, 0,  1,     1, Hedström number",
    "darby-melson-1981,  1, 1,    1e-6, 1,     1, roughness",
    "darby-melson-1981,  1, 0.99, 0,    1,     1, flow index n",
    "ryan-johnson-1959,  1, 1,    0,    1,     1, -",
    "ryan-johnson-1959,  1, 1.01, 0,    1,     1, flow index n",
    "slatter-wasp-2000,  1.51, 1, 0,    1,     1, -",
    "slatter-wasp-2000,  1.49, 1, 0,    1,     1, Hedström number",
  })
  void whatLiesOutsideTheRangeIsNamedAndNothingElse(
      String key,
      double yield,
      double index,
      double roughness,
      double velocity,
      double thicker,
      String named) {
    Rheology liquid = new HerschelBulkley(yield, 0.01 * thicker, index);
    Bore bore = new Bore(0.1, roughness);
    Correlation model;
    Estimate estimate;
    if (NonNewtonianModels.TURBULENT.find(key).isPresent()) {
      TurbulentFrictionModel law = NonNewtonianModels.TURBULENT.find(key).orElseThrow();
      model = law;
      estimate = law.wallStressPa(liquid, 1000, bore, velocity);
    } else {
      TransitionCriterion criterion = NonNewtonianModels.TRANSITIONS.find(key).orElseThrow();
      model = criterion;
      estimate = criterion.velocityMps(liquid, 1000, bore);
    }
    assertThat(estimate.excesses())
        .hasSize(named.equals("-") ? 0 : 1)
        .allSatisfy(e -> assertThat(e.bound().what()).isEqualTo(named));
    assertThat(model.about().bounds())
        .containsAll(estimate.excesses().stream().map(e -> e.bound()).toList());
  }

  /**
   * The sub-layer of Wilson and Thomas is alpha = 2/(1 + n) = 1.176 times as thick as that of
   * water: a roughness is outside from k u* rho/(mu_w alpha) = 5 on, mu_w = tau_w/(tau_w/K)^(1/n).
   */
  @Test
  void aRoughnessOfFiveThickenedSubLayersIsTheLimit() {
    PowerLaw liquid = new PowerLaw(0.02, 0.7);
    boolean inside = false;
    boolean outside = false;
    for (double k = 1e-5; k < 1e-3; k *= 1.03) {
      Estimate estimate =
          NonNewtonianModels.DEFAULT.wallStressPa(liquid, 1000, new Bore(0.1, k), 3);
      double stress = estimate.value();
      double viscosity = stress / Math.pow(stress / 0.02, 1 / 0.7);
      double layers = k * Math.sqrt(stress / 1000) * 1000 / viscosity / (2 / 1.7);
      assertThat(estimate.inRange()).as("%s", layers).isEqualTo(layers <= 5);
      inside |= estimate.inRange();
      outside |= !estimate.inRange();
    }
    assertThat(inside && outside).isTrue();
  }

  /**
   * 1 Pa.s at 1 mm/s: the laminar 8 mu V/D = 0.08 Pa, and Re = 1000 · 0.001 · 0.1/1 = 0.1 is named.
   */
  @Test
  void creepingFlowHasTheLaminarStressAndSaysSo() {
    Estimate estimate =
        NonNewtonianModels.DEFAULT.wallStressPa(new Newtonian(1), 1000, SMOOTH, 1e-3);
    assertThat(estimate.value()).isCloseTo(0.08, within(1e-12));
    assertThat(estimate.excesses()).hasSize(1);
    assertThat(estimate.excesses().get(0).value()).isCloseTo(0.1, within(1e-12));
  }
}
