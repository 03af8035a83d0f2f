package sandslurry.assessment.materials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.CarrierSpec.ManureSpec;
import sandslurry.design.material.CarrierSpec.ReadingsSpec;
import sandslurry.material.liquid.Carrier;
import sandslurry.material.liquid.Carrier.Scatter;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.liquid.RheogramFit;

/** The liquid that a design describes. */
public final class DesignCarrier {
  private DesignCarrier() {}

  /**
   * The liquid as a carrier with density and rheology.
   *
   * @param spec the liquid as the design gives it
   * @return the carrier
   */
  static Carrier of(CarrierSpec spec) {
    double temperatureK = spec.temperatureK();
    return spec.match(
        new CarrierSpec.Cases<>(
            water -> Carriers.water(temperatureK),
            manure -> Carriers.manure(manure.totalSolids(), temperatureK),
            rheology ->
                Carriers.measured(
                    "liquid with a known rheology",
                    temperatureK,
                    rheology.densityKgM3(),
                    rheology.rheology(),
                    rheology.totalSolids(),
                    Optional.empty(),
                    List.of()),
            readings -> {
              RheogramFit fit = fit(readings);
              return of(readings, fit, chosen(readings, fit));
            },
            measured ->
                Carriers.measured(
                    "liquid with measured density and viscosity",
                    temperatureK,
                    measured.densityKgM3(),
                    measured.viscosityPaS())));
  }

  /**
   * The same liquid at another temperature; one at an end of its scatter stays there. A measured
   * viscosity is taken to change as that of water does (common practice, no source).
   */
  static Carrier at(CarrierSpec spec, Carrier carrier, double temperatureK) {
    return spec.match(
        new CarrierSpec.Cases<>(
            water -> Carriers.water(temperatureK),
            manure -> manureAt(manure, carrier, temperatureK),
            rheology -> measuredAt(carrier, temperatureK),
            readings -> measuredAt(carrier, temperatureK),
            measured -> measuredAt(carrier, temperatureK)));
  }

  private static Carrier manureAt(ManureSpec manure, Carrier carrier, double temperatureK) {
    Scatter here = of(manure).scatter();
    Carrier there = Carriers.manure(manure.totalSolids(), temperatureK);
    return carrier.rheology().equals(here.thinner())
        ? there.of(there.scatter().thinner())
        : carrier.rheology().equals(here.thicker()) ? there.of(there.scatter().thicker()) : there;
  }

  private static Carrier measuredAt(Carrier carrier, double temperatureK) {
    return carrier.of(
        carrier
            .rheology()
            .thickened(
                Carriers.water(temperatureK).liquidAt(1).viscosityPaS()
                    / Carriers.water(carrier.temperatureK()).liquidAt(1).viscosityPaS()));
  }

  private static Carrier of(ReadingsSpec readings, RheogramFit fit, RheogramFit.Candidate law) {
    List<String> notes = new ArrayList<>(fit.warnings());
    readings
        .law()
        .filter(other -> !other.equals(law.model()))
        .ifPresent(
            other ->
                notes.add(
                    "The "
                        + other
                        + " law given does not fit the readings, or fits them worse than the "
                        + law.model()
                        + " law, which is taken."));
    return Carriers.measured(
        "liquid fitted to " + fit.readings().size() + " viscometer readings",
        readings.temperatureK(),
        readings.densityKgM3(),
        law.rheology().orElseThrow(),
        readings.totalSolids(),
        Optional.of(fit.shearRates()),
        fit.scatter(law),
        notes);
  }

  /**
   * The carrier by every other law that fits the readings about as well as the one chosen.
   *
   * @param readings viscometer readings
   * @return carriers by name of the law
   */
  public static Map<String, Carrier> others(ReadingsSpec readings) {
    RheogramFit fit = fit(readings);
    RheogramFit.Candidate chosen = chosen(readings, fit);
    Map<String, Carrier> others = new LinkedHashMap<>();
    for (RheogramFit.Candidate law : fit.equallyGood()) {
      if (law != chosen) {
        others.put(law.model(), of(readings, fit, law));
      }
    }
    return others;
  }

  /**
   * The scatter that is judged: that of the liquid, or of readings that of the law which fits best,
   * whichever law was chosen.
   *
   * @param spec the liquid as the design gives it
   * @param carrier its carrier
   * @return thinner and thicker liquid
   */
  public static Scatter scatter(CarrierSpec spec, Carrier carrier) {
    return spec.fromReadings()
        .map(readings -> fit(readings).scatter(fit(readings).best()))
        .orElseGet(carrier::scatter);
  }

  /**
   * The laws fitted to viscometer readings.
   *
   * @param readings viscometer readings
   * @return the fit of each law
   */
  public static RheogramFit fit(ReadingsSpec readings) {
    return RheogramFit.of(readings.readings(), readings.weighting());
  }

  /** The model asked for when it fits about as well as any, else the one the readings speak for. */
  static RheogramFit.Candidate chosen(ReadingsSpec readings, RheogramFit fit) {
    return fit.candidates().stream()
        .filter(c -> readings.law().isPresent() && c.model().equals(readings.law().get()))
        .filter(fit.equallyGood()::contains)
        .findFirst()
        .orElse(fit.best());
  }
}
