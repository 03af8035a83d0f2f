package sandslurry.transport.headloss;

import java.util.List;
import java.util.stream.DoubleStream;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate.Checks;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.numeric.Roots;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.Kind;

/**
 * Friction of a graded sand slurry in two parts, vehicle and bed, after Wasp, Kenny and Gandhi.
 *
 * <pre>
 * of each size class   log10(C/C_A) = −1.8 w/(β κ u*),   β = 1,   κ = 0.4
 * vehicle              iv = fv V²/(2 g D) · ρv/ρ
 * bed                  ib = iw Σ 82 ψ^−1.5 C_bed,   ψ = V² √C_D / [g D (s − 1)]
 * total                im = iv + ib,   u* = √(g D im/4)
 * </pre>
 *
 * <p>C/C_A is the concentration 8 % of the bore below the crown over that on the axis; the method
 * counts that share of the class with the vehicle, which flows like a liquid, and the rest with the
 * bed. w settling velocity of a grain of the class [m/s]; β ratio of the exchange of sand and of
 * momentum; κ constant of von Kármán; u* shear velocity [m/s]; ρv density of the vehicle, ρ of the
 * carrier [kg/m³]; fv Darcy factor of the vehicle, whose viscosity is that of the carrier raised by
 * the sand in it after Thomas (1965), Journal of Colloid Science 20:267, μr = 1 + 2.5 C + 10.05 C²
 * + 0.00273 e^(16.6 C); iw gradient of the clear carrier; C_bed volume fraction of the class that
 * counts as bed; other symbols as in {@link DurandCondolios1952}. All gradients are in metres of
 * carrier per metre of pipe.
 *
 * <p>The shear velocity depends on the total and the split on the shear velocity, so u* is solved
 * for. The last term of Thomas is taken as 0.00273 (e^(16.6 C) − 1): as printed it leaves 1.00273
 * without solids. The sand is divided into ten classes of equal mass, log-normal through d50 and
 * d85.
 *
 * <p>Range: no limits were found stated beside those of the bed term (bores of 40 to 580 mm). An
 * abstract of tests with three sands (Ni, Zhao, Xu and Vlasblom) calls the method reasonable for
 * fine sand and unsatisfactory for coarse sand. Below the deposition velocity the value is that of
 * a pipe over a bed and not for design. Without sand it is the clear liquid exactly.
 */
final class WaspTwoPart1977 extends HeadLossModel {
  private static final double PROFILE = 1.8;
  private static final double KARMAN = 0.4;
  private static final double BED_CONSTANT = 82;

  /** Standard normal deviates of 5, 15, ... 95 %: the middles of ten classes of equal mass. */
  private static final double[] DEVIATES = {
    -1.644854, -1.036433, -0.674490, -0.385320, -0.125661,
    0.125661, 0.385320, 0.674490, 1.036433, 1.644854
  };

  private static final double DEVIATE_OF_85_PERCENT = 1.036433;

  private static final Citation SOURCE =
      new Citation(
              "Wasp, Kenny and Gandhi",
              1977,
              "Solid-Liquid Flow: Slurry Pipeline Transportation, Trans Tech Publications")
          .fromMemory("coefficients");
  private static final Equation FOUND =
      Equation.search(
          "i_m",
          "gradient with sand, metres of carrier per metre",
          "gradient whose shear velocity leaves in the bed, of ten equal classes of the sand, what"
              + " adds up to it",
          Kind.NUMBER,
          SOURCE.toString(),
          "C, d50 m, d85 m");
  private static final Equation SHEAR =
      SOURCE.equation("u*", "shear velocity with sand", "sqrt(g D i_m / 4)", Kind.FALL, "D m, i_m");

  WaspTwoPart1977() {
    super(
        "wasp-kenny-gandhi-1977",
        "Wasp, Kenny and Gandhi, vehicle and bed",
        "i_m = i_v + i_f sum(82 psi^-1.5 C_bed), log10(C/C_A) = -1.8 w / (0.4 u*),"
            + " u* = sqrt(g D i_m / 4)",
        SOURCE,
        List.of(ClearLiquid.TURBULENT, DurandCondolios1952.BORE));
  }

