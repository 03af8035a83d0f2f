package sandslurry.design.material;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import sandslurry.material.liquid.RheogramFit;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.liquid.ViscometerReading;

/** What carries the sand, free of sand. */
public sealed interface CarrierSpec {
  /**
   * Temperature of the liquid in the line.
   *
   * @return the temperature
   */
  double temperatureK();

  /**
   * What follows for each kind of liquid.
   *
   * @param cases what follows for each
   * @param <R> what follows
   * @return what follows for this kind
   */
  <R> R match(Cases<R> cases);

  /**
   * What follows for each kind of liquid.
   *
   * @param water for water
   * @param manure for manure by its solids
   * @param rheology for a known rheology
   * @param readings for readings of a viscometer
   * @param measured for a measured density and viscosity
   * @param <R> what follows
   */
  record Cases<R>(
      Function<WaterSpec, R> water,
      Function<ManureSpec, R> manure,
      Function<RheologySpec, R> rheology,
      Function<ReadingsSpec, R> readings,
      Function<MeasuredSpec, R> measured) {}

  /**
   * Dry solids without sand over mass without sand.
   *
   * @return the mass fraction; empty when it is not given
   */
  default OptionalDouble solids() {
    return match(
        new Cases<>(
            water -> OptionalDouble.empty(),
            manure -> OptionalDouble.of(manure.totalSolids()),
            RheologySpec::totalSolids,
            ReadingsSpec::totalSolids,
            measured -> OptionalDouble.empty()));
  }

  /**
   * The same liquid at another temperature; one with numbers of its own keeps them.
   *
   * @param other the temperature
   * @return the liquid
   */
  default CarrierSpec at(double other) {
    return match(
        new Cases<>(
            water -> new WaterSpec(other),
            manure -> new ManureSpec(other, manure.totalSolids()),
            rheology -> this,
            readings -> this,
            measured -> this));
  }

  /**
   * This liquid where it is water.
   *
   * @return true for water alone
   */
  default boolean isWater() {
    return false;
  }

  /**
   * This liquid where it is manure described by its solids.
   *
   * @return the manure
   */
  default Optional<ManureSpec> manure() {
    return Optional.empty();
  }

  /**
   * This liquid where it is described by readings of a viscometer.
   *
   * @return the readings
   */
  default Optional<ReadingsSpec> fromReadings() {
    return Optional.empty();
  }

  /**
   * Water.
   *
   * @param temperatureK its temperature
   */
  record WaterSpec(double temperatureK) implements CarrierSpec {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.water().apply(this);
    }

    @Override
    public boolean isWater() {
      return true;
    }
  }

  /**
   * Manure liquor described by its solids.
   *
   * @param temperatureK its temperature
   * @param totalSolids dry solids without sand over mass without sand
   */
  record ManureSpec(double temperatureK, double totalSolids) implements CarrierSpec {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.manure().apply(this);
    }

    @Override
    public Optional<ManureSpec> manure() {
      return Optional.of(this);
    }
  }

  /**
   * A liquid whose rheology is known by its parameters.
   *
   * @param temperatureK its temperature
   * @param densityKgM3 its density
   * @param rheology its law
   * @param totalSolids dry solids without sand over mass without sand, if known: needed to follow a
   *     dilution
   */
  record RheologySpec(
      double temperatureK, double densityKgM3, Rheology rheology, OptionalDouble totalSolids)
      implements CarrierSpec {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.rheology().apply(this);
    }
  }

  /**
   * A liquid whose rheology is fitted to readings of a viscometer.
   *
   * @param temperatureK its temperature in the line, at which it was also measured
   * @param densityKgM3 its density
   * @param readings the readings
   * @param weighting what the readings are equally good in
   * @param law the model asked for; absent means the one that the readings speak for most
   * @param totalSolids dry solids without sand over mass without sand, if known
   */
  record ReadingsSpec(
      double temperatureK,
      double densityKgM3,
      List<ViscometerReading> readings,
      RheogramFit.Weighting weighting,
      Optional<String> law,
      OptionalDouble totalSolids)
      implements CarrierSpec {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.readings().apply(this);
    }

    @Override
    public Optional<ReadingsSpec> fromReadings() {
      return Optional.of(this);
    }

    /** Copies the readings. */
    public ReadingsSpec {
      readings = List.copyOf(readings);
    }
  }

  /**
   * A liquid whose density and viscosity were measured.
   *
   * @param temperatureK its temperature
   * @param densityKgM3 its density
   * @param viscosityPaS its dynamic viscosity
   */
  record MeasuredSpec(double temperatureK, double densityKgM3, double viscosityPaS)
      implements CarrierSpec {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.measured().apply(this);
    }
  }
}
