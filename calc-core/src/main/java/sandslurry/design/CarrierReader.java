package sandslurry.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.RheogramFit;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.liquid.SandFreeSolids;
import sandslurry.material.liquid.ViscometerReading;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.ShearRate;
import sandslurry.units.UnitSystem;
import si.uom.quantity.Density;
import si.uom.quantity.DynamicViscosity;

/** Reads the liquid that carries the sand: water, manure, or one that was measured. */
final class CarrierReader {
  private static final Limits<Density> LIQUID_DENSITY =
      Limits.of(Measure.DENSITY, "900 kg/m3", "1300 kg/m3");
  private static final Limits<DynamicViscosity> LIQUID_VISCOSITY =
      Limits.of(Measure.VISCOSITY, "0.3 cP", "5000 cP");
  private static final Limits<Pressure> YIELD_STRESS =
      Limits.of(Measure.PRESSURE, "0.001 Pa", "500 Pa");
  private static final Limits<Dimensionless> CONSISTENCY =
      Limits.of(Measure.FRACTION, "0.0003", "500");
  private static final Limits<Dimensionless> INDEX = Limits.of(Measure.FRACTION, "0.1", "1.5");
  private static final Limits<ShearRate> SHEAR_RATE =
      Limits.of(Measure.SHEAR_RATE, "0.001 1/s", "100000 1/s");
  private static final Limits<Pressure> SHEAR_STRESS =
      Limits.of(Measure.PRESSURE, "0.0001 Pa", "5000 Pa");

  private static final Map<String, CarrierKind> CARRIERS =
      DesignReader.named(CarrierKind.values(), kind -> kind.name().toLowerCase(Locale.ROOT));

  private static final Map<String, Law> LAWS = DesignReader.named(Law.values(), law -> law.words);

  private static final Map<String, RheogramFit.Weighting> WEIGHTINGS =
      DesignReader.named(
          RheogramFit.Weighting.values(),
          w -> w == RheogramFit.Weighting.SAME_PER_CENT ? "per cent" : "pascals");

  private enum CarrierKind {
    WATER,
    MANURE,
    MEASURED,
    RHEOLOGY,
    READINGS
  }

  /** A law of rheology: its name, in files as in a fit, and the parameters that it has. */
  private enum Law {
    NEWTONIAN("Newtonian", false, false),
    POWER_LAW("power law", false, true),
    BINGHAM("Bingham", true, false),
    HERSCHEL_BULKLEY("Herschel-Bulkley", true, true);

    private final String words;
    private final boolean hasYield;
    private final boolean hasIndex;

    Law(String words, boolean hasYield, boolean hasIndex) {
      this.words = words;
      this.hasYield = hasYield;
      this.hasIndex = hasIndex;
    }
  }

  private CarrierReader() {}

  static Optional<CarrierSpec> carrier(Section part) {
    Optional<CarrierKind> kind = part.requiredChoice("kind", CARRIERS);
    Optional<Quantity<Temperature>> temperature =
        part.required("temperature", DesignReader.TEMPERATURE);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Optional<CarrierSpec> carrier =
        switch (kind.get()) {
          case WATER -> temperature.map(CarrierSpec.WaterSpec::new);
          case MANURE -> manure(part, temperature);
          case MEASURED -> measured(part, temperature);
          case RHEOLOGY -> rheology(part, temperature);
          case READINGS -> readings(part, temperature);
        };
    part.refuseUnknown();
    return carrier;
  }

  static Optional<Quantity<Dimensionless>> solids(CarrierSpec carrier) {
    if (carrier instanceof CarrierSpec.ManureSpec manure) {
      return Optional.of(manure.totalSolids());
    }
    if (carrier instanceof CarrierSpec.RheologySpec rheology) {
      return rheology.totalSolids();
    }
    return carrier instanceof CarrierSpec.ReadingsSpec readings
        ? readings.totalSolids()
        : Optional.empty();
  }

  private static Optional<CarrierSpec> manure(
      Section part, Optional<Quantity<Temperature>> temperature) {
    part.exactlyOne("totalSolids", "laboratory");
    Optional<Quantity<Dimensionless>> solids =
        part.optional("totalSolids", DesignReader.TOTAL_SOLIDS);
    Optional<Quantity<Dimensionless>> free =
        part.part("laboratory").flatMap(CarrierReader::sandFree);
    Optional<Quantity<Dimensionless>> either = solids.or(() -> free);
    return temperature.flatMap(t -> either.map(s -> new CarrierSpec.ManureSpec(t, s)));
  }

