package sandslurry.transport.friction;

import sandslurry.material.liquid.Rheology;
import sandslurry.numeric.UnsolvedException;

/**
 * Steady laminar flow of a liquid of any of the four rheologies in a full round pipe, exact for the
 * rheology: the equation of Rabinowitsch and Mooney integrated for <code>τ = τy + K γ̇ⁿ</code>
 * (Govier and Aziz 1972, The Flow of Complex Mixtures in Pipes; from memory, and derived again and
 * checked by quadrature in the tests).
 *
 * <pre>
 * 8V/D = 4n/(K^(1/n) τw³) · x^((n+1)/n) · [x²/(1+3n) + 2 τy x/(1+2n) + τy²/(1+n)],  x = τw − τy
 * </pre>
 *
 * <p>V mean velocity [m/s]; D bore [m]; τw shear stress at the wall [Pa]; τy yield stress [Pa]; K
 * [Pa.sⁿ] and n of the rheology. With n = 1 it is the equation of Buckingham and Reiner for a
 * Bingham liquid, with τy = 0 the power law, with both Hagen and Poiseuille's law. For a given
 * velocity it is solved for ln x, in which it rises steadily.
 *
 * <p>Inside the radius at which the stress equals τy the liquid moves as an unsheared plug; at the
 * limit of no flow the plug fills the pipe and τw is τy.
 *
 * @param rheology the liquid
 * @param diameterM bore [m]
 * @param velocityMps mean velocity [m/s]
 * @param wallStressPa shear stress at the wall [Pa]
 */
