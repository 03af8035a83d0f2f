package sandslurry.design.material;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.RheogramFit;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.liquid.SandFreeSolids;
import sandslurry.material.liquid.ViscometerReading;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** The fields of the liquid that carries the sand: water, manure, or one that was measured. */
public class CarrierFields extends Fields<CarrierSpec> {
  private static final Type<Double> DENSITY =
      Type.quantity(Measure.DENSITY, "900 kg/m3", "1300 kg/m3");
  private static final Type<Double> VISCOSITY =
      Type.quantity(Measure.VISCOSITY, "0.3 cP", "5000 cP");

  /** The liquid of a design or of a state, by any kind of description. */
  public static final Kinds<CarrierSpec> KINDS =
      new Kinds<>(
          "Liquid",
          "how the liquid is known",
          new CarrierFields("carrier", "liquid"),
          List.of(
              new CarrierFields("water", "water"),
              new ManureFields(),
              new MeasuredFields(),
              new RheologyFields(),
              new ReadingsFields()));

  final Field<Double> temperature =
      needed("temperature", CommonLimits.TEMPERATURE)
          .label("Temperature")
          .means("temperature of the liquid in the line")
          .such("15 degC", "60 degF");

  private CarrierFields(String name, String title) {
    super(name, title);
  }

  @Override
  protected Optional<CarrierSpec> make(Values values) {
    return Optional.of(new CarrierSpec.WaterSpec(values.get(temperature)));
  }

  /** A law of rheology: its name, in files as in a fit. */
  private enum Law {
    NEWTONIAN("Newtonian"),
    POWER_LAW("power law"),
    BINGHAM("Bingham"),
    HERSCHEL_BULKLEY("Herschel-Bulkley");

    private static final Type<Law> TYPE =
        Type.choice(Arrays.asList(values()), law -> law.words, law -> law.words);

    private final String words;

    Law(String words) {
      this.words = words;
    }
  }

  /** Manure liquor by its solids. */
  private static final class ManureFields extends CarrierFields {
    private static final Type<Double> TABLED =
        Type.quantity(
            Measure.FRACTION, "0 %", CommonLimits.MOST_SOLIDS, ": " + Carriers.MEASURE_INSTEAD);

    private final Field<Optional<Double>> solids =
        optional("totalSolids", TABLED, "from the laboratory")
            .label("Total solids, no sand")
            .means("sand-free total solids, by mass of the liquor without sand")
            .such("3 %");
    private final Field<Optional<Double>> laboratory =
        optional("laboratory", new LaboratoryFields(), "the solids without sand are given")
            .label("Laboratory")
            .means("the values of a laboratory that counted the sand as solids");

    ManureFields() {
      super("manure", "manure liquor by its solids");
      exactlyOne(solids, laboratory);
    }

    @Override
    protected Optional<CarrierSpec> make(Values values) {
      return values
          .get(solids)
          .or(() -> values.get(laboratory))
          .map(free -> new CarrierSpec.ManureSpec(values.get(temperature), free));
    }
  }

  /** Sand-free solids from a laboratory value that counts the sand. */
  private static final class LaboratoryFields extends Fields<Double> {
    private final Field<Double> total =
        needed("totalSolids", CommonLimits.SHARE)
            .label("Total solids with sand")
            .means("total solids as reported, sand included")
            .such("14 %");
    private final Field<Optional<Double>> sand =
        optional("sand", CommonLimits.SHARE, "from the volatile solids")
            .label("Sand in the sample")
            .means("sand by mass of the sample")
            .such("6 %");
    private final Field<Optional<Double>> organic =
        optional("volatileSolids", CommonLimits.SHARE, "from the sand")
            .label("Volatile solids")
            .means("volatile solids by mass of the same sample")
            .such("6 %");

    LaboratoryFields() {
      super("laboratory", "laboratory");
      exactlyOne(sand, organic);
    }

    @Override
    protected Optional<Double> make(Values values) {
      double all = values.get(total);
      Optional<Double> ofSand = values.get(sand);
      double free;
      try {
        free =
            ofSand.isPresent()
                ? SandFreeSolids.fromSand(all, ofSand.get())
                : SandFreeSolids.fromVolatileSolids(all, values.get(organic).orElseThrow());
      } catch (IllegalArgumentException e) {
        values.problem(
            ofSand.isPresent() ? sand : organic,
            ofSand.isPresent()
                ? "cannot be more than the total solids"
                : "cannot be more than "
                    + UnitSystem.METRIC.show(Kind.PERCENT, SandFreeSolids.VOLATILE_SHARE * all)
                    + ", the volatile share of dry manure times the total solids");
        return Optional.empty();
      }
      double most = CommonLimits.TOTAL_SOLIDS.parse(CommonLimits.MOST_SOLIDS);
      if (free > most) {
        values.problem(
            total,
            "leaves "
                + UnitSystem.METRIC.show(Kind.PERCENT, free)
                + " solids without sand; "
                + UnitSystem.METRIC.show(Kind.PERCENT, most)
                + " is the most: "
                + Carriers.MEASURE_INSTEAD);
        return Optional.empty();
      }
      return Optional.of(free);
    }
  }

  /** What every measured liquid has. */
  private abstract static class DenseFields extends CarrierFields {
    /** A liquor that was measured may be thicker than those of the table. */
    private static final Type<Double> SOLIDS = Type.quantity(Measure.FRACTION, "0 %", "30 %");

    final Field<Double> density =
        needed("density", DENSITY)
            .label("Density")
            .means("density of the liquid without sand")
            .such("1010 kg/m3", "8.4 lb/gal");

    DenseFields(String name, String title) {
      super(name, title);
    }

