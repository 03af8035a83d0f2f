package sandslurry.transport.bed;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.settling.HinderedSettling;
import sandslurry.settling.SettlingVelocityModel;
import sandslurry.settling.ShearSettling;
import sandslurry.transport.friction.LaminarPipeFlow;

/**
 * What becomes of sand in laminar flow, where no turbulence lifts it: how much of it reaches the
 * floor of a line before the outlet, and what pressure gradient drags the bed along.
 *
 * <p><b>Share that reaches the floor.</b> Grains enter spread evenly and fall at a constant speed w
 * while the liquid carries them. Over a vertical strip of the pipe the flow that loses its grains
 * is w L per width whatever the velocity profile is, but not more than the flow of the strip.
 * Summed over the strips of a round pipe, with κ = w L/(V D):
 *
 * <pre>
 * plug flow:        (2/π) [κ √(1 − κ²) + arcsin κ],                                     all at κ = 1
 * parabolic flow:   (2/π) [2k √(1 − z²) − z √(1 − z²) + arcsin z],  z = k^(1/3),  k = 3κ/4
 * </pre>
 *
 * <p>L horizontal length [m]; V mean velocity [m/s]; D bore [m]. The second is the loss of dust in
 * laminar flow through a tube of Fuchs (1964) and Pich (1972), Journal of Aerosol Science 3:351-361
 * (from memory, unverified; both are derived here and checked by quadrature). A liquid that thins
 * with shear or has a plug lies between them. Plug flow loses more and is the one used.
 *
 * <p>It is an ideal estimate: no mixing at bends within a run, the same settling speed everywhere,
 * no bed that narrows the pipe, no grain lifted again. Each run starts mixed. In a steep or
 * vertical run nothing falls to a floor: give it no horizontal length.
 *
 * <p><b>A sliding bed.</b> Tests of coarse sand in laminar flow moved a bed on only above a
 * pressure gradient of 1 to 2 kPa/m, more for grains above 1 mm (rule of thumb after A. D. Thomas,
 * Cooke 2002 and Gillies and others 1999 and 2007; from memory, unverified, no open text of it was
 * found). The balance of forces on a bed after Wilson (1970),
 *
 * <pre>dp/dx (A + S D/4) = μs g (ρs − ρ) Cb (D²/2)(sin β − β cos β)</pre>
 *
 * <p>with A its cross-section, S the width of its surface, on which the mean wall stress D/4·dp/dx
 * is taken to act, β half the angle that the bed subtends, μs sliding friction, Cb volume fraction
 * of sand in the bed, gives the same order: 0.5 to 2 kPa/m for quartz beds whose depth is 5 to 30 %
 * of a bore of 154 mm.
 */
public final class LaminarTransport {
  /** Least pressure gradient of the rule of thumb at which a bed was seen to slide [Pa/m]. */
  public static final double SLIDING_GRADIENT_LOW_PAPM = 1000;

  /** Pressure gradient of the rule of thumb from which a bed of sand up to 1 mm slides [Pa/m]. */
  public static final double SLIDING_GRADIENT_HIGH_PAPM = 2000;

  /**
   * Liquid that thins with shear lets sand fall fastest by the first, other liquid by the second.
   */
  private static final List<ShearSettling.Assumption> FAST =
      List.of(ShearSettling.Assumption.FASTEST, ShearSettling.Assumption.DESIGN);

  private LaminarTransport() {}

  /**
   * A stretch of a line with one bore.
   *
   * @param bore the pipe
   * @param horizontalLengthM horizontal projection of its length, 0 for a riser [m]
   */
  public record Run(Bore bore, double horizontalLengthM) {
    /** Checks that the length is not negative. */
    public Run {
      if (!(horizontalLengthM >= 0 && Double.isFinite(horizontalLengthM))) {
        throw new IllegalArgumentException(
            "the length must be >= 0 but was " + horizontalLengthM + " m");
      }
    }
  }

  /**
   * What a run does to the sand of one size that enters it.
   *
   * @param velocityMps mean velocity [m/s]
   * @param shearRatePs shear rate at the wall in laminar flow, the greatest of the section [1/s]
   * @param settlingMps fastest settling velocity under shear, hindered [m/s]
   * @param residenceTimeS length over velocity [s]
   * @param share share of the sand entering the run that reaches its floor
   * @param shareOfInflow share of the sand entering the line that has reached the floor up to the
   *     end of this run
   */
  public record RunDeposit(
      double velocityMps,
      double shearRatePs,
      double settlingMps,
      double residenceTimeS,
      double share,
      double shareOfInflow) {}

  /**
   * Share of the sand that reaches the floor in plug flow: the greater, used value.
   *
   * @param settlingMps settling velocity, not negative [m/s]
   * @param horizontalLengthM length [m]
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @return share, 0 to 1
   */
  public static double floorShare(
      double settlingMps, double horizontalLengthM, Bore bore, double velocityMps) {
    double kappa = fallOverBore(settlingMps, horizontalLengthM, bore, velocityMps);
    return kappa >= 1 ? 1 : 2 / Math.PI * (kappa * Math.sqrt(1 - kappa * kappa) + Math.asin(kappa));
  }

