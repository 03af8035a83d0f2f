package sandslurry.transport.friction;

import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;

class NonNewtonianFrictionReferenceTest {
  // Wall stress and pressure gradient in a pipe of 154.05 mm at 1 m/s: our own evaluation, made
  // outside this program by adaptive quadrature of V = R/τw³ ∫ τ² γ̇ dτ and a root finder (SciPy
  // 1.17): a check of the code, not of the physics. To 1e-9.
  @ParameterizedTest
  @CsvSource({
    " 1, 0.1,   0.8,    3.76874748229152,   97.85777299036728",
    " 2, 0.5,   0.6,    8.380913523841219, 217.61541120003167",
    "10, 5.885, 0.367, 40.53360826936449, 1052.4792799575332",
    " 0, 1.052, 0.467,  7.48222714203921,  194.28048405165103",
    " 5, 0.05,  1,      8.975057354341873, 233.0427096226387",
  })
  void laminarFlowIsTheQuadratureOfTheRheogram(
      double yield, double k, double n, double stress, double gradient) {
    LaminarPipeFlow flow = LaminarPipeFlow.at(new HerschelBulkley(yield, k, n), 0.15405, 1.0);
    ours(flow.wallStressPa()).isCloseTo(stress, within(1e-9 * stress));
    ours(flow.pressureGradientPaPm()).isCloseTo(gradient, within(1e-9 * gradient));
  }

  @Test
  void aBinghamLiquidThatJustRunsOutOfAVerticalTubeHasTheTextbookYieldStress() {
    // Backhurst and Harker with Richardson and Coulson, Chemical Engineering Volume 1, Solutions to
    // the Problems, problem 3.30 (page read): 2000 kg/m3, tube of 300 mm, g = 9.81: 1472 N/m2.
    // Tolerance: four digits.
    ours(LaminarPipeFlow.at(new Bingham(1472, 1), 0.3, 1e-9).pressureGradientPaPm())
        .isCloseTo(2000 * 9.81, within(10.0));
  }

  @Test
  void aPowerLawLiquidHasTheTextbookRatioOfAxialToMeanVelocityAndConsistency() {
    // Same book, problem 3.38 (page read): bore 5 mm, mean velocity 1 m/s, axial 1.2 m/s: n =
    // 0.111.
    // Water of 1 mPa.s loses 1e4 N/m2 where the liquid loses 1e5. The equation printed there,
    // (1e5/(2 k l))^9 a^10 0.083 = (1e4/(2 mu l))^9 a^18 3.81e-6, gives k = 6.24. Tolerance: digits
    // of 3.81e-6.
    double water = LaminarPipeFlow.at(new Newtonian(0.001), 0.005, 1).pressureGradientPaPm();
    double length = 1e4 / water;
    LaminarPipeFlow flow = LaminarPipeFlow.at(new PowerLaw(6.24, 0.111), 0.005, 1);
    ours(flow.velocityMps(0.0)).isCloseTo(1.2, within(0.0005));
    ours(flow.pressureGradientPaPm() * length).isCloseTo(1e5, within(0.005e5));
  }

  @Test
  void aPowerLawLiquidHasTheTextbookVelocityProfile() {
    // Same book, problem 3.40 (page read): bore 70 mm; doubling the flow raises the pressure drop
    // by
    // 1.5: n = 0.585; pitot readings 0.80, 0.77, 0.62, 0.27 m/s at 0, 10, 20, 30 mm from the axis.
    // Tolerance: half a digit.
    PowerLaw liquid = new PowerLaw(1, 0.585);
    ours(LaminarPipeFlow.at(liquid, 0.07, 2).wallStressPa()
            / LaminarPipeFlow.at(liquid, 0.07, 1).wallStressPa())
        .isCloseTo(1.5, within(0.001));
    LaminarPipeFlow flow = LaminarPipeFlow.at(liquid, 0.07, 1);
    double scale = 0.80 / flow.velocityMps(0.0);
    ours(scale * flow.velocityMps(0.01)).isCloseTo(0.77, within(0.005));
    ours(scale * flow.velocityMps(0.02)).isCloseTo(0.62, within(0.005));
    ours(scale * flow.velocityMps(0.03)).isCloseTo(0.27, within(0.005));
  }