    final Field<Optional<Double>> solids() {
      return optional("totalSolids", SOLIDS, "optional")
          .label("Total solids, no sand")
          .means("sand-free total solids; needed to follow a dilution")
          .such("6 %");
    }
  }

  /** A liquid whose viscosity does not depend on the shear rate. */
  private static final class MeasuredFields extends DenseFields {
    private final Field<Double> viscosity =
        needed("viscosity", VISCOSITY)
            .label("Dynamic viscosity")
            .means("dynamic viscosity, the same at every shear rate")
            .such("4 mPa.s", "4 cP");

    MeasuredFields() {
      super("measured", "measured density and viscosity");
    }

    @Override
    protected Optional<CarrierSpec> make(Values values) {
      return Optional.of(
          new CarrierSpec.MeasuredSpec(
              values.get(temperature), values.get(density), values.get(viscosity)));
    }
  }

  /** A measured law of rheology. */
  private static final class RheologyFields extends DenseFields {
    private final Field<Optional<Double>> solids = solids();
    private final Field<Law> law =
        needed("law", Law.TYPE).label("Law").means("the law of rheology that was measured");
    private final Field<Double> viscosity =
        needed("viscosity", VISCOSITY)
            .label("Dynamic viscosity")
            .means("dynamic viscosity")
            .such("4 mPa.s", "4 cP");
    private final Field<Double> yield =
        needed("yieldStress", Type.quantity(Measure.PRESSURE, "0.001 Pa", "500 Pa"))
            .label("Yield stress")
            .means("yield stress")
            .such("2 Pa");
    private final Field<Double> plastic =
        needed("plasticViscosity", VISCOSITY)
            .label("Plastic viscosity")
            .means("plastic viscosity")
            .such("30 mPa.s", "30 cP");
    private final Field<Double> consistency =
        needed("consistency", Type.quantity(Measure.NUMBER, "0.0003", "500"))
            .label("Consistency [Pa.s^n]")
            .means("consistency K in Pa.s^n, a bare number")
            .such("0.5");
    private final Field<Double> index =
        needed("index", Type.quantity(Measure.NUMBER, "0.1", "1.5"))
            .label("Flow index n")
            .means("flow index n")
            .such("0.5");

    RheologyFields() {
      super("rheology", "measured law of rheology");
      when(viscosity, law, "Newtonian");
      when(yield, law, "Bingham", "Herschel-Bulkley");
      when(plastic, law, "Bingham");
      when(consistency, law, "power law", "Herschel-Bulkley");
      when(index, law, "power law", "Herschel-Bulkley");
    }

    @Override
    protected Optional<CarrierSpec> make(Values values) {
      Rheology rheology =
          switch (values.get(law)) {
            case NEWTONIAN -> new Newtonian(values.get(viscosity));
            case POWER_LAW -> new PowerLaw(values.get(consistency), values.get(index));
            case BINGHAM -> new Bingham(values.get(yield), values.get(plastic));
            case HERSCHEL_BULKLEY ->
                new HerschelBulkley(values.get(yield), values.get(consistency), values.get(index));
          };
      return Optional.of(
          new CarrierSpec.RheologySpec(
              values.get(temperature), values.get(density), rheology, values.number(solids)));
    }
  }

  /** Readings of a viscometer, to which a law is fitted. */
  private static final class ReadingsFields extends DenseFields {
    private final Field<Optional<Double>> solids = solids();
    private final Field<List<ViscometerReading>> readings =
        list("readings", new ReadingFields())
            .label("Viscometer readings")
            .means("readings of a viscometer, to which a law is fitted");
    private final Field<Optional<Law>> law =
        optional("law", Law.TYPE, "the one that fits best")
            .label("Law fitted")
            .means("the law of rheology that is fitted");
    private final Field<RheogramFit.Weighting> weighting =
        standard(
                "equalErrors",
                Type.choice(
                    Arrays.asList(RheogramFit.Weighting.values()),
                    ReadingsFields::word,
                    ReadingsFields::word),
                "per cent")
            .label("Readings err alike in")
            .means("in what all readings are equally good");

    ReadingsFields() {
      super("readings", "viscometer readings");
    }

    private static String word(RheogramFit.Weighting weighting) {
      return weighting == RheogramFit.Weighting.SAME_PER_CENT ? "per cent" : "pascals";
    }

    @Override
    protected Optional<CarrierSpec> make(Values values) {
      List<String> wrong = RheogramFit.problems(values.get(readings));
      wrong.forEach(problem -> values.problem(readings, problem));
      return wrong.isEmpty()
          ? Optional.of(
              new CarrierSpec.ReadingsSpec(
                  values.get(temperature),
                  values.get(density),
                  values.get(readings),
                  values.get(weighting),
                  values.get(law).map(l -> l.words),
                  values.number(solids)))
          : Optional.empty();
    }
  }

  /** One reading of a viscometer. */
  private static final class ReadingFields extends Fields<ViscometerReading> {
    private final Field<Double> rate =
        needed("shearRate", Type.quantity(Measure.SHEAR_RATE, "0.001 1/s", "100000 1/s"))
            .label("Shear rate")
            .means("shear rate at the wall")
            .such("100 1/s");
    private final Field<Double> stress =
        needed("shearStress", Type.quantity(Measure.PRESSURE, "0.0001 Pa", "5000 Pa"))
            .label("Shear stress")
            .means("shear stress at that shear rate")
            .such("4.2 Pa");

    ReadingFields() {
      super("reading", "reading");
    }

    @Override
    protected Optional<ViscometerReading> make(Values values) {
      return Optional.of(new ViscometerReading(values.get(rate), values.get(stress)));
    }
  }
}