public record LaminarPipeFlow(
    Rheology rheology, double diameterM, double velocityMps, double wallStressPa) {

  private static final int MOST_ROUNDS = 100;

  /** A step of this size is the last: Newton's rule leaves an error of the order of its square. */
  private static final double SETTLED = 1e-8;

  /** Checks that the values are positive numbers. */
  public LaminarPipeFlow {
    if (!(diameterM > 0) || !(velocityMps > 0) || !(wallStressPa > rheology.yieldStressPa())) {
      throw new IllegalArgumentException(
          "laminar flow needs a bore > 0, a velocity > 0 and a wall stress above the yield stress"
              + " but has "
              + diameterM
              + " m, "
              + velocityMps
              + " m/s, "
              + wallStressPa
              + " Pa");
    }
  }

  /**
   * The flow at a mean velocity.
   *
   * @param rheology the liquid
   * @param diameterM bore, positive [m]
   * @param velocityMps mean velocity, positive [m/s]
   * @return the flow
   */
  public static LaminarPipeFlow at(Rheology rheology, double diameterM, double velocityMps) {
    if (!(diameterM > 0) || !(velocityMps > 0)) {
      throw new IllegalArgumentException(
          "laminar flow needs a bore > 0 and a velocity > 0 but has "
              + diameterM
              + " m and "
              + velocityMps
              + " m/s");
    }
    double n = rheology.index();
    double yield = rheology.yieldStressPa();
    if (yield == 0) {
      double rate = 8 * velocityMps / diameterM * (3 * n + 1) / (4 * n);
      double flowing = rheology.consistency() * Math.pow(rate, n);
      return new LaminarPipeFlow(rheology, diameterM, velocityMps, flowing);
    }
    double above = flowingPartPa(rheology, 8 * velocityMps / diameterM);
    // Beside a great yield stress the flowing part may be too small to show in the sum.
    double stress = Math.max(yield + above, Math.nextUp(yield));
    return new LaminarPipeFlow(rheology, diameterM, velocityMps, stress);
  }

  /**
   * The mean velocity that a wall stress drives.
   *
   * @param rheology the liquid
   * @param diameterM bore, positive [m]
   * @param wallStressPa shear stress at the wall [Pa]
   * @return mean velocity, 0 up to the yield stress [m/s]
   */
  static double velocityMps(Rheology rheology, double diameterM, double wallStressPa) {
    double above = wallStressPa - rheology.yieldStressPa();
    return above > 0 ? velocityAboveYieldMps(rheology, diameterM, Math.log(above)) : 0;
  }

  /**
   * The same for the part of the wall stress above the yield stress.
   *
   * @param rheology the liquid
   * @param diameterM bore, positive [m]
   * @param logAbove ln x of the stress x above the yield stress [Pa]
   * @return mean velocity [m/s]
   */
  static double velocityAboveYieldMps(Rheology rheology, double diameterM, double logAbove) {
    double n = rheology.index();
    return Math.exp(
            logRateFactor(rheology)
                + logShape(n, rheology.yieldStressPa(), logAbove, Math.exp(logAbove)))
        * diameterM
        / 8;
  }

  /**
   * Hedström number, generalised to a flow index other than 1 by the only dimensionless group of ρ,
   * D, τy, K and n that is ρ D² τy/μp² for a Bingham liquid.
   *
   * @param rheology the liquid
   * @param densityKgM3 density [kg/m3]
   * @param diameterM bore [m]
   * @return ρ D² τy^((2−n)/n) / K^(2/n), 0 without yield stress
   */
  public static double hedstromNumber(Rheology rheology, double densityKgM3, double diameterM) {
    double n = rheology.index();
    return densityKgM3
        * diameterM
        * diameterM
        * Math.pow(rheology.yieldStressPa(), (2 - n) / n)
        / Math.pow(rheology.consistency(), 2 / n);
  }

  /**
   * Pressure lost per length of pipe.
   *
   * @return 4 τw/D [Pa/m]
   */
  public double pressureGradientPaPm() {
    return 4 * wallStressPa / diameterM;
  }

  /**
   * Reynolds number of Metzner and Reed (1955), AIChE Journal 1:434-440, by its defining property
   * that the laminar Darcy factor is 64/Re: valid for every rheology.
   *
   * @param densityKgM3 density [kg/m3]
   * @return 8 ρ V²/τw
   */
  public double reynolds(double densityKgM3) {
    return 8 * densityKgM3 * velocityMps * velocityMps / wallStressPa;
  }

  /**
   * Shear rate at the wall, where the rheology ought to have been measured.
   *
   * @return shear rate [1/s]
   */
  public double wallShearRatePs() {
    return rheology.shearRatePs(wallStressPa);
  }

  /**
   * The local flow index of Metzner and Reed.
   *
   * @return n' = d ln τw / d ln(8V/D), equal to n without yield stress
   */
  double localIndex() {
    double n = rheology.index();
    double yield = rheology.yieldStressPa();
    double x = wallStressPa - yield;
    return x / (wallStressPa * logSlope(n, yield, x));
  }

  /**
   * Radius of the unsheared plug.
   *
   * @return plug over pipe, τy/τw
   */
  public double plugRadiusRatio() {
    return rheology.yieldStressPa() / wallStressPa;
  }

  /**
   * Velocity at a distance from the axis.
   *
   * @param radiusM distance from the axis, 0 to half the bore [m]
   * @return velocity [m/s]
   */
  public double velocityMps(double radiusM) {
    double n = rheology.index();
    double yield = rheology.yieldStressPa();
    double stress = wallStressPa * radiusM / (diameterM / 2);
    return diameterM
        / (2 * wallStressPa)
        * n
        / (n + 1)
        * (risePaPs(wallStressPa - yield) - risePaPs(Math.max(stress - yield, 0)));
  }

  /** x (x/K)^(1/n): stress times shear rate, as a ratio first, so that no power overflows. */
  private double risePaPs(double abovePa) {
    return abovePa * Math.pow(abovePa / rheology.consistency(), 1 / rheology.index());
  }

  /**
   * Share of the flow that travels in the unsheared plug.
   *
   * @return plug velocity times plug area over the flow, 0 without yield stress
   */
  public double plugFlowShare() {
    double ratio = plugRadiusRatio();
    return Math.min(velocityMps(0.0) / velocityMps * ratio * ratio, 1);
  }

  /**
   * The part of the wall stress above the yield stress, by Newton's rule in ln x. The slope lies
   * between 1/n and (n + 1)/n everywhere, so the rule cannot run away. It starts from the larger of
   * what a power law without yield stress would have and of what a plug that nearly fills the pipe
   * would leave: both are less than the root, and one of them is near.
   *
   * @param nominalRatePs 8V/D [1/s]
   */
  private static double flowingPartPa(Rheology rheology, double nominalRatePs) {
    double n = rheology.index();
    double yield = rheology.yieldStressPa();
    double target = Math.log(nominalRatePs) - logRateFactor(rheology);
    double logAbove =
        n * Math.max(target + Math.log(1 + 3 * n), (target + Math.log((1 + n) * yield)) / (n + 1));
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double above = Math.exp(logAbove);
      double step = (target - logShape(n, yield, logAbove, above)) / logSlope(n, yield, above);
      logAbove += step;
      if (Math.abs(step) <= SETTLED) {
        return Math.exp(logAbove);
      }
    }
    throw new UnsolvedException("wall stress of laminar flow: no end of its rounds");
  }

  /** d ln(8V/D) / d ln x. */
  private static double logSlope(double n, double yield, double x) {
    double bracketSlope = 2 * x / (1 + 3 * n) + 2 * yield / (1 + 2 * n);
    return (n + 1) / n + x * (bracketSlope / bracket(n, yield, x) - 3 / (yield + x));
  }

  private static double bracket(double n, double yield, double x) {
    return x * x / (1 + 3 * n) + 2 * yield * x / (1 + 2 * n) + yield * yield / (1 + n);
  }

  /** ln(4n/K^(1/n)): in logarithms, so that no power overflows. */
  private static double logRateFactor(Rheology rheology) {
    double n = rheology.index();
    return Math.log(4 * n) - Math.log(rheology.consistency()) / n;
  }

  /** The logarithm of the rest of 8V/D. */
  private static double logShape(double n, double yield, double logAbove, double above) {
    double stress = yield + above;
    return (n + 1) / n * logAbove + Math.log(bracket(n, yield, above) / stress / stress / stress);
  }
}
