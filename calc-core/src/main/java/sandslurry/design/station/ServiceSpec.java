package sandslurry.design.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.material.CarrierSpec;
import si.uom.quantity.Density;
import si.uom.quantity.VolumetricFlowRate;

/**
 * What a line meets in service beside its design state; every part is optional.
 *
 * @param states the states that it is judged in
 * @param suction the suction side of the pump
 * @param operation a day of pumping, and the flush
 * @param observed a pressure and a flow rate read on site
 */
public record ServiceSpec(
    Optional<StatesSpec> states,
    Optional<SuctionSpec> suction,
    Optional<OperationSpec> operation,
    Optional<ObservedSpec> observed) {
  /** Nothing given. */
  public static final ServiceSpec NONE =
      new ServiceSpec(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

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
   * @param thinnestSand least sand in the mixture, by volume
   * @param thickestSand most sand in the mixture, by volume
   * @param thinnestCarrier the liquid at its thinnest, by numbers of its own
   * @param thickestCarrier the liquid at its thickest
   * @param coldestCarrier the liquid at its coldest
   * @param warmestCarrier the liquid at its warmest
   */
  // More than ten components: each state is typed, or left out, by itself.
  public record StatesSpec(
      Optional<Quantity<Dimensionless>> wornHead,
      Optional<Quantity<Temperature>> coldest,
      Optional<Quantity<Temperature>> warmest,
      Optional<Quantity<Dimensionless>> thinnest,
      Optional<Quantity<Dimensionless>> thickest,
      Optional<Quantity<Length>> lowSourceLevel,
      Optional<Quantity<Length>> highSourceLevel,
      boolean flushWater,
      Optional<Quantity<Dimensionless>> thinnestSand,
      Optional<Quantity<Dimensionless>> thickestSand,
      Optional<CarrierSpec> thinnestCarrier,
      Optional<CarrierSpec> thickestCarrier,
      Optional<CarrierSpec> coldestCarrier,
      Optional<CarrierSpec> warmestCarrier) {
    /** No state asked for. */
    public static final StatesSpec NONE =
        new StatesSpec(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
  }

  /**
   * The suction side; each of several pumps in parallel has its own.
   *
   * @param altitude altitude of the site above sea level
   * @param run the pipe from the pit to the pump
   */
  public record SuctionSpec(Quantity<Length> altitude, RouteSpec.RunSpec run) {}

  /**
   * A day of pumping, how it stops, and the flush.
   *
   * @param dailyVolume volume of mixture moved in a day
   * @param batchVolume volume of the pit between the levels of start and stop
   * @param mostStartsPerHour most starts in an hour that motor and starter bear, when known
   * @param stopTime time in which the flow is brought to rest evenly, when known
   * @param flush what supplies the flush
   * @param flushVolume volume of water that it holds
   * @param thixotropy yield stress of the liquid after a rest over that while it flows, when known
   */
  public record OperationSpec(
      Optional<Quantity<Volume>> dailyVolume,
      Optional<Quantity<Volume>> batchVolume,
      OptionalInt mostStartsPerHour,
      Optional<Quantity<Time>> stopTime,
      Optional<FlushSupply> flush,
      Optional<Quantity<Volume>> flushVolume,
      Optional<Quantity<Dimensionless>> thixotropy) {
    /** Nothing given. */
    public static final OperationSpec NONE =
        new OperationSpec(
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
  }

  /** What drives water through the line to flush it. */
  public sealed interface FlushSupply {}

  /**
   * A flow that is taken as given against the line.
   *
   * @param flow the flow
   */
  public record GivenFlush(Quantity<VolumetricFlowRate> flow) implements FlushSupply {}

  /** The pump of the line, on water. */
  record PumpFlush() implements FlushSupply {}

  /**
   * A tank, or a pump of its own with its curve, or both.
   *
   * @param level level of the water above the start of the line
   * @param curve head of the pump against flow, ascending by flow; empty for a tank alone
   */
  public record SourceFlush(Quantity<Length> level, List<FlushPoint> curve) implements FlushSupply {
    /** Copies the list. */
    public SourceFlush {
      curve = List.copyOf(curve);
    }
  }

  /**
   * A point of the curve of a flush pump.
   *
   * @param flow its flow
   * @param head its head, in metres of water
   */
  public record FlushPoint(Quantity<VolumetricFlowRate> flow, Quantity<Length> head) {}

  /**
   * A screw conveyor.
   *
   * @param diameter diameter of the screw
   * @param shaft diameter of its shaft
   * @param pitch pitch of the flights
   * @param speed speed of turning
   * @param slope rise over horizontal length
   * @param length length along the screw
   * @param load volume of material that it must carry per time; absent when it is that of the pens
   * @param bulkDensity mass of the material over its volume; absent when it is that of the pens
   * @param scrapeTime time in which the pens are scraped to it once, for the load of the pens
   */
  public record ScrewSpec(
      Quantity<Length> diameter,
      Quantity<Length> shaft,
      Quantity<Length> pitch,
      Quantity<Frequency> speed,
      Quantity<Dimensionless> slope,
      Quantity<Length> length,
      Optional<Quantity<VolumetricFlowRate>> load,
      Optional<Quantity<Density>> bulkDensity,
      Optional<Quantity<Time>> scrapeTime) {}

  /**
   * A gravity pipe.
   *
   * @param gravity pipe or channel
   * @param flow the flow that it must carry
   * @param leastFlow the least flow that still brings sand, when given
   * @param sandFraction highest volume fraction of sand in it, when given
   */
  public record GravityRunSpec(
      GravitySpec gravity,
      Quantity<VolumetricFlowRate> flow,
      Optional<Quantity<VolumetricFlowRate>> leastFlow,
      Optional<Quantity<Dimensionless>> sandFraction) {}

  /**
   * A pressure and a flow rate read on site at the same time.
   *
   * @param flow flow rate of mixture
   * @param flowUncertainty its uncertainty as a share of it, when given
   * @param pressure gauge pressure at the start of the line, or the rise of the pump
   * @param isRise whether the pressure is the rise from before the pump to behind it
   * @param pressureUncertainty uncertainty of the pressure, when given
   * @param runningSinceCleaning time that the line has run since it was clean, when given
   */
  public record ObservedSpec(
      Quantity<VolumetricFlowRate> flow,
      Optional<Quantity<Dimensionless>> flowUncertainty,
      Quantity<Pressure> pressure,
      boolean isRise,
      Optional<Quantity<Pressure>> pressureUncertainty,
      Optional<Quantity<Time>> runningSinceCleaning) {}
}