  @Test
  void thePlugOfABinghamLiquidHasTheTextbookVelocity() {
    // Same book, page 32 (read): k u0 = r (Rw − RY)²/(2 Rw).
    Bingham liquid = new Bingham(4, 0.08);
    LaminarPipeFlow flow = LaminarPipeFlow.at(liquid, 0.1, 0.7);
    double wall = flow.wallStressPa();
    ours(flow.velocityMps(0.0))
        .isCloseTo(0.05 * Math.pow(wall - 4, 2) / (2 * wall) / 0.08, within(1e-9));
  }

  // Ryan and Johnson (1959), AIChE Journal 5:433; closed form as read in an open library of
  // engineering rheology: 6464 n (n+2)^((n+2)/(n+1))/(3n+1)², "about 2100 for n = 1; rises to a
  // maximum near n = 0.4". Evaluated outside this project. Rounded to the unit.
  @ParameterizedTest
  @CsvSource({"1, 2099", "0.7, 2280", "0.6, 2337", "0.4, 2396", "0.3, 2345"})
  void laminarFlowOfAPowerLawEndsAtTheReynoldsNumberOfRyanAndJohnson(double n, double reynolds) {
    PowerLaw liquid = new PowerLaw(0.3, n);
    double velocity = new RyanJohnson1959().velocityMps(liquid, 1000, new Bore(0.15, 0)).value();
    ours(LaminarPipeFlow.at(liquid, 0.15, velocity).reynolds(1000))
        .isCloseTo(reynolds, within(0.6));
  }

  @Test
  void laminarFlowOfANewtonianLiquidEndsAtTheUsual2100() {
    // The transition that a worked procedure for pseudoplastic liquids uses (cheresources.com,
    // entry
    // 388, read): Reynolds number 2100, rounded.
    Newtonian liquid = new Newtonian(0.01);
    double velocity = new RyanJohnson1959().velocityMps(liquid, 1000, new Bore(0.15, 0)).value();
    ours(1000 * velocity * 0.15 / 0.01).isCloseTo(2100, within(1.0));
  }

  // Hanks and Pratt (1967), SPE Journal 7:342: x/(1−x)³ = He/16 800, Re_c = He (1 − 4x/3 +
  // x⁴/3)/(8x);
  // from memory, unverified. Solved outside this program (SciPy). Tolerance 0.1 %: 16 800 is a
  // rounded 16 794.
  @ParameterizedTest
  @CsvSource({
    "1e3, 2289.58",
    "1e4, 3328.77",
    "1e5, 6815.60",
    "1e6, 15289.11",
    "1e7, 34067.07",
  })
  void laminarFlowOfABinghamLiquidEndsAtTheReynoldsNumberOfHanks(double hedstrom, double reynolds) {
    double viscosity = 0.02;
    double yield = hedstrom * viscosity * viscosity / (1000 * 0.15 * 0.15);
    Bingham liquid = new Bingham(yield, viscosity);
    ours(LaminarPipeFlow.hedstromNumber(liquid, 1000, 0.15))
        .isCloseTo(hedstrom, within(1e-9 * hedstrom));
    double velocity = new RyanJohnson1959().velocityMps(liquid, 1000, new Bore(0.15, 0)).value();
    ours(1000 * velocity * 0.15 / viscosity).isCloseTo(reynolds, within(1e-3 * reynolds));
  }

  @Test
  void aStrongYieldStressPutsTheTransitionWhereSlatterAndWaspDo() {
    // Slatter and Wasp (2000): 26 √(τy/ρ); Wilson and Thomas (2006): 25 √(τy/ρ); from memory,
    // unverified. Wilson and Thomas speak of the intersection of laminar and turbulent flow: ours
    // must give their rounded 25, within 2 %.
    Bingham liquid = new Bingham(2, 0.004);
    Bore bore = new Bore(0.15, 0);
    ours(new SlatterWasp2000().velocityMps(liquid, 1000, bore).value())
        .isCloseTo(1.163, within(0.001));
    double v = 0.5;
    while (new WilsonThomas1985().wallStressPa(liquid, 1000, bore, v).value()
        < LaminarPipeFlow.at(liquid, 0.15, v).wallStressPa()) {
      v *= 1.001;
    }
    ours(v / Math.sqrt(2.0 / 1000)).isCloseTo(25, within(0.5));
  }

