package sandslurry.library;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import sandslurry.assessment.lane.LaneEvaluation;
import sandslurry.assessment.materials.Materials;
import sandslurry.design.Design;
import sandslurry.separation.lane.LaneResult;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** A settling lane. Immutable; checked where it is used. */
public final class Lane {
  private final DesignDraft parts;

  private Lane(DesignDraft parts) {
    this.parts = parts;
  }

  /**
   * A lane by its floor.
   *
   * @param length its length
   * @param width its width
   * @param slope fall of the floor over its length
   * @return the lane
   */
  public static Lane of(
      Quantity<Length> length, Quantity<Length> width, Quantity<Dimensionless> slope) {
    return new Lane(DesignDraft.titled("lane"))
        .with("/lane/length", Measure.LENGTH, length)
        .with("/lane/width", Measure.LENGTH, width)
        .with("/lane/slope", Measure.SLOPE, slope);
  }

  /**
   * Gives the depth that an outlet weir holds.
   *
   * @param depth depth of water above the clean floor
   * @return the lane
   */
  public Lane waterDepth(Quantity<Length> depth) {
    return with("/lane/depth", Measure.LENGTH, depth);
  }

  /**
   * Gives the depth of sand at which the lane is cleaned.
   *
   * @param depth depth of settled sand
   * @return the lane
   */
  public Lane sandStorageDepth(Quantity<Length> depth) {
    return with("/lane/sandStorageDepth", Measure.LENGTH, depth);
  }

  private <Q extends Quantity<Q>> Lane with(String field, Measure<Q> measure, Quantity<Q> q) {
    return new Lane(parts.with(field, measure, q));
  }

  DesignDraft in(DesignDraft design) {
    return design.part("/lane", parts);
  }

  /**
   * What the lane does with a slurry.
   *
   * @param flowRate flow rate of slurry
   * @param slurry the slurry
   * @return detention time, overflow rate and capture
   * @throws DesignProblems if lane or slurry are incomplete or outside their limits
   */
  public Settled settle(Quantity<VolumetricFlowRate> flowRate, Mixture slurry) {
    // A design gives its mixture to a line, and the lane takes it from there.
    DesignDraft fed =
        Mixture.ANY_LINE
            .carrying(slurry)
            .in(DesignDraft.titled("lane"))
            .with("/lines/0/flow/design", Measure.FLOW, flowRate);
    Design design = with("/lane/flow", Measure.FLOW, flowRate).in(fed).design();
    LaneResult result = new LaneEvaluation(Materials.of(design)).result();
    return new Settled(
        Measure.TIME.of(result.residenceTimeS()),
        Measure.SPEED.of(result.basin().overflowVelocityMps()),
        Measure.FRACTION.of(result.cycle().likely().points().get(0).recovery()),
        Measure.FRACTION.of(result.cycle().likely().meanRecovery()));
  }

  /**
   * What a lane does.
   *
   * @param residenceTime volume of water in the clean lane over the flow rate
   * @param overflowRate flow rate over the area of the lane
   * @param cleanCapture share of the sand that the clean lane captures, expected
   * @param averageCapture the same on average over one cleaning cycle
   */
  public record Settled(
      Quantity<Time> residenceTime,
      Quantity<Speed> overflowRate,
      Quantity<Dimensionless> cleanCapture,
      Quantity<Dimensionless> averageCapture) {}
}
