package sandslurry.design.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.material.CarrierSpec;

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
   * @param temperatureK coldest and warmest liquid
   * @param solids thickest and thinnest liquid, by its solids without sand
   * @param sourceLevelM lowest and highest level in the pit, as the level of the route
   * @param flushWater whether the pump flushes the line with water
   * @param sand most and least sand in the mixture, by volume
   * @param thickness the liquid at its thickest and thinnest, by numbers of its own
   * @param cold the liquid at its coldest and warmest, by numbers of its own
   */
  public record StatesSpec(
      Optional<Double> wornHead,
      Ends<Double> temperatureK,
      Ends<Double> solids,
      Ends<Double> sourceLevelM,
      boolean flushWater,
      Ends<Double> sand,
      Ends<CarrierSpec> thickness,
      Ends<CarrierSpec> cold) {
    /** No state asked for. */
    public static final StatesSpec NONE =
        new StatesSpec(
            Optional.empty(),
            Ends.none(),
            Ends.none(),
            Ends.none(),
            false,
            Ends.none(),
            Ends.none(),
            Ends.none());
  }

  /**
   * The two ends of what changes in service.
   *
   * @param hard the end that takes flow, where it is given
   * @param easy the other end
   * @param <T> what changes
   */
  public record Ends<T>(Optional<T> hard, Optional<T> easy) {
    private static <T> Ends<T> none() {
      return new Ends<>(Optional.empty(), Optional.empty());
    }
  }

  /**
   * The suction side; each of several pumps in parallel has its own.
   *
   * @param altitudeM altitude of the site above sea level
   * @param run the pipe from the pit to the pump
   */
  public record SuctionSpec(double altitudeM, RouteSpec.RunSpec run) {}

  /**
   * A day of pumping, how it stops, and the flush.
   *
   * @param dailyVolumeM3 volume of mixture moved in a day
   * @param batchVolumeM3 volume of the pit between the levels of start and stop
   * @param mostStartsPerHour most starts in an hour that motor and starter bear, when known
   * @param stopTimeS time in which the flow is brought to rest evenly, when known
   * @param flush what supplies the flush
   * @param flushVolumeM3 volume of water that it holds
   * @param thixotropy yield stress of the liquid after a rest over that while it flows, when known
   */
  public record OperationSpec(
      Optional<Double> dailyVolumeM3,
      Optional<Double> batchVolumeM3,
      OptionalInt mostStartsPerHour,
      Optional<Double> stopTimeS,
      Optional<FlushSupply> flush,
      Optional<Double> flushVolumeM3,
      Optional<Double> thixotropy) {
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
   * @param flowM3ps the flow
   */
  public record GivenFlush(double flowM3ps) implements FlushSupply {}

  /** The pump of the line, on water. */
  record PumpFlush() implements FlushSupply {}

  /**
   * A tank, or a pump of its own with its curve, or both.
   *
   * @param levelM level of the water above the start of the line
   * @param curve head of the pump against flow, ascending by flow; empty for a tank alone
   */
  public record SourceFlush(double levelM, List<FlushPoint> curve) implements FlushSupply {
    /** Copies the list. */
    public SourceFlush {
      curve = List.copyOf(curve);
    }
  }

  /**
   * A point of the curve of a flush pump.
   *
   * @param flowM3ps its flow
   * @param headM its head, in metres of water
   */
  public record FlushPoint(double flowM3ps, double headM) {}

  /**
   * A screw conveyor.
   *
   * @param diameterM diameter of the screw
   * @param shaftM diameter of its shaft
   * @param pitchM pitch of the flights
   * @param speedPs speed of turning
   * @param slope rise over horizontal length
   * @param lengthM length along the screw
   * @param loadM3ps volume of material that it must carry per time; absent when it is that of the
   *     pens
   * @param bulkDensityKgM3 mass of the material over its volume; absent when it is that of the pens
   * @param scrapeTimeS time in which the pens are scraped to it once, for the load of the pens
   */
  public record ScrewSpec(
      double diameterM,
      double shaftM,
      double pitchM,
      double speedPs,
      double slope,
      double lengthM,
      Optional<Double> loadM3ps,
      Optional<Double> bulkDensityKgM3,
      Optional<Double> scrapeTimeS) {}

  /**
   * A gravity pipe.
   *
   * @param gravity pipe or channel
   * @param flowM3ps the flow that it must carry
   * @param leastFlowM3ps the least flow that still brings sand, when given
   * @param sandFraction highest volume fraction of sand in it, when given
   */
  public record GravityRunSpec(
      GravitySpec gravity,
      double flowM3ps,
      Optional<Double> leastFlowM3ps,
      Optional<Double> sandFraction) {}

  /**
   * A pressure and a flow rate read on site at the same time.
   *
   * @param flowM3ps flow rate of mixture
   * @param flowUncertainty its uncertainty as a share of it, when given
   * @param pressurePa gauge pressure at the start of the line, or the rise of the pump
   * @param isRise whether the pressure is the rise from before the pump to behind it
   * @param pressureUncertaintyPa uncertainty of the pressure, when given
   * @param runningSinceCleaningS time that the line has run since it was clean, when given
   */
  public record ObservedSpec(
      double flowM3ps,
      Optional<Double> flowUncertainty,
      double pressurePa,
      boolean isRise,
      Optional<Double> pressureUncertaintyPa,
      Optional<Double> runningSinceCleaningS) {}
}