  // Prandtl, von Kármán and Nikuradse, Darcy factor of a smooth pipe: general-purpose library
  // CalebBell/fluids 1.3.1, Colebrook(Re, 0), which is that law. Dodge and Metzner with n = 1
  // writes
  // it with rounded constants (4 and 0.4 for 4 and 0.3996): 0.1 %.
  @ParameterizedTest
  @CsvSource({
    "5e3, 0.03739272757804739",
    "1e4, 0.03088295035348769",
    "3e4, 0.023482954594174783",
    "1e5, 0.01798977308427384",
  })
  void dodgeAndMetznerWithIndexOneIsTheSmoothPipeLaw(double reynolds, double factor) {
    double velocity = reynolds * 0.001 / (1000 * 0.1);
    double stress =
        new DodgeMetzner1959()
            .wallStressPa(new Newtonian(0.001), 1000, new Bore(0.1, 0), velocity)
            .value();
    ours(8 * stress / (1000 * velocity * velocity)).isCloseTo(factor, within(1e-3 * factor));
  }

  // The function for power-law liquids of the same open library of engineering rheology (read),
  // 1/√f = 4/n^0.75 log10(Re f^(1−n/2)) − 0.4/n^1.2, solved outside this project with SciPy. A
  // second public code (read) has the same three constants.
  @ParameterizedTest
  @CsvSource({
    "5000,  0.8, 0.008192237492",
    "10000, 0.6, 0.005521660050",
    "20000, 0.6, 0.004523607334",
    "30000, 0.4, 0.002975986340",
  })
  void dodgeAndMetznerIsThatOfTwoPublicCodes(double reynolds, double n, double fanning) {
    PowerLaw liquid = new PowerLaw(0.05, n);
    Bore bore = new Bore(0.1, 0);
    double velocity = 1;
    for (int i = 0; i < 60; i++) {
      double now = LaminarPipeFlow.at(liquid, 0.1, velocity).reynolds(1000);
      velocity *= Math.pow(reynolds / now, 1 / (2 - n));
    }
    double stress = new DodgeMetzner1959().wallStressPa(liquid, 1000, bore, velocity).value();
    ours(2 * stress / (1000 * velocity * velocity)).isCloseTo(fanning, within(1e-8 * fanning));
  }

  // Two public codes on drilling hydraulics (read) approximate the transition of Bingham liquids,
  // "Hanks (1963) as given in Darby and Melson (1981)": Re_c = 2100 (1 + 8.3e-8 log10(He)^13) for
  // He < 1700, 80 He^0.4 to 50 000, 25 √He above. The first two against our solution of Hanks's
  // equation in the middle of their pieces, for they jump where they join: tolerance 5 %. The last,
  // V = 25 √(τy/ρ), against 26 of Slatter and Wasp: 4 %.
  @ParameterizedTest
  @CsvSource({"1e3, 2378", "1e4, 3185", "1e6, 25000", "1e7, 79057"})
  void theTransitionOfBinghamLiquidsIsNearTheApproximationOfDarbyAndMelson(
      double hedstrom, double reynolds) {
    double viscosity = 0.02;
    double yield = hedstrom * viscosity * viscosity / (1000 * 0.15 * 0.15);
    Bingham liquid = new Bingham(yield, viscosity);
    TransitionCriterion criterion =
        hedstrom > 1.5e5 ? new SlatterWasp2000() : new RyanJohnson1959();
    double velocity = criterion.velocityMps(liquid, 1000, new Bore(0.15, 0)).value();
    ours(1000 * velocity * 0.15 / viscosity).isCloseTo(reynolds, within(0.05 * reynolds));
  }

