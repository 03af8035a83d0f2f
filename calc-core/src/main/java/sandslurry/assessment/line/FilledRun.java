package sandslurry.assessment.line;

import java.util.List;
import java.util.function.DoubleSupplier;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Physics;
import sandslurry.material.Slurry;
import sandslurry.material.Thomas1965;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.transport.bed.LaminarTransport;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.deposition.SandLoad;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.transport.friction.NonNewtonianFriction;
import sandslurry.transport.headloss.HeadLossModel;
import sandslurry.transport.headloss.HeadLosses;

/** One run full of one mixture: what does not depend on the flow rate is worked out once. */
final class FilledRun {
  private static final Thomas1965 THICKENING = new Thomas1965();

  private final PipeRun pipe;
  private final LineMixture mixture;
  private final Line line;
  private Slurry slurry;
  private HeadLossModel.Curve headLoss;
  private Slurry judgedSlurry;
  private DepositionJudgement judged;
  private Slurry comparedSlurry;
  private List<DepositionJudgement.Entry> compared;
  private double[] coreFallsMps;

  /**
   * What a run shares with the line that it belongs to.
   *
   * @param materials liquid and sand
   * @param rule how a velocity is judged
   * @param liquids liquids in pipes that were worked out before
   * @param toleratedShare share of the sand that may reach the floor
   * @param sand the classes of its sand
   */
  record Line(
      Materials materials,
      DepositionRule rule,
      PipeLiquids liquids,
      double toleratedShare,
      List<LaminarTransport.Part> sand) {}

  FilledRun(PipeRun pipe, LineMixture mixture, Line line) {
    this.pipe = pipe;
    this.mixture = mixture;
    this.line = line;
  }

  /**
   * The run at a flow rate.
   *
   * @param lineFloorShare share of the sand that would reach the floor of the line, asked for only
   *     where a yield stress or laminar flow makes it matter
   */
  RunPoint at(double flowM3ps, DoubleSupplier lineFloorShare) {
    return new RunPoint(this, flowM3ps, lineFloorShare);
  }

  PipeRun pipe() {
    return pipe;
  }

  LineMixture mixture() {
    return mixture;
  }

  Materials materials() {
    return line.materials();
  }

  double toleratedShare() {
    return line.toleratedShare();
  }

  Grain coarsestHeld() {
    return line.materials().coarsestHeld(line.toleratedShare());
  }

  CarrierFlow carrierFlow(double velocityMps) {
    return CarrierFlow.of(
        mixture.rheology(), mixture.liquidDensityKgM3(), pipe.mean(), velocityMps, line.liquids());
  }

  /** How the liquid flows in the largest bore. */
  Regime regime(double velocityMps) {
    return CarrierFlow.regime(
        mixture.rheology(),
        mixture.liquidDensityKgM3(),
        pipe.largest(),
        velocityMps,
        line.liquids());
  }

  /** The liquid in a bore of the run. */
  NonNewtonianFriction liquid(Bore bore) {
    return line.liquids().of(mixture.rheology(), mixture.liquidDensityKgM3(), bore);
  }

  /** The classes of the sand. */
  List<LaminarTransport.Part> sand() {
    return line.sand();
  }

  /** Fall of each class of the sand in the core of a plug of the mixture. */
  double[] coreFallsMps() {
    if (coreFallsMps == null) {
      coreFallsMps =
          LaminarTransport.coreFallsMps(
              line.sand(), mixture.rheology(), mixture.liquidDensityKgM3());
    }
    return coreFallsMps;
  }

  /** What the correlations see: sand in a liquid that has the viscosity at the wall everywhere. */
  Slurry slurry(double wallViscosityPaS) {
    if (slurry == null || slurry.liquid().viscosityPaS() != wallViscosityPaS) {
      slurry =
          line.materials()
              .slurry(
                  new Liquid(mixture.liquidDensityKgM3(), wallViscosityPaS),
                  mixture.coarseFraction());
      headLoss = null;
    }
    return slurry;
  }

  /** Gradient of a slurry of this run by the default model, metres of carrier per metre. */
  double movingGradient(Slurry carried, ClearLiquid clear, double velocityMps) {
    if (carried != slurry) {
      return HeadLosses.DEFAULT.curve(carried, pipe.mean()).gradient(clear, velocityMps);
    }
    if (headLoss == null) {
      headLoss = HeadLosses.DEFAULT.curve(carried, pipe.mean());
    }
    return headLoss.gradient(clear, velocityMps);
  }

  /** What sand the deposition is judged for. */
  SandLoad load(Slurry carried) {
    return line.materials().load(carried, mixture.sandFraction());
  }

  /** The judgement on deposition; while the slurry stays the same only the velocity differs. */
  DepositionJudgement judge(Slurry carried, double velocityMps) {
    if (carried != judgedSlurry) {
      judged = line.rule().judge(load(carried), pipe.largest(), velocityMps, pipe.angleRad());
      judgedSlurry = carried;
    }
    return judged.at(velocityMps);
  }

  /** Every correlation of the catalogue, for comparison; the same while the slurry is. */
  List<DepositionJudgement.Entry> compare(Slurry carried) {
    if (carried != comparedSlurry) {
      compared = line.rule().compare(load(carried), pipe.largest());
      comparedSlurry = carried;
    }
    return compared;
  }

  /**
   * Gradient where turbulence does not carry the sand: the liquid thickened by its sand as by fine
   * grains, in metres of carrier per metre. A bed, if there is one, adds to that.
   */
  double thickenedGradient(Slurry carried, double velocityMps) {
    double thickening = THICKENING.relativeViscosity(carried.volumeFraction()).value();
    return line.liquids()
            .of(mixture.rheology().thickened(thickening), carried.mixtureDensityKgM3(), pipe.mean())
            .at(velocityMps)
            .pressureGradientPaPm()
        / (mixture.liquidDensityKgM3() * Physics.GRAVITY);
  }
}
