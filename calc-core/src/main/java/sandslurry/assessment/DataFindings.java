package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.Finding.Topic;
import sandslurry.correlation.Bound;
import sandslurry.design.CarrierSpec.ReadingsSpec;
import sandslurry.design.Design;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** What is to be said of the inputs: ranges of the data behind them, and their uncertainty. */
final class DataFindings {
  /** At or below this temperature freezing is a caution (common practice, no source). */
  private static final double FREEZING_RISK_C = 2;

  private DataFindings() {}

  static List<Finding> of(Design design, Materials materials, Optional<LineResult> line) {
    UnitSystem units = design.units();
    List<Finding> findings = new ArrayList<>();
    materials
        .carrier()
        .excesses()
        .forEach(
            excess ->
                findings.add(
                    new Finding(
                        // Thinner than measured lies between a measurement and water.
                        excess.value() < excess.bound().low() ? Severity.NOTE : Severity.CAUTION,
                        Topic.DATA,
                        "carrier",
                        "The liquid lies outside the measurements behind its properties.",
                        excess.describe(units) + ".",
                        "Measure its viscosity.")));
    materials
        .carrier()
        .notes()
        .forEach(
            note -> findings.add(new Finding(Severity.NOTE, Topic.DATA, "carrier", note, "", "")));
    materials
        .gradation()
        .notes()
        .forEach(
            note -> findings.add(new Finding(Severity.NOTE, Topic.DATA, "sand", note, "", "")));
    freezing(design, materials).ifPresent(findings::add);
    line.flatMap(l -> shearRates(design, materials, l)).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> freezing(Design design, Materials materials) {
    double temperature = materials.carrier().temperatureK();
    if (temperature > Measure.TEMPERATURE.si(Measure.TEMPERATURE.of(FREEZING_RISK_C, "degC"))) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
            Severity.CAUTION,
            Topic.PLUGGING,
            "carrier",
            "The liquid is close to freezing: it freezes first where it stands still.",
            "It is at "
                + design.units().show(Kind.TEMPERATURE, temperature)
                + "; dead legs, valves above ground and the skin of lanes freeze before the line"
                + " does.",
            "Bury lines below frost, leave no dead legs, and drain or flush what stands idle."));
  }

  /**
   * Says when the wall shears the liquid more or less than it was measured at. A table by solids is
   * tried over its whole scatter, which is wider than the error of extrapolating it; a fit of
   * readings has nothing that covers it.
   */
  private static Optional<Finding> shearRates(Design design, Materials materials, LineResult line) {
    UnitSystem units = design.units();
    Optional<Bound> measured = materials.carrier().shearRates();
    if (measured.isEmpty() || line.states().isEmpty()) {
      return Optional.empty();
    }
    List<Double> rates =
        line.states().stream()
            .flatMap(s -> s.runs().stream())
            .map(r -> Measure.SHEAR_RATE.si(r.wallShearRate()))
            .sorted()
            .toList();
    double least = rates.get(0);
    double most = rates.get(rates.size() - 1);
    if (measured.get().check(least).isEmpty() && measured.get().check(most).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
            design.carrier() instanceof ReadingsSpec ? Severity.CAUTION : Severity.NOTE,
            Topic.DATA,
            "carrier",
            "The walls shear the liquid outside the shear rates at which its rheology was"
                + " measured: there it is an extrapolation.",
            "At the walls the shear rate is "
                + units.show(Kind.SHEAR_RATE, least)
                + " to "
                + units.show(Kind.SHEAR_RATE, most)
                + "; measured was from "
                + units.show(Kind.SHEAR_RATE, measured.get().low())
                + " to "
                + units.show(Kind.SHEAR_RATE, measured.get().high())
                + ".",
            "Measure the liquid at the shear rates of the line."));
  }
}