  /** Sand-free solids from a laboratory value that counts the sand. */
  private static Optional<Quantity<Dimensionless>> sandFree(Section part) {
    Optional<Quantity<Dimensionless>> total = part.required("totalSolids", DesignReader.SHARE);
    part.exactlyOne("sand", "volatileSolids");
    Optional<Quantity<Dimensionless>> sand = part.optional("sand", DesignReader.SHARE);
    Optional<Quantity<Dimensionless>> organic = part.optional("volatileSolids", DesignReader.SHARE);
    part.refuseUnknown();
    if (total.isEmpty() || sand.isEmpty() && organic.isEmpty()) {
      return Optional.empty();
    }
    double free;
    try {
      free =
          sand.isPresent()
              ? SandFreeSolids.fromSand(
                  DesignReader.number(total.get()), DesignReader.number(sand.get()))
              : SandFreeSolids.fromVolatileSolids(
                  DesignReader.number(total.get()), DesignReader.number(organic.get()));
    } catch (IllegalArgumentException e) {
      part.problem(
          sand.isPresent() ? "sand" : "volatileSolids",
          sand.isPresent()
              ? "cannot be more than the total solids"
              : "cannot be more than "
                  + UnitSystem.METRIC.show(
                      Kind.PERCENT,
                      SandFreeSolids.VOLATILE_SHARE * DesignReader.number(total.get()))
                  + ", the volatile share of dry manure times the total solids");
      return Optional.empty();
    }
    if (free > DesignReader.TOTAL_SOLIDS.high()) {
      part.problem(
          "totalSolids",
          "leaves "
              + UnitSystem.METRIC.show(Kind.PERCENT, free)
              + " solids without sand; the measured manures end at "
              + UnitSystem.METRIC.show(Kind.PERCENT, DesignReader.TOTAL_SOLIDS.high()));
      return Optional.empty();
    }
    return Optional.of(Measure.FRACTION.of(free));
  }

  private static Optional<CarrierSpec> measured(
      Section part, Optional<Quantity<Temperature>> temperature) {
    Optional<Quantity<Density>> density = part.required("density", LIQUID_DENSITY);
    Optional<Quantity<DynamicViscosity>> viscosity = part.required("viscosity", LIQUID_VISCOSITY);
    return temperature.flatMap(
        t -> density.flatMap(d -> viscosity.map(v -> new CarrierSpec.MeasuredSpec(t, d, v))));
  }

  private static Optional<CarrierSpec> rheology(
      Section part, Optional<Quantity<Temperature>> temperature) {
    Optional<Quantity<Density>> density = part.required("density", LIQUID_DENSITY);
    Optional<Quantity<Dimensionless>> solids =
        part.optional("totalSolids", DesignReader.TOTAL_SOLIDS);
    Optional<Law> law = part.requiredChoice("law", LAWS);
    if (law.isEmpty()) {
      return Optional.empty();
    }
    Optional<Rheology> rheology = law(part, law.get());
    return temperature.flatMap(
        t ->
            density.flatMap(d -> rheology.map(r -> new CarrierSpec.RheologySpec(t, d, r, solids))));
  }

  private static Optional<Rheology> law(Section part, Law law) {
    Optional<Quantity<Pressure>> yield =
        law.hasYield ? part.required("yieldStress", YIELD_STRESS) : Optional.empty();
    // A wrong yield stress is noted already; the other fields are read all the same.
    boolean wrongYield = law.hasYield && yield.isEmpty();
    double yieldPa = yield.map(Measure.PRESSURE::si).orElse(0.0);
    if (!law.hasIndex) {
      String field = law.hasYield ? "plasticViscosity" : "viscosity";
      return part.required(field, LIQUID_VISCOSITY)
          .filter(v -> !wrongYield)
          .map(Measure.VISCOSITY::si)
          .map(v -> law.hasYield ? new Bingham(yieldPa, v) : new Newtonian(v));
    }
    Optional<Quantity<Dimensionless>> consistency = part.required("consistency", CONSISTENCY);
    Optional<Quantity<Dimensionless>> index = part.required("index", INDEX);
    if (wrongYield || consistency.isEmpty() || index.isEmpty()) {
      return Optional.empty();
    }
    double k = DesignReader.number(consistency.get());
    double n = DesignReader.number(index.get());
    return Optional.of(law.hasYield ? new HerschelBulkley(yieldPa, k, n) : new PowerLaw(k, n));
  }

  private static Optional<CarrierSpec> readings(
      Section part, Optional<Quantity<Temperature>> temperature) {
    Optional<Quantity<Density>> density = part.required("density", LIQUID_DENSITY);
    Optional<Quantity<Dimensionless>> solids =
        part.optional("totalSolids", DesignReader.TOTAL_SOLIDS);
    Optional<Law> law = part.choice("law", LAWS);
    RheogramFit.Weighting weighting =
        part.choice("equalErrors", WEIGHTINGS).orElse(RheogramFit.Weighting.SAME_PER_CENT);
    List<Section> rows = part.list("readings");
    List<ViscometerReading> readings = new ArrayList<>();
    for (Section row : rows) {
      Optional<Quantity<ShearRate>> rate = row.required("shearRate", SHEAR_RATE);
      Optional<Quantity<Pressure>> stress = row.required("shearStress", SHEAR_STRESS);
      row.refuseUnknown();
      if (rate.isPresent() && stress.isPresent()) {
        readings.add(
            new ViscometerReading(
                Measure.SHEAR_RATE.si(rate.get()), Measure.PRESSURE.si(stress.get())));
      }
    }
    if (readings.size() < rows.size() || density.isEmpty() || temperature.isEmpty()) {
      return Optional.empty();
    }
    List<String> wrong = RheogramFit.problems(readings);
    wrong.forEach(problem -> part.problem("readings", problem));
    return wrong.isEmpty()
        ? Optional.of(
            new CarrierSpec.ReadingsSpec(
                temperature.get(),
                density.get(),
                readings,
                weighting,
                law.map(l -> l.words),
                solids))
        : Optional.empty();
  }
}
