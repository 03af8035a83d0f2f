package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.design.CarrierSpec;
import sandslurry.design.CarrierSpec.ManureSpec;
import sandslurry.design.CarrierSpec.MeasuredSpec;
import sandslurry.design.CarrierSpec.ReadingsSpec;
import sandslurry.design.CarrierSpec.RheologySpec;
import sandslurry.material.Carrier;
import sandslurry.material.Carriers;
import sandslurry.material.RheogramFit;
import sandslurry.units.Measure;

/** The liquid that a design describes. */
final class DesignCarrier {
  private DesignCarrier() {}

  static Carrier of(CarrierSpec spec) {
    double temperatureK = Measure.TEMPERATURE.si(spec.temperature());
    if (spec instanceof ManureSpec manure) {
      return Carriers.manure(Measure.FRACTION.si(manure.totalSolids()), temperatureK);
    }
    if (spec instanceof MeasuredSpec measured) {
      return Carriers.measured(
          "liquid with measured density and viscosity",
          temperatureK,
          Measure.DENSITY.si(measured.density()),
          Measure.VISCOSITY.si(measured.viscosity()));
    }
    if (spec instanceof RheologySpec rheology) {
      return Carriers.measured(
          "liquid with a known rheology",
          temperatureK,
          Measure.DENSITY.si(rheology.density()),
          rheology.rheology(),
          solids(rheology.totalSolids()),
          Optional.empty(),
          List.of());
    }
    if (spec instanceof ReadingsSpec readings) {
      RheogramFit fit = fit(readings);
      List<String> notes = new ArrayList<>(fit.warnings());
      return Carriers.measured(
          "liquid fitted to " + fit.readings().size() + " viscometer readings",
          temperatureK,
          Measure.DENSITY.si(readings.density()),
          chosen(readings, fit).rheology().orElseThrow(),
          solids(readings.totalSolids()),
          Optional.of(fit.shearRates()),
          notes);
    }
    return Carriers.water(temperatureK);
  }

  static RheogramFit fit(ReadingsSpec readings) {
    return RheogramFit.of(readings.readings(), readings.weighting());
  }

  /** The model asked for when the readings support it, else the one they speak for most. */
  static RheogramFit.Candidate chosen(ReadingsSpec readings, RheogramFit fit) {
    return fit.candidates().stream()
        .filter(c -> readings.law().isPresent() && c.model().equals(readings.law().get()))
        .filter(c -> c.rheology().isPresent())
        .findFirst()
        .orElse(fit.best());
  }

  private static OptionalDouble solids(
      Optional<javax.measure.Quantity<javax.measure.quantity.Dimensionless>> solids) {
    return solids.isPresent()
        ? OptionalDouble.of(Measure.FRACTION.si(solids.get()))
        : OptionalDouble.empty();
  }
}
