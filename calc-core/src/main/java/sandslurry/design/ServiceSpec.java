package sandslurry.design;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import si.uom.quantity.Density;
import si.uom.quantity.VolumetricFlowRate;

/**
 * What a line meets in service beside its design state; every part is optional.
 *
 * @param states the states that it is judged in
 * @param suction the suction side of the pump
 * @param operation a day of pumping, and the flush
 * @param screw a screw conveyor that feeds the pit
 * @param gravityRun a gravity pipe that runs part full
 */
public record ServiceSpec(
    Optional<StatesSpec> states,
    Optional<SuctionSpec> suction,
    Optional<OperationSpec> operation,
    Optional<ScrewSpec> screw,
    Optional<GravityRunSpec> gravityRun) {
  /** Nothing given. */
  public static final ServiceSpec NONE =
      new ServiceSpec(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * What of this does not belong to a line.
   *
   * @return the screw conveyor and the gravity pipe
   */
  ServiceSpec withoutLine() {
    return new ServiceSpec(Optional.empty(), Optional.empty(), Optional.empty(), screw, gravityRun);
  }

  /**
   * The states beside those of the flow.
   *
   * @param wornHead share of head that a worn pump has lost, of a piston pump the share of flow
   * @param coldest lowest temperature of the liquid
   * @param warmest highest temperature of the liquid
   * @param thinnest least solids of the liquid, without sand
   * @param thickest most solids of the liquid, without sand
   * @param lowSourceLevel lowest level in the pit, as the level of the route
   * @param highSourceLevel highest level in the pit
   * @param flushWater whether the pump flushes the line with water
   */
  public record StatesSpec(
      Optional<Quantity<Dimensionless>> wornHead,
      Optional<Quantity<Temperature>> coldest,
      Optional<Quantity<Temperature>> warmest,
      Optional<Quantity<Dimensionless>> thinnest,
      Optional<Quantity<Dimensionless>> thickest,
      Optional<Quantity<Length>> lowSourceLevel,
      Optional<Quantity<Length>> highSourceLevel,
      boolean flushWater) {}

  /**
   * The suction side; each of several pumps in parallel has its own.
   *
   * @param altitude altitude of the site above sea level
   * @param run the pipe from the pit to the pump
   */
  public record SuctionSpec(Quantity<Length> altitude, RouteSpec.RunSpec run) {}

  /**
   * A day of pumping, and the flush.
   *
   * @param dailyVolume volume of mixture moved in a day
   * @param batchVolume volume of the pit between the levels of start and stop
   * @param flushFlow flow of water that the supply of the flush gives into the line
   * @param flushVolume volume of water that it holds
   */
  public record OperationSpec(
      Optional<Quantity<Volume>> dailyVolume,
      Optional<Quantity<Volume>> batchVolume,
      Optional<Quantity<VolumetricFlowRate>> flushFlow,
      Optional<Quantity<Volume>> flushVolume) {}

  /**
   * A screw conveyor.
   *
   * @param diameter diameter of the screw
   * @param shaft diameter of its shaft
   * @param pitch pitch of the flights
   * @param speed speed of turning
   * @param slope rise over horizontal length
   * @param length length along the screw
   * @param load volume of material that it must carry per time
   * @param bulkDensity mass of the material over its volume
   */
  public record ScrewSpec(
      Quantity<Length> diameter,
      Quantity<Length> shaft,
      Quantity<Length> pitch,
      Quantity<Frequency> speed,
      Quantity<Dimensionless> slope,
      Quantity<Length> length,
      Quantity<VolumetricFlowRate> load,
      Quantity<Density> bulkDensity) {}

  /**
   * A gravity pipe.
   *
   * @param bore inside diameter
   * @param slope fall over length
   * @param manning Manning's roughness n
   * @param flow the flow that it must carry
   */
  public record GravityRunSpec(
      Quantity<Length> bore,
      Quantity<Dimensionless> slope,
      Quantity<Dimensionless> manning,
      Quantity<VolumetricFlowRate> flow) {}
}