  // Churchill (1977): general-purpose library CalebBell/fluids 1.3.1, Churchill_1977(Re, eps/D). To
  // 1e-9, the promise of the curve for n = 1.
  @ParameterizedTest
  @CsvSource({
    "500,  0,    0.12800000000000003",
    "2500, 1e-4, 0.03515134789279207",
    "1e5,  1e-4, 0.018462624566280075",
    "2e6,  2e-3, 0.023550024168450878",
  })
  void aNewtonianLiquidGetsTheNewtonianFriction(double reynolds, double roughness, double factor) {
    double velocity = reynolds * 0.001 / (1000 * 0.1);
    NonNewtonianFriction pipe =
        new NonNewtonianFriction(
            new HerschelBulkley(0, 0.001, 1), 1000, new Bore(0.1, roughness * 0.1));
    ours(8 * pipe.at(velocity).wallStressPa() / (1000 * velocity * velocity))
        .isCloseTo(factor, within(1e-9 * factor));
  }

  // Wilson and Thomas (1985) as printed in handbooks for a smooth pipe, V/u* = 2.5 ln(ρ D u*/μw) +
  // 11.6(α−1) − 2.5 ln α − Ω; from memory, unverified; solved outside this program (SciPy).
  // Tolerance 4 %: the Newtonian law is that of Churchill here and the logarithmic one there.
  @ParameterizedTest
  @CsvSource({
    "2, 0.01,  1,     0.154, 3, 1020,   22.981234786274467",
    "0, 0.192, 0.562, 0.154, 3, 1000.8, 17.025342789710635",
    "1, 0.1,   0.8,   0.154, 4, 1010,   43.08392911560278",
  })
  void wilsonAndThomasAgreesWithItsLogarithmicForm(
      double yield, double k, double n, double bore, double velocity, double rho, double stress) {
    ours(new WilsonThomas1985()
            .wallStressPa(new HerschelBulkley(yield, k, n), rho, new Bore(bore, 0), velocity)
            .value())
        .isCloseTo(stress, within(0.04 * stress));
  }

  @Test
  void darbyAndMelsonWithTheLaterConstantReproducesAPublicCode() {
    // A public Python function after Darby (2001), Chemical Engineering Fluid Mechanics, 2nd ed.
    // (read): bore 0.254 m, 2.3 m/s, 1300 kg/m3, 6 Pa, 0.02 Pa.s: Darcy factor 0.01905007708620241.
    // It takes the constant −1.47.
    double factor =
        8
            * new DarbyMelson1981(-1.47)
                .wallStressPa(new Bingham(6, 0.02), 1300, new Bore(0.254, 0), 2.3)
                .value()
            / (1300 * 2.3 * 2.3);
    ours(factor).isCloseTo(0.01905007708620241, within(1e-6));
  }

  @Test
  void darbyAndMelsonWithTheConstantOfTheArticleTendsToTheSmoothPipeLaw() {
    // CalebBell/fluids 1.3.1, Colebrook(1e5, 0) = 0.01798977 Darcy. At He = 1e6 the yield stress no
    // longer lowers the turbulent part and hardly adds a laminar one. Tolerance 2 %: a power law in
    // Re beside a logarithmic one.
    double viscosity = 0.001;
    Rheology liquid = new Bingham(1e6 * viscosity * viscosity / (1000 * 0.25), viscosity);
    double velocity = 1e5 * viscosity / (1000 * 0.5);
    double stress =
        new DarbyMelson1981().wallStressPa(liquid, 1000, new Bore(0.5, 0), velocity).value();
    ours(8 * stress / (1000 * velocity * velocity))
        .isCloseTo(0.01798977, within(0.02 * 0.01798977));
  }

  @Test
  void theCompetingLawsForAPowerLawAgreeInTheRangeOfBoth() {
    // Dodge and Metzner (1959) against Wilson and Thomas (1985), two sources of which neither was
    // made from the other, at Re 10 000 and n = 0.6 to 0.9: tolerance 12 %, what they differ by.
    for (double n : new double[] {0.6, 0.75, 0.9}) {
      PowerLaw liquid = new PowerLaw(0.02, n);
      Bore bore = new Bore(0.1, 0);
      double v = 0.1;
      while (LaminarPipeFlow.at(liquid, 0.1, v).reynolds(1000) < 1e4) {
        v *= 1.001;
      }
      double dodge = new DodgeMetzner1959().wallStressPa(liquid, 1000, bore, v).value();
      double wilson = new WilsonThomas1985().wallStressPa(liquid, 1000, bore, v).value();
      ours(wilson).as("n = %s", n).isCloseTo(dodge, within(0.12 * dodge));
    }
  }
}
