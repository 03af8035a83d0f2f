package sandslurry.assessment.plant.judged;

import java.util.stream.Collectors;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.pen.ManureProduction;
import sandslurry.plant.pen.ManureProductions;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The manure and water that pens make. */
record PlantLoadFindings(PlantModel model, PlantResult result, Findings findings)
    implements PlantFindingWriter {
  private static final String ELEMENT = "manure production";

  /**
   * Density of dairy manure as excreted, 62 lb/ft3: USDA-NRCS, Agricultural Waste Management Field
   * Handbook, chapter 4; from memory, unverified.
   */
  private static final double HANDBOOK_KGM3 = Measure.DENSITY.si(Measure.DENSITY.of(62, "lb/ft3"));

  @Override
  public void all() {
    if (!result.total().excesses().isEmpty()) {
      found("milk-outside", Severity.CAUTION, ELEMENT)
          .with(
              "excesses",
              shown ->
                  result.total().excesses().stream()
                      .map(excess -> excess.describe(shown))
                      .collect(Collectors.joining("; ")))
          .why("milk-outside")
          .cure("weigh")
          .add();
    }
    double own = manureOf(model.spec().production());
    for (ManureProduction other : ManureProductions.FAMILY.all()) {
      if (other != model.spec().production() && own > 0) {
        found("equations-differ", Severity.NOTE, ELEMENT)
            .with("own", model.spec().production().name())
            .with("manure", Kind.MASS_PER_DAY, own)
            .with("other", other.name())
            .with("ratio", Kind.PERCENT, manureOf(other) / own)
            .why("equations-differ")
            .add();
      }
    }
    found("manure-volume", Severity.NOTE, ELEMENT)
        .with("density", Kind.DENSITY, model.manureDensityKgM3())
        .with("handbook", Kind.DENSITY, HANDBOOK_KGM3)
        .with("ratio", Kind.PERCENT, model.manureDensityKgM3() / HANDBOOK_KGM3 - 1)
        .why("manure-volume")
        .add();
    for (PenSpec pen : model.spec().pens()) {
      if (!(pen.pen().waterM3ps().base() > 0)) {
        found("no-water", Severity.NOTE, pen.pen().name()).why("no-water").cure("meter").add();
      }
    }
  }

  private double manureOf(ManureProduction production) {
    return model.spec().pens().stream()
        .mapToDouble(pen -> pen.pen().cows() * production.manureKgps(pen.pen().milkKgps()).value())
        .sum();
  }
}
