package sandslurry.design.plant;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sandslurry.design.material.SandFields;
import sandslurry.design.plant.PlantSpec.Targets;
import sandslurry.design.plant.PlantSpec.WantedGradation;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Seen;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.material.sand.StandardSand;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** The fields of what a plant is judged by. */
final class TargetFields extends Fields<Targets> {
  private static final Type<Double> LIQUOR = Type.quantity(Measure.FRACTION, "0.1 %", "50 %");
  private static final String GRADATION = "gradation";
  private static final SieveFields SIEVE = new SieveFields();

  private final Field<Double> capture =
      standard("sandCapture", CommonLimits.SHARE, "85 %")
          .label("Sand recovery, least")
          .means("least share of the flushed sand that is recovered")
          .such("85 %");
  private final Field<Double> organic =
      standard("bedOrganicMatter", CommonLimits.SHARE, "3 %")
          .label("Organic matter in sand")
          .means("most organic matter in the dry matter of recovered sand")
          .such("3 %");
  private final Field<Double> moisture =
      standard("bedMoisture", CommonLimits.SHARE, "20 %")
          .label("Moisture of sand, most")
          .means("most water in recovered sand, by mass")
          .such("20 %");
  private final Field<Optional<Double>> liquor =
      optional("liquorSolids", LIQUOR, "not judged")
          .label("Solids of liquor, most")
          .means("most total solids of the liquor")
          .such("3 %");
  private final Field<Optional<Double>> storage =
      optional("storage", CommonLimits.WAIT.map(InUnit.DAY::of), "not judged")
          .label("Time of storage, least")
          .means("least time of storage")
          .such("180 d");
  private final Field<Optional<StandardSand>> named =
      optional(GRADATION, SandFields.STANDARD_SAND, "not judged")
          .label("Gradation wanted")
          .means(
              "what the bedding is to be, a standard sand or a list of sieves; recovered sand and"
                  + " the bedding at steady state are judged on each sieve");
  private final Field<List<StandardSand.Limit>> sieves =
      list(GRADATION, SIEVE, "a gradation wanted needs one sieve or more")
          .label("Sieves, with the least and the most that may pass")
          .means("sieves of the gradation wanted, with the least and the most that may pass");

  TargetFields() {
    super("targets", "targets of the plant");
    when(named, seen -> !isList(seen));
    when(sieves, TargetFields::isList);
  }

  private static boolean isList(Seen seen) {
    return seen.here().at(GRADATION).isList();
  }

  @Override
  protected void check(Values values) {
    Set<Double> sizes = new HashSet<>();
    for (Values sieve : values.inside(sieves)) {
      sieve
          .maybe(SIEVE.size)
          .filter(size -> !sizes.add(size))
          .ifPresent(
              size ->
                  sieve.problem(
                      SIEVE.size,
                      "the sieve of "
                          + UnitSystem.METRIC.show(Kind.GRAIN, size)
                          + " is given twice"));
    }
  }

  @Override
  protected Optional<Targets> make(Values values) {
    Optional<WantedGradation> wanted =
        isList(values.seen())
            ? Optional.of(new WantedGradation("the gradation wanted", values.get(sieves)))
            : values.get(named).map(sand -> new WantedGradation(sand.id(), sand.limits()));
    return Optional.of(
        new Targets(
            values.get(capture),
            values.get(organic),
            values.get(moisture),
            values.number(liquor),
            values.number(storage),
            wanted));
  }

  /** A sieve of the gradation wanted. */
  private static final class SieveFields extends Fields<StandardSand.Limit> {
    private static final Type<Double> SIEVE = Type.quantity(Measure.LENGTH, "0.075 mm", "100 mm");

    private final Field<Double> size =
        needed("size", SIEVE).label("Sieve opening").means("opening of the sieve").such("0.3 mm");
    private final Field<Double> least =
        standard("least", CommonLimits.SHARE, "0 %")
            .label("Least passing")
            .means("least share that may pass it")
            .such("5 %");
    private final Field<Double> most =
        standard("most", CommonLimits.SHARE, "100 %")
            .label("Most passing")
            .means("most that may pass it")
            .such("30 %");

    SieveFields() {
      super("sieve", "sieve");
      rule(
          most,
          List.of(least),
          values -> values.get(least) <= values.get(most),
          values -> "must not be below \"least\"");
    }

    @Override
    protected Optional<StandardSand.Limit> make(Values values) {
      return Optional.of(
          new StandardSand.Limit(values.get(size), values.get(least), values.get(most)));
    }
  }
}