  @Override
  double gradient(
      Slurry slurry, Bore bore, double velocityMps, ClearLiquid clear, Checks checks, Trace trace) {
    Flow flow = Flow.of(slurry, bore, velocityMps, clear.gradient());
    // With all of the sand in the bed and all of it in the vehicle as well, friction is greater
    // than it can be; a tenth of the shear velocity of the clear liquid is less than it can be.
    double most =
        flow.vehicleGradient(0) + flow.vehicleGradient(slurry.volumeFraction()) + flow.allBed();
    double shear =
        Roots.betweenDecades(
            "shear velocity of vehicle and bed",
            u -> flow.shearVelocity(flow.gradient(u)) / u - 1,
            flow.shearVelocity(clear.gradient()) / 10,
            10 * flow.shearVelocity(most));
    checks.check(DurandCondolios1952.BORE, bore.diameterM());
    return steps(slurry, shear, flow.gradient(shear), bore, trace);
  }

  private static double steps(
      Slurry slurry, double shearMps, double gradient, Bore bore, Trace trace) {
    trace.step(FOUND, gradient, slurry.volumeFraction(), slurry.d50M(), slurry.d85M());
    trace.step(SHEAR, shearMps, bore.diameterM(), gradient);
    return gradient;
  }

  /** One case, with the settling velocity and the bed term of each class. */
  private record Flow(Slurry slurry, Bore bore, double velocityMps, double[] falls, double[] beds) {

    private static Flow of(Slurry slurry, Bore bore, double velocityMps, double clearGradient) {
      Grain[] grains = grains(slurry);
      double[] falls = new double[grains.length];
      double[] beds = new double[grains.length];
      double share = slurry.volumeFraction() / grains.length;
      for (int i = 0; i < grains.length; i++) {
        falls[i] = SettlingVelocities.DEFAULT.velocityMps(grains[i], slurry.liquid()).value();
        double psi = DurandCondolios1952.psi(grains[i], slurry, bore, velocityMps, Trace.NONE);
        beds[i] = clearGradient * share * BED_CONSTANT * Math.pow(psi, -1.5);
      }
      return new Flow(slurry, bore, velocityMps, falls, beds);
    }

    private static Grain[] grains(Slurry slurry) {
      double spread = Math.log(slurry.d85M() / slurry.d50M()) / DEVIATE_OF_85_PERCENT;
      return DoubleStream.of(DEVIATES)
          .map(deviate -> slurry.d50M() * Math.exp(spread * deviate))
          .mapToObj(d -> new Grain(d, slurry.sandDensityKgM3(), slurry.shape()))
          .toArray(Grain[]::new);
    }

    private double gradient(double shearVelocityMps) {
      double vehicleFraction = 0;
      double bed = 0;
      for (int i = 0; i < falls.length; i++) {
        double carried = Math.pow(10, -PROFILE * falls[i] / (KARMAN * shearVelocityMps));
        vehicleFraction += carried * slurry.volumeFraction() / falls.length;
        bed += (1 - carried) * beds[i];
      }
      return vehicleGradient(vehicleFraction) + bed;
    }

    private double allBed() {
      return DoubleStream.of(beds).sum();
    }

    private double vehicleGradient(double fraction) {
      Liquid carrier = slurry.liquid();
      double density = slurry.withVolumeFraction(fraction).mixtureDensityKgM3();
      double relativeViscosity =
          1 + 2.5 * fraction + 10.05 * fraction * fraction + 0.00273 * Math.expm1(16.6 * fraction);
      Liquid vehicle = new Liquid(density, carrier.viscosityPaS() * relativeViscosity);
      return ClearLiquid.of(vehicle, bore, velocityMps).gradient()
          * density
          / carrier.densityKgM3();
    }

    private double shearVelocity(double gradient) {
      return Math.sqrt(Physics.GRAVITY * bore.diameterM() * gradient / 4);
    }
  }
}
