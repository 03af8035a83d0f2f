package sandslurry.assessment.plant.judged;

import java.util.List;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.pen.ManureProduction;
import sandslurry.plant.pen.ManureProductions;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is to be said of the manure and water that pens make. */
final class PlantLoadFindings extends PlantFindingWriter {
  PlantLoadFindings(PlantModel model, PlantResult result, UnitSystem units) {
    super(model, result, units);
  }

  @Override
  List<Finding> all() {
    if (!result.total().excesses().isEmpty()) {
      add(
          Severity.CAUTION,
          "manure production",
          "The milk yield lies outside the yields that the equations were tabled for.",
          String.join("; ", result.total().excesses().stream().map(e -> e.describe(units)).toList())
              + ".",
          "Weigh what is scraped, and give the ratio as manureFactor.");
    }
    double own = manureOf(spec.production());
    for (ManureProduction other : ManureProductions.FAMILY.all()) {
      if (other != spec.production() && own > 0) {
        double ratio = manureOf(other) / own;
        add(
            Severity.NOTE,
            "manure production",
            "The published equations for manure do not agree.",
            "By "
                + spec.production().name()
                + " the cows make "
                + show(Kind.MASS_PER_DAY, own)
                + " of manure, by "
                + other.name()
                + " "
                + show(Kind.PERCENT, ratio)
                + " of that.",
            "");
      }
    }
    for (PenSpec pen : spec.pens()) {
      if (!(pen.pen().waterM3ps().base() > 0)) {
        add(
            Severity.NOTE,
            pen.pen().name(),
            "No water reaches the manure of this pen, as it is given.",
            "Wash and drinking water differ between farms by a factor of ten and more.",
            "Meter it.");
      }
    }
    return findings;
  }

  private double manureOf(ManureProduction production) {
    return spec.pens().stream()
        .mapToDouble(pen -> pen.pen().cows() * production.manureKgps(pen.pen().milkKgps()).value())
        .sum();
  }
}
