package sandslurry.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.SievePoint;
import sandslurry.material.sand.StandardSand;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;
import si.uom.quantity.Density;

/** Reads the sand: its gradation, density and shape. */
final class SandReader {
  private static final Limits<Length> GRAIN = Limits.of(Measure.LENGTH, "0.001 mm", "25 mm");
  private static final Limits<Density> SAND_DENSITY =
      Limits.of(Measure.DENSITY, "1500 kg/m3", "5000 kg/m3");
  private static final Limits<Dimensionless> COREY = Limits.of(Measure.FRACTION, "0.2", "1");
  private static final Limits<Dimensionless> ROUNDNESS = Limits.of(Measure.FRACTION, "0", "6");
  private static final Limits<Dimensionless> SPHERICITY = Limits.of(Measure.FRACTION, "0.3", "1");

  static final Map<String, StandardSand> SANDS =
      DesignReader.named(StandardSand.values(), StandardSand::id);

  private SandReader() {}

  static Optional<Sand> sand(Section part) {
    Optional<Quantity<Density>> density = part.orDefault("density", SAND_DENSITY, "2650 kg/m3");
    GrainShape shape = part.part("shape").map(SandReader::shape).orElse(GrainShape.NATURAL);
    Optional<Gradation> gradation;
    String source;
    if (part.has("gradation") && (part.has("d50") || part.has("d85"))) {
      part.problem("gradation", "give either \"gradation\" or \"d50\" with \"d85\", not both");
    }
    if (part.isList("gradation")) {
      gradation = sieves(part);
      source = "sieve analysis given";
    } else if (part.has("gradation")) {
      Optional<StandardSand> standard = part.choice("gradation", SANDS);
      gradation = standard.map(StandardSand::middle);
      source = standard.map(StandardSand::label).orElse("");
    } else {
      gradation = twoSizes(part);
      source = "log-normal through the d50 and d85 given";
    }
    part.refuseUnknown();
    return gradation.isPresent() && density.isPresent()
        ? Optional.of(new Sand(source, gradation.get(), density.get(), shape))
        : Optional.empty();
  }

  private static GrainShape shape(Section part) {
    Optional<Quantity<Dimensionless>> corey = part.orDefault("corey", COREY, "0.7");
    Optional<Quantity<Dimensionless>> roundness = part.orDefault("roundness", ROUNDNESS, "3.5");
    Optional<Quantity<Dimensionless>> sphericity = part.orDefault("sphericity", SPHERICITY, "0.8");
    part.refuseUnknown();
    return Section.there(corey, roundness, sphericity)
        ? new GrainShape(
            DesignReader.number(corey.get()),
            DesignReader.number(roundness.get()),
            DesignReader.number(sphericity.get()))
        : GrainShape.NATURAL;
  }

  private static Optional<Gradation> sieves(Section part) {
    List<SievePoint> points = new ArrayList<>();
    List<Section> rows = part.list("gradation");
    for (Section row : rows) {
      Optional<Quantity<Length>> size = row.required("size", GRAIN);
      Optional<Quantity<Dimensionless>> passing = row.required("passing", DesignReader.SHARE);
      row.refuseUnknown();
      if (size.isPresent() && passing.isPresent()) {
        points.add(
            new SievePoint(Measure.LENGTH.si(size.get()), DesignReader.number(passing.get())));
      }
    }
    if (points.size() < rows.size()) {
      return Optional.empty();
    }
    List<String> wrong = Gradation.problems(points);
    wrong.forEach(problem -> part.problem("gradation", problem));
    return wrong.isEmpty()
        ? coarseEnough(part, "gradation", Gradation.of(points))
        : Optional.empty();
  }

  private static Optional<Gradation> twoSizes(Section part) {
    if (!part.has("d50") && !part.has("d85")) {
      part.problem(
          "gradation",
          "is missing: give sieve sizes with per cent passing, one of "
              + String.join(", ", SANDS.keySet())
              + ", or \"d50\" with \"d85\"");
      return Optional.empty();
    }
    Optional<Quantity<Length>> d50 = part.required("d50", GRAIN);
    Optional<Quantity<Length>> d85 = part.required("d85", GRAIN);
    if (d50.isEmpty() || d85.isEmpty()) {
      return Optional.empty();
    }
    double middle = Measure.LENGTH.si(d50.get());
    double coarse = Measure.LENGTH.si(d85.get());
    if (!(coarse >= middle)) {
      part.problem("d85", "must not be below d50, which is " + Measure.LENGTH.write(d50.get()));
      return Optional.empty();
    }
    return coarseEnough(part, "d50", Gradation.ofD50D85(middle, coarse));
  }

  /** What is finer than the boundary belongs to the liquid; of a sand, most must be left. */
  private static Optional<Gradation> coarseEnough(Section part, String field, Gradation gradation) {
    double fines = gradation.fractionPassing(Gradation.FINES_BOUNDARY_M);
    if (fines <= 0.5) {
      return Optional.of(gradation);
    }
    part.problem(
        field,
        "is no sand: "
            + UnitSystem.METRIC.show(Kind.PERCENT, fines)
            + " of it is finer than "
            + UnitSystem.METRIC.show(Kind.GRAIN, Gradation.FINES_BOUNDARY_M)
            + ", of which 50 % are allowed; such fines belong to the carrier");
    return Optional.empty();
  }
}
