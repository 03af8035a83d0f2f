package sandslurry.design.material;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Seen;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.SievePoint;
import sandslurry.material.sand.StandardSand;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** The fields of the sand: its gradation, density and shape. */
public final class SandFields extends Fields<Sand> {
  private static final Type<Double> GRAIN = Type.quantity(Measure.LENGTH, "0.001 mm", "25 mm");
  private static final Type<Double> DENSITY =
      Type.quantity(Measure.DENSITY, "1500 kg/m3", "5000 kg/m3");

  /** The gradations that have a name. */
  public static final Type<StandardSand> STANDARD_SAND =
      Type.choice(List.of(StandardSand.values()), StandardSand::id, StandardSand::label);

  private static final String GRADATION = "gradation";

  private final Field<Optional<StandardSand>> named =
      optional(GRADATION, STANDARD_SAND, "sieves, or d50 with d85")
          .label("Grain sizes from")
          .means("gradation of a standard, in the middle of its limits; or a list of sieves");
  private final Field<List<SievePoint>> sieves =
      list(GRADATION, new SieveFields())
          .label("Sieve analysis")
          .means("sieves from fine to coarse or from coarse to fine, log-linear between them");
  private final Field<Optional<Double>> d50 =
      optional("d50", GRAIN, "see gradation")
          .label("d50, half is finer")
          .means("size that half of the sand passes")
          .such("0.4 mm");
  private final Field<Optional<Double>> d85 =
      optional("d85", GRAIN, "see gradation")
          .label("d85, 85 % is finer")
          .means(
              "size that 85 % of the sand passes; the gradation is log-normal through d50 and d85")
          .such("0.9 mm");
  private final Field<Double> density =
      standard("density", DENSITY, "2650 kg/m3")
          .label("Grain density")
          .means("density of the mineral")
          .such("2650 kg/m3", "165 lb/ft3");
  private final Field<GrainShape> shape =
      standard("shape", new ShapeFields(), "").label("Shape").means("shape of the grains");

  /** Declares the fields and the rules between them. */
  public SandFields() {
    super("sand", "sand");
    when(named, seen -> !isList(seen));
    when(sieves, SandFields::isList);
    onlyWhen(
        named,
        seen -> !seen.has(d50) && !seen.has(d85),
        "give either \"gradation\" or \"d50\" with \"d85\", not both");
    rule(
        named,
        List.of(),
        values -> values.has(named) || values.has(d50) || values.has(d85),
        values ->
            "is missing: give sieve sizes with per cent passing, one of "
                + String.join(", ", STANDARD_SAND.choices().keySet())
                + ", or \"d50\" with \"d85\"");
    neededWhen(d50, seen -> seen.has(d85) && !seen.has(named), GRAIN.wanted());
    neededWhen(d85, seen -> seen.has(d50) && !seen.has(named), GRAIN.wanted());
    rule(
        d85,
        List.of(d50),
        values ->
            values.get(d50).isEmpty()
                || values.get(d85).isEmpty()
                || values.get(d85).get() >= values.get(d50).get(),
        values -> "must not be below d50, which is " + values.written(d50));
  }

  private static boolean isList(Seen seen) {
    return seen.here().at(GRADATION).isList();
  }

  @Override
  protected Optional<Sand> make(Values values) {
    Field<?> blamed = values.has(named) ? named : d50;
    Gradation gradation;
    String source;
    if (isList(values.seen())) {
      List<String> wrong = Gradation.problems(values.get(sieves));
      wrong.forEach(problem -> values.problem(sieves, problem));
      if (!wrong.isEmpty()) {
        return Optional.empty();
      }
      gradation = Gradation.of(values.get(sieves));
      source = "sieve analysis given";
    } else if (values.has(named)) {
      gradation = values.get(named).orElseThrow().middle();
      source = values.get(named).orElseThrow().label();
    } else {
      gradation = Gradation.ofD50D85(values.get(d50).orElseThrow(), values.get(d85).orElseThrow());
      source = "log-normal through the d50 and d85 given";
    }
    // What is finer than the boundary belongs to the liquid; of a sand, most must be left.
    double fines = gradation.fractionPassing(Gradation.FINES_BOUNDARY_M);
    if (fines > 0.5) {
      values.problem(
          blamed,
          "is no sand: "
              + UnitSystem.METRIC.show(Kind.PERCENT, fines)
              + " of it is finer than "
              + UnitSystem.METRIC.show(Kind.GRAIN, Gradation.FINES_BOUNDARY_M)
              + ", of which 50 % are allowed; such fines belong to the carrier");
      return Optional.empty();
    }
    return Optional.of(new Sand(source, gradation, values.get(density), values.get(shape)));
  }

  /** One sieve of an analysis. */
  private static final class SieveFields extends Fields<SievePoint> {
    private final Field<Double> size =
        needed("size", GRAIN)
            .label("Sieve opening")
            .means("opening of the sieve")
            .such("0.6 mm", "600 um");
    private final Field<Double> passing =
        needed("passing", CommonLimits.SHARE)
            .label("Passing by mass")
            .means("share by mass that passes")
            .such("55 %");

    SieveFields() {
      super("sieve", "sieve");
    }

    @Override
    protected Optional<SievePoint> make(Values values) {
      return Optional.of(new SievePoint(values.get(size), values.get(passing)));
    }
  }

  /** The shape of the grains. */
  private static final class ShapeFields extends Fields<GrainShape> {
    private final Field<Double> corey =
        standard("corey", Type.quantity(Measure.FRACTION, "0.2", "1"), "0.7")
            .label("Shape, Corey factor")
            .means("Corey shape factor")
            .such("0.7");
    private final Field<Double> roundness =
        standard("roundness", Type.quantity(Measure.NUMBER, "0", "6"), "3.5")
            .label("Shape, roundness")
            .means("roundness of Powers")
            .such("3.5");
    private final Field<Double> sphericity =
        standard("sphericity", Type.quantity(Measure.FRACTION, "0.3", "1"), "0.8")
            .label("Shape, sphericity")
            .means("sphericity")
            .such("0.8");

    ShapeFields() {
      super("shape", "shape");
    }

    @Override
    protected Optional<GrainShape> make(Values values) {
      return Optional.of(
          new GrainShape(values.get(corey), values.get(roundness), values.get(sphericity)));
    }
  }
}