  /**
   * Share of the sand that reaches the floor in parabolic flow: the lesser value.
   *
   * @param settlingMps settling velocity, not negative [m/s]
   * @param horizontalLengthM length [m]
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @return share, 0 to 1
   */
  public static double leastFloorShare(
      double settlingMps, double horizontalLengthM, Bore bore, double velocityMps) {
    double k = 0.75 * fallOverBore(settlingMps, horizontalLengthM, bore, velocityMps);
    if (k >= 1) {
      return 1;
    }
    double z = Math.cbrt(k);
    double root = Math.sqrt(1 - z * z);
    return 2 / Math.PI * (2 * k * root - z * root + Math.asin(z));
  }

  /**
   * Sand of one size along a line in laminar flow, on the side of more sand on the floor: all of it
   * falls as fast as at the wall, where the liquid is sheared most.
   *
   * @param grain the grain
   * @param volumeFraction volume of all sand over volume of mixture
   * @param rheology the liquid
   * @param densityKgM3 its density [kg/m3]
   * @param flowM3ps flow of mixture, positive [m3/s]
   * @param runs the runs from pump to outlet
   * @param model a settling law for Newtonian liquids
   * @param crowd a law of hindered settling
   * @return what each run does, in order
   */
  public static List<RunDeposit> alongLine(
      Grain grain,
      double volumeFraction,
      Rheology rheology,
      double densityKgM3,
      double flowM3ps,
      List<Run> runs,
      SettlingVelocityModel model,
      HinderedSettling crowd) {
    if (!(flowM3ps > 0 && Double.isFinite(flowM3ps))) {
      throw new IllegalArgumentException("the flow must be > 0 but was " + flowM3ps + " m3/s");
    }
    List<RunDeposit> deposits = new ArrayList<>();
    double afloat = 1;
    for (Run run : runs) {
      double velocity = run.bore().velocityMps(flowM3ps);
      double shearRate =
          LaminarPipeFlow.at(rheology, run.bore().diameterM(), velocity).wallShearRatePs();
      double settling = 0;
      for (ShearSettling.Assumption assumption : FAST) {
        settling =
            Math.max(
                settling,
                ShearSettling.shearedHindered(
                        grain,
                        rheology,
                        densityKgM3,
                        shearRate,
                        volumeFraction,
                        assumption,
                        model,
                        crowd)
                    .value());
      }
      double length = run.horizontalLengthM();
      double share = floorShare(settling, length, run.bore(), velocity);
      afloat *= 1 - share;
      deposits.add(
          new RunDeposit(velocity, shearRate, settling, length / velocity, share, 1 - afloat));
    }
    return List.copyOf(deposits);
  }

  /**
   * Pressure gradient that slides a bed, by the balance of forces.
   *
   * @param bore the pipe
   * @param depthShare depth of the bed over bore, above 0 to 1 [-]
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @param liquidDensityKgM3 density of the liquid [kg/m3]
   * @param slidingFriction μs; 0.4 for sand on steel or plastic (common practice, no source)
   * @param bedConcentration volume fraction of sand in the bed, about 0.6
   * @return pressure gradient; for a full pipe 2 μs g (ρs − ρ) Cb [Pa/m]
   */
  public static double slidingGradientPaPm(
      Bore bore,
      double depthShare,
      double sandDensityKgM3,
      double liquidDensityKgM3,
      double slidingFriction,
      double bedConcentration) {
    if (!(depthShare > 0 && depthShare <= 1)
        || !(sandDensityKgM3 > liquidDensityKgM3 && liquidDensityKgM3 > 0)
        || !(slidingFriction > 0)
        || !(bedConcentration > 0 && bedConcentration < 1)) {
      throw new IllegalArgumentException(
          "a sliding bed needs a depth of 0 to 1 bore, sand denser than the liquid, friction > 0"
              + " and a concentration of 0 to 1 but has "
              + List.of(
                  depthShare,
                  sandDensityKgM3,
                  liquidDensityKgM3,
                  slidingFriction,
                  bedConcentration));
    }
    double diameter = bore.diameterM();
    double angle = Math.acos(1 - 2 * depthShare);
    double area = diameter * diameter / 4 * (angle - Math.sin(angle) * Math.cos(angle));
    double surface = diameter * Math.sin(angle);
    double normal =
        Physics.GRAVITY
            * (sandDensityKgM3 - liquidDensityKgM3)
            * bedConcentration
            * diameter
            * diameter
            / 2
            * (Math.sin(angle) - angle * Math.cos(angle));
    return slidingFriction * normal / (area + surface * diameter / 4);
  }

  private static double fallOverBore(
      double settlingMps, double horizontalLengthM, Bore bore, double velocityMps) {
    if (!(settlingMps >= 0) || !(horizontalLengthM >= 0) || !(velocityMps > 0)) {
      throw new IllegalArgumentException(
          "deposition needs a settling velocity >= 0, a length >= 0 and a velocity > 0 but has "
              + settlingMps
              + " m/s, "
              + horizontalLengthM
              + " m, "
              + velocityMps
              + " m/s");
    }
    return settlingMps * horizontalLengthM / (velocityMps * bore.diameterM());
  }
}
